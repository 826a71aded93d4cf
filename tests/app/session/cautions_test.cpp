#include "app/session/cautions.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <regex>

namespace app::session {
namespace {

TEST(Cautions, NameWhatComesBeforeAnyPlan)
{
    std::string all;
    for (const std::string& caution : cautions())
        all += caution + "\n";
    for (const char* const word :
         {"leaflet", "48 hours", "gloves", "air the room", "eye", "Local rules", "licensed"})
        EXPECT_NE(all.find(word), std::string::npos) << word;
}

TEST(Cautions, NeverSayThatSomethingIsSafe)
{
    const std::regex reassuring{R"(\b(safe|safely|harmless|no risk|guaranteed|nothing can)\b)",
                                std::regex::icase};
    for (const std::string& caution : cautions())
        EXPECT_FALSE(std::regex_search(caution, reassuring)) << caution;
}

TEST(Cautions, AreRememberedToHaveBeenShown)
{
    const QTemporaryDir folder;
    const std::filesystem::path path = folder.path().toStdString();
    EXPECT_FALSE(cautionsWereShown(path));
    rememberCautionsShown(path);
    EXPECT_TRUE(cautionsWereShown(path));
    rememberCautionsShown(path / "not there");
    EXPECT_FALSE(cautionsWereShown(path / "not there"));
}

}  // namespace
}  // namespace app::session
