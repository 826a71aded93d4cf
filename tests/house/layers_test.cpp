#include "tests/house/source_tree.h"

#include <gtest/gtest.h>

#include <map>
#include <regex>
#include <set>

// The arrows of DEVELOPERS.md, "Where things live": a room may include itself and the rooms named here.

namespace house {
namespace {

using Arrows = std::map<std::string, std::set<std::string>>;

const Arrows coreArrows = {
    {"core/measure", {}},
    {"core/service", {"core/measure"}},
    {"core/temporal", {"core/measure"}},
    {"core/stagger", {"core/measure", "core/service", "core/temporal"}},
    {"core/run", {"core/measure", "core/service", "core/stagger"}},
    {"core/alarm", {"core/measure", "core/run"}},
    {"core/hair", {"core/measure", "core/service"}},
    {"core/bowl", {"core/measure", "core/service"}},
    {"core/learn", {"core/measure", "core/service", "core/run"}},
};

/// Among the rooms of app only: each may include core.
const Arrows appArrows = {
    {"app/view", {}},
    {"app/session", {"app/view"}},
    {"app/storage", {"app/session"}},  // For the port, which the session defines.
    {"app/sound", {"app/view"}},
    {"app/speech", {}},
    {"app/output", {"app/view"}},
    {"app/command", {"app/output", "app/session", "app/view"}},
    {"app/desktop", {"app/output", "app/session", "app/view"}},
};

/// The one file of each program that puts the parts together and so must know them all.
bool putsTheProgramTogether(const TextFile& file)
{
    return file.path.filename() == "main.cpp";
}

std::vector<std::string> includesOf(const TextFile& file)
{
    static const std::regex include{R"re(^\s*#\s*include\s+[<"]([^>"]+)[>"])re"};
    std::vector<std::string> targets;
    for (const std::string& line : file.lines)
        if (std::smatch match; std::regex_search(line, match, include))
            targets.push_back(match[1]);
    return targets;
}

std::string roomOf(const std::string& include)
{
    return TextFile{include, {}}.room();
}

TEST(Layers, CoreIncludesOnlyDownwards)
{
    for (const TextFile& file : codeBelow("core")) {
        if (file.room() == "core")
            continue;
        ASSERT_TRUE(coreArrows.contains(file.room())) << "a room without arrows: " << file.path;
        for (const std::string& target : includesOf(file))
            if (target.starts_with("core/")) {
                EXPECT_TRUE(roomOf(target) == file.room()
                            || coreArrows.at(file.room()).contains(roomOf(target)))
                    << file.path << " includes " << target;
            }
    }
}

TEST(Layers, CoreKnowsNeitherQtNorAppNorClockNorFile)
{
    static const std::regex foreign{R"(^(Q|app/|tests/|sqlite|fstream|filesystem|thread|unistd|sys/))"};
    static const std::regex outside{
        R"(_clock::now\s*\(|\b(gettimeofday|clock_gettime|getenv|fopen|f?printf)\b)"
        R"(|\bstd::(time\s*\(|cout|cerr|cin))"};
    for (const TextFile& file : codeBelow("core")) {
        for (const std::string& target : includesOf(file))
            EXPECT_FALSE(std::regex_search(target, foreign)) << file.path << " includes " << target;
        for (const std::string& line : file.lines)
            EXPECT_FALSE(std::regex_search(line, outside)) << file.path << " reaches outside: " << line;
    }
}

TEST(Layers, AppIncludesOnlyAlongItsArrows)
{
    for (const TextFile& file : codeBelow("app")) {
        if (file.room() == "app")
            continue;
        ASSERT_TRUE(appArrows.contains(file.room())) << "a room without arrows: " << file.path;
        for (const std::string& target : includesOf(file)) {
            EXPECT_FALSE(target.starts_with("tests/")) << file.path << " includes " << target;
            if (target.starts_with("app/") && !putsTheProgramTogether(file)) {
                EXPECT_TRUE(roomOf(target) == file.room()
                            || appArrows.at(file.room()).contains(roomOf(target)))
                    << file.path << " includes " << target;
            }
        }
    }
}

TEST(Layers, ViewsKnowNoWidgets)
{
    static const std::regex drawing{R"(^(Q\w*Widget|QtWidgets|QPainter|QLabel|QPushButton|QWindow))"};
    for (const TextFile& file : codeBelow("app/view"))
        for (const std::string& target : includesOf(file))
            EXPECT_FALSE(std::regex_search(target, drawing)) << file.path << " includes " << target;
}

TEST(Layers, IncludesAreWrittenFromTheRoot)
{
    static const std::regex quoted{R"re(^\s*#\s*include\s+"([^"]+)")re"};
    for (const char* top : {"core", "app", "tests"})
        for (const TextFile& file : codeBelow(top))
            for (const std::string& line : file.lines)
                if (std::smatch match; std::regex_search(line, match, quoted)) {
                    const std::string target = match[1];
                    const bool fromRoot = target.starts_with("core/") || target.starts_with("app/")
                        || target.starts_with("tests/");
                    EXPECT_TRUE(fromRoot || target.ends_with(".moc")) << file.path << ": " << line;
                }
}

}  // namespace
}  // namespace house
