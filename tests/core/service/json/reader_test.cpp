#include "core/service/json/reader.h"

#include <gtest/gtest.h>

namespace core::service::json {
namespace {

std::string refusal(std::string_view text)
{
    const auto document = readJson(text);
    return document ? "read" : problemText(document.error());
}

std::string nested(std::size_t depth, const char* open, const char* close, const char* core)
{
    std::string text = core;
    for (std::size_t i = 0; i < depth; ++i)
        text = open + text + close;
    return text;
}

TEST(JsonReader, KeepsTheDigitsOfNumbers)
{
    const auto document = readJson(R"({"a": [0.10, -3, 1e2, 18446744073709551616]})");
    ASSERT_TRUE(document);
    const Value* list = document->root.find("a");
    ASSERT_NE(list, nullptr);
    ASSERT_EQ(list->items.size(), 4U);
    EXPECT_EQ(list->items[0].text, "0.10");
    EXPECT_EQ(list->items[1].text, "-3");
    EXPECT_EQ(list->items[2].text, "1e2");
    EXPECT_EQ(list->items[3].text, "18446744073709551616");
}

TEST(JsonReader, NamesLineAndColumnOfASyntaxError)
{
    EXPECT_EQ(refusal("{\n  \"a\": 1,\n}"),
              "line 3, column 1: this is not JSON: unexpected '}'; expected string literal");
    EXPECT_EQ(refusal("{\"a\": 1"),
              "line 1, column 8: this is not JSON: unexpected end of input; expected '}'");
    EXPECT_EQ(refusal("{} {}"), "line 1, column 4: this is not JSON: unexpected '{'; expected end of input");
    EXPECT_EQ(refusal("{\"a\": 1e999}"), "line 1, column 11: 1e999 is too large a number");
    EXPECT_EQ(refusal("{\"a\": 01}"),
              "line 1, column 8: this is not JSON: unexpected number literal; expected '}'");
}

TEST(JsonReader, RefusesAnEmptyFile)
{
    EXPECT_EQ(refusal(""), "the file is empty; a service file starts with { \"basinbell\": 1");
    EXPECT_EQ(refusal(" \r\n\t"), "the file is empty; a service file starts with { \"basinbell\": 1");
}

TEST(JsonReader, RefusesWhatIsNotUtf8)
{
    EXPECT_EQ(refusal("{\n\"a\": \"\xC3\xA9\xFF\"}"),
              "line 2, column 8: this is not UTF-8 text; save the file in the encoding UTF-8");
    // UTF-16 with its mark, as some editors save it.
    EXPECT_EQ(refusal(std::string_view{"\xFF\xFE{\0}\0", 6}),
              "line 1, column 1: this is not UTF-8 text; save the file in the encoding UTF-8");
}

TEST(JsonReader, ReadsThirtyTwoDeepAndNotDeeper)
{
    EXPECT_EQ(refusal(nested(32, "[", "]", "1")), "read");
    EXPECT_EQ(refusal(nested(33, "[", "]", "1")),
              "line 1, column 33: brackets are nested more than 32 deep; this is no service file");
    EXPECT_EQ(refusal(nested(33, "{\"a\":", "}", "1")).substr(0, 8), "line 1, ");
    EXPECT_EQ(refusal("[\"" + std::string(100, '[') + "\\\"[[\"]"),
              "read");  // brackets in a text do not count
}

TEST(JsonReader, SurvivesAMillionOpenBrackets)
{
    EXPECT_EQ(refusal(std::string(1'000'000, '[')),
              "line 1, column 33: brackets are nested more than 32 deep; this is no service file");
}

TEST(JsonReader, RefusesTooManyValuesAndKeys)
{
    std::string list = "{\"a\": [0";
    for (std::size_t i = 0; i < mostValues; ++i)
        list += ",0";
    EXPECT_EQ(refusal(list + "]}"),
              "a: there are more than 200000 values up to here; this is no service file");

    std::string object = "{\"b\": {";
    for (std::size_t i = 0; i <= mostKeys; ++i)
        object += (i == 0 ? "\"" : ",\"") + std::to_string(i) + "\":0";
    EXPECT_EQ(refusal(object + "}}"), "b: one object holds more than 200 keys; this is no service file");
}

TEST(JsonReader, FindsEveryRepeatedKeyWithItsPlace)
{
    const auto document = readJson(R"({"a": 1, "b": [{"c": 1, "c": {"d": 1, "d": 2}}], "a": 2})");
    ASSERT_TRUE(document);
    ASSERT_EQ(document->repeatedKeys.size(), 3U);
    EXPECT_EQ(problemText(document->repeatedKeys[0]), "b[0].c: this key is there twice; keep one of them");
    EXPECT_EQ(document->repeatedKeys[1].place, "b[0].c.d");
    EXPECT_EQ(document->repeatedKeys[2].place, "a");
    EXPECT_EQ(document->root.find("a")->text, "1");
}

}  // namespace
}  // namespace core::service::json
