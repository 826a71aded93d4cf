#include "tests/house/function_lengths.h"

#include <gtest/gtest.h>

#include <sstream>

namespace house {
namespace {

std::vector<FunctionLength> functionsOf(const std::string& text)
{
    std::istringstream stream{text};
    std::vector<std::string> lines;
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return functionsIn(lines);
}

TEST(FunctionLengths, CountFromBraceToBrace)
{
    const auto functions = functionsOf("int two()\n{\n    return 2;\n}\n");

    ASSERT_EQ(functions.size(), 1u);
    EXPECT_EQ(functions[0].line, 2u);
    EXPECT_EQ(functions[0].length, 3u);
    EXPECT_NE(functions[0].head.find("two()"), std::string::npos);
}

TEST(FunctionLengths, LookInsideNamespacesAndTypes)
{
    const auto functions = functionsOf("namespace a::b {\nclass C : public D<int> {\npublic:\n"
                                       "    int one() const { return 1; }\n    int more();\n};\n"
                                       "enum class E { A, B };\n}\n");

    ASSERT_EQ(functions.size(), 1u);
    EXPECT_EQ(functions[0].length, 1u);
}

TEST(FunctionLengths, DoNotTakeInitialisersForBodies)
{
    const auto functions = functionsOf("const std::vector<int> list = {f(1), 2};\n"
                                       "A::A(int b)\n    : m_b{b}\n    , m_c{}\n{\n    go();\n}\n");

    ASSERT_EQ(functions.size(), 1u);
    EXPECT_EQ(functions[0].line, 5u);
    EXPECT_EQ(functions[0].length, 3u);
}

TEST(FunctionLengths, AreNotFooledByBracesInText)
{
    const auto functions = functionsOf("void f()\n{\n    // {\n    print(\"{\", '{', R\"(\n{ { )\");\n}\n"
                                       "#define ODD(x) {\nint g() { return 1'000; }\n");

    ASSERT_EQ(functions.size(), 2u);
    EXPECT_EQ(functions[0].length, 5u);
    EXPECT_EQ(functions[1].line, 8u);
}

}  // namespace
}  // namespace house
