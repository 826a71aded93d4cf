#include "tests/house/function_lengths.h"
#include "tests/house/source_tree.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <regex>

// The limits that DEVELOPERS.md gives under "How we write".

namespace house {
namespace {

constexpr std::size_t longestFunction = 60;
constexpr std::size_t longestFile = 400;

std::vector<TextFile> allCode()
{
    std::vector<TextFile> files;
    for (const char* top : {"core", "app", "tests"})
        std::ranges::copy(codeBelow(top), std::back_inserter(files));
    return files;
}

bool holds(const TextFile& file, const std::string& text)
{
    return std::ranges::any_of(file.lines, [&](const std::string& line) { return line.starts_with(text); });
}

TEST(Style, NoFileIsLongerThanItMayBe)
{
    for (const TextFile& file : allCode())
        EXPECT_LE(file.lines.size(), longestFile) << file.path;
}

TEST(Style, NoFunctionIsLongerThanItMayBe)
{
    for (const TextFile& file : allCode())
        for (const FunctionLength& function : functionsIn(file.lines))
            EXPECT_LE(function.length, longestFunction) << file.path << ':' << function.line << function.head;
}

// Written in two parts so that this file does not break its own rule.
TEST(Style, NothingIsLeftForLater)
{
    for (const TextFile& file : textFilesBelow(""))
        for (const std::string& line : file.lines)
            for (const char* word : {"TO"
                                     "DO",
                                     "FIX"
                                     "ME",
                                     "XX"
                                     "X",
                                     "HA"
                                     "CK",
                                     "GTEST"
                                     "_SKIP"})
                EXPECT_FALSE(mentions(line, word)) << file.path << ": " << line;
}

TEST(Style, NoTestIsSwitchedOff)
{
    static const std::regex off{R"(\bDISABLED)"
                                "_"};
    for (const TextFile& file : codeBelow("tests"))
        for (const std::string& line : file.lines)
            EXPECT_FALSE(std::regex_search(line, off)) << file.path << ": " << line;
}

// The tree stands alone: it may not lean on a file that is not in it.
TEST(Style, NothingPointsOutsideTheTree)
{
    for (const TextFile& file : textFilesBelow(""))
        for (const std::string& line : file.lines)
            for (const char* place : {"/wo"
                                      "rk/",
                                      "/ho"
                                      "me/",
                                      "MODEL"
                                      ".md",
                                      "DESIGN"
                                      ".md",
                                      "FACTS"
                                      ".md",
                                      "STYLE"
                                      ".md",
                                      "PLATFORM"
                                      ".md",
                                      "SCHEDULING"
                                      ".md"})
                EXPECT_FALSE(mentions(line, place)) << file.path << ": " << line;
}

TEST(Style, HeadersAreGuardedAndOpenNoNamespace)
{
    for (const TextFile& file : allCode()) {
        if (!file.isHeader())
            continue;
        EXPECT_TRUE(holds(file, "#pragma once")) << file.path;
        for (const std::string& line : file.lines)
            EXPECT_FALSE(line.starts_with("using namespace")) << file.path << ": " << line;
    }
}

TEST(Style, NamespacesFollowFolders)
{
    for (const char* top : {"core", "app"})
        for (const TextFile& file : codeBelow(top)) {
            if (!file.isHeader())
                continue;
            std::string space = file.room();
            space.replace(space.find('/'), 1, "::");
            EXPECT_TRUE(holds(file, "namespace " + space)) << file.path << " does not open " << space;
        }
}

TEST(Style, SourcesIncludeTheirOwnHeaderFirst)
{
    for (const TextFile& file : allCode()) {
        auto header = file.path;
        header.replace_extension(".h");
        if (file.isHeader() || !std::filesystem::exists(root() / header))
            continue;
        const auto first = std::ranges::find_if(
            file.lines, [](const std::string& line) { return line.starts_with("#include"); });
        ASSERT_NE(first, file.lines.end()) << file.path;
        EXPECT_EQ(*first, "#include \"" + header.string() + "\"") << file.path;
    }
}

/// The CMakeLists.txt that a file belongs to: the nearest one above it.
TextFile listFor(const TextFile& file, const std::vector<TextFile>& all)
{
    for (auto folder = file.path.parent_path(); !folder.empty(); folder = folder.parent_path())
        for (const TextFile& candidate : all)
            if (candidate.path == folder / "CMakeLists.txt")
                return candidate;
    return {};
}

// A stray file would be neither built nor tested, and nobody would notice.
TEST(Style, EverySourceIsListed)
{
    const std::vector<TextFile> all = textFilesBelow("");
    for (const TextFile& file : allCode()) {
        const TextFile list = listFor(file, all);
        const std::string name = file.path.filename().string();
        const bool listed = std::ranges::any_of(
            list.lines, [&](const std::string& line) { return line.find(name) != std::string::npos; });
        EXPECT_TRUE(listed || file.isHeader()) << file.path << " is not listed in " << list.path;
    }
}

}  // namespace
}  // namespace house
