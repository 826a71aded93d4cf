#include "tests/house/source_tree.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <regex>
#include <set>

// A page that points at nothing is worse than none: every relative link leads to a file, and every anchor to
// a heading.

namespace house {
namespace {

/// The anchor that readers of Markdown make of a heading: lower case, punctuation gone, a hyphen for each
/// space.
std::string anchorOf(const std::string& heading)
{
    std::string anchor;
    for (const char letter : heading) {
        const auto byte = static_cast<unsigned char>(letter);
        if (letter == ' ')
            anchor += '-';
        else if (std::isalnum(byte) != 0 || letter == '-' || letter == '_' || byte >= 0x80)
            anchor += static_cast<char>(std::tolower(byte));
    }
    return anchor;
}

bool isFence(const std::string& line)
{
    return line.starts_with("```");
}

std::set<std::string> anchorsIn(const TextFile& page)
{
    static const std::regex heading{"^#+ +(.*)$"};
    std::set<std::string> anchors;
    bool fenced = false;
    for (const std::string& line : page.lines) {
        fenced = fenced != isFence(line);
        if (std::smatch match; !fenced && std::regex_match(line, match, heading))
            anchors.insert(anchorOf(match[1]));
    }
    return anchors;
}

/// What `page` links to, other than other sites. Text that is set as code is no link.
std::vector<std::string> linksIn(const TextFile& page)
{
    static const std::regex code{"`[^`]*`"};
    static const std::regex link{R"(\]\(([^)\s]+)\))"};
    static const std::regex elsewhere{"^[a-z]+:.*"};
    std::vector<std::string> links;
    bool fenced = false;
    for (const std::string& line : page.lines) {
        fenced = fenced != isFence(line);
        if (fenced || line.starts_with("    "))
            continue;
        const std::string text = std::regex_replace(line, code, "`");
        for (std::sregex_iterator match{text.begin(), text.end(), link}, end; match != end; ++match)
            if (const std::string target = (*match)[1]; !std::regex_match(target, elsewhere))
                links.push_back(target);
    }
    return links;
}

std::vector<TextFile> pages()
{
    std::vector<TextFile> found = textFilesBelow("");
    std::erase_if(found, [](const TextFile& file) { return file.path.extension() != ".md"; });
    return found;
}

TEST(Links, LeadToFilesAndHeadingsThatExist)
{
    const std::vector<TextFile> all = pages();
    ASSERT_GT(all.size(), 5U) << "the pages were not found";
    for (const TextFile& page : all) {
        for (const std::string& link : linksIn(page)) {
            const std::string path = link.substr(0, link.find('#'));
            const auto target =
                path.empty() ? page.path : (page.path.parent_path() / path).lexically_normal();
            EXPECT_TRUE(std::filesystem::exists(root() / target)) << page.path << " links to " << link;
            if (link.find('#') == std::string::npos)
                continue;
            const auto there = std::ranges::find(all, target, &TextFile::path);
            EXPECT_TRUE(there != all.end() && anchorsIn(*there).contains(link.substr(link.find('#') + 1)))
                << page.path << " links to " << link << ", which is no heading";
        }
    }
}

TEST(Links, AreFoundInTextAndNotInCode)
{
    const TextFile page{"a.md",
                        {"[one](x.md#y) and `[two](z.md)`", "```", "[three](z.md)", "```",
                         "![four](p.png) [five](https://example.org)", "    [six](z.md)"}};

    EXPECT_EQ(linksIn(page), (std::vector<std::string>{"x.md#y", "p.png"}));
}

TEST(Links, AnchorsAreMadeAsReadersOfMarkdownMakeThem)
{
    EXPECT_EQ(anchorOf("What is best, level by level"), "what-is-best-level-by-level");
    EXPECT_EQ(anchorOf("A `head` & more"), "a-head--more");
}

}  // namespace
}  // namespace house
