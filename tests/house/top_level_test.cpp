#include "tests/house/source_tree.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace house {
namespace {

// A newcomer reads the top level first, so it stays short: a new thing goes into one of these rooms.
const std::set<std::string> topLevel = {
    ".ci",       ".clang-format", ".clang-tidy", ".gitignore", "CMakeLists.txt", "DEVELOPERS.md",
    "README.md", "app",           "core",        "docs",       "resources",      "tests",
};

TEST(TopLevel, IsExactlyWhatDevelopersAreToldToExpect)
{
    std::set<std::string> found;
    for (const auto& entry : std::filesystem::directory_iterator{root()}) {
        const std::string name = entry.path().filename().string();
        if (name != ".git" && !name.starts_with("build"))
            found.insert(name);
    }
    EXPECT_THAT(found, testing::ContainerEq(topLevel));
}

TEST(TopLevel, HasTheTwoCommandsOfANewcomer)
{
    for (const char* command : {"app/start", "tests/run", ".ci/run"}) {
        const auto status = std::filesystem::status(root() / command);
        ASSERT_TRUE(std::filesystem::is_regular_file(status)) << command;
        EXPECT_NE(status.permissions() & std::filesystem::perms::owner_exec, std::filesystem::perms::none)
            << command << " is not executable";
    }
}

}  // namespace
}  // namespace house
