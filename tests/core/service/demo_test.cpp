#include "tests/core/service/reading.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>

// The services that come with the program, and the examples of the documentation.

namespace core::service {
namespace {

using testing::ElementsAre;

std::string contentOf(const std::filesystem::path& path)
{
    std::ifstream file{path};
    std::ostringstream content;
    content << file.rdbuf();
    return content.str();
}

/// The fenced JSON blocks of a page that are service files.
std::vector<std::string> examplesIn(const std::string& page)
{
    const std::string fence = "```json\n";
    std::vector<std::string> examples;
    for (std::size_t start = page.find(fence); start != std::string::npos; start = page.find(fence, start)) {
        start += fence.size();
        const std::string block = page.substr(start, page.find("```", start) - start);
        if (block.find("\"basinbell\"") != std::string::npos)
            examples.push_back(block);
    }
    return examples;
}

TEST(Demo, HasFiveServicesThatAreReadOnAnyDay)
{
    std::size_t count = 0;
    for (const auto& file :
         std::filesystem::directory_iterator{std::filesystem::path{SOURCE_DIR} / "resources/demo"}) {
        if (file.is_directory())
            continue;
        const auto service = readService(contentOf(file.path()), context());
        ASSERT_TRUE(service) << file.path() << testing::PrintToString(textsOf(service.error()));
        EXPECT_TRUE(service->demo) << file.path();
        EXPECT_FALSE(service->notBefore || service->readyBy)
            << file.path() << " cannot be planned from any moment";
        ++count;
    }
    EXPECT_EQ(count, 5U);
}

// Planned together by the crew that one of them names.
TEST(Demo, HasThreeHeadsOfOneEvening)
{
    std::size_t count = 0;
    std::size_t crews = 0;
    for (const auto& file :
         std::filesystem::directory_iterator{std::filesystem::path{SOURCE_DIR} / "resources/demo/premiere"}) {
        const auto service = readService(contentOf(file.path()), context());
        ASSERT_TRUE(service) << file.path() << testing::PrintToString(textsOf(service.error()));
        EXPECT_TRUE(service->demo && service->readyBy) << file.path();
        ++count;
        crews += service->crew.hands.size() > 1 ? 1U : 0U;
    }
    EXPECT_EQ(count, 3U);
    EXPECT_EQ(crews, 1U);
}

TEST(Documentation, HasExamplesThatAreRead)
{
    const auto examples = examplesIn(contentOf(std::filesystem::path{SOURCE_DIR} / "docs/service-file.md"));
    EXPECT_EQ(examples.size(), 2U) << "the smallest and the full example";
    for (const std::string& example : examples)
        EXPECT_THAT(problemsOf(example), ElementsAre()) << example;
}

}  // namespace
}  // namespace core::service
