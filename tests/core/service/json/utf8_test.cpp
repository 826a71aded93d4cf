#include "core/service/json/utf8.h"

#include <gtest/gtest.h>

namespace core::service::json {
namespace {

TEST(Utf8, AcceptsWellFormedText)
{
    EXPECT_FALSE(firstInvalidUtf8(""));
    EXPECT_FALSE(firstInvalidUtf8("plain"));
    EXPECT_FALSE(firstInvalidUtf8("\xC3\xA9 \xE2\x82\xAC \xF0\x9F\x92\x87 \xF4\x8F\xBF\xBF \xED\x9F\xBF"));
}

// RFC 3629, section 3 and 4: overlong forms, surrogates, numbers past U+10FFFF, cut and lone bytes.
TEST(Utf8, FindsTheFirstByteThatIsWrong)
{
    for (const char* wrong :
         {"\xC0\xAF", "\xC1\xBF", "\xE0\x9F\xBF", "\xF0\x8F\xBF\xBF", "\xED\xA0\x80", "\xF4\x90\x80\x80",
          "\xF5\x80\x80\x80", "\xFF", "\x80", "\xE2\x82", "\xE2(\xA1", "\xF0\x9F\x92"})
        EXPECT_EQ(firstInvalidUtf8(std::string{"ab"} + wrong), 2U) << wrong;
}

TEST(Utf8, CountsAndCutsCharactersNotBytes)
{
    EXPECT_EQ(characters("a\xC3\xA9\xE2\x82\xAC"), 3U);
    EXPECT_EQ(clipped("a\xC3\xA9\xE2\x82\xAC", 3), "a\xC3\xA9\xE2\x82\xAC");
    EXPECT_EQ(clipped("a\xC3\xA9\xE2\x82\xAC", 2), "a\xC3\xA9\u2026");
    EXPECT_EQ(clipped("one\ntwo", 10), "one two");
}

TEST(Utf8, NamesLinesAndColumnsFromOne)
{
    EXPECT_EQ(lineAndColumn("abc", 0), "line 1, column 1");
    EXPECT_EQ(lineAndColumn("a\n\xC3\xA9x", 4), "line 2, column 2");
    EXPECT_EQ(lineAndColumn("a\n", 99), "line 2, column 1");
}

}  // namespace
}  // namespace core::service::json
