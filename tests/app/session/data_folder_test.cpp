#include "app/session/data_folder.h"

#include <gtest/gtest.h>

#include <cstdlib>

namespace app::session {
namespace {

TEST(DataFolder, IsWhatIsAskedForElseTheEnvironmentsElseTheSystems)
{
    setenv("BASINBELL_DATA", "/from/environment", 1);
    EXPECT_EQ(dataFolder("/asked/for"), "/asked/for");
    EXPECT_EQ(dataFolder(), "/from/environment");
    setenv("BASINBELL_DATA", "", 1);
    EXPECT_NE(dataFolder(), "");
    unsetenv("BASINBELL_DATA");
    EXPECT_TRUE(dataFolder().is_absolute()) << dataFolder();
}

}  // namespace
}  // namespace app::session
