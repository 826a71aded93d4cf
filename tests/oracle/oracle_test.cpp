#include "tests/oracle/second_opinion.h"

#include <gtest/gtest.h>

// The planner against a model of the same rules in Gecode, on 300 random services and 300 random sets of two
// or three, with fixed seeds. Levels 2, 3 and 4 of what is best must be the same to the second, and so must
// the answer that nothing fits.

namespace oracle {
namespace {

constexpr std::uint64_t inBlock = 30;

class OracleBlock : public testing::TestWithParam<std::uint64_t> { };

TEST_P(OracleBlock, PlannerAndGecodeAgree)
{
    const Opinions opinions = expectSameOpinions(GetParam() * inBlock + 1, (GetParam() + 1) * inBlock, {});
    EXPECT_GT(opinions.planned, 5);
    EXPECT_GT(opinions.refused, 2);
    EXPECT_LT(opinions.open, 4);
}

TEST(Oracle, PlannerAndGecodeAgreeOnEveryStartOfSmallServices)
{
    const Opinions opinions = expectSameOpinions(1001, 1100, {.mostZones = 2}, Compare::EveryStart);
    EXPECT_GT(opinions.planned, 50);
    EXPECT_GT(opinions.refused, 10);
    EXPECT_EQ(opinions.open, 0);
}

TEST_P(OracleBlock, PlannerAndGecodeAgreeOnSeveralHeads)
{
    const std::uint64_t before = 2'000 + GetParam() * inBlock;
    const Opinions opinions = expectSameOpinions(before + 1, before + inBlock, severalHeads);
    EXPECT_GT(opinions.planned, 5);
    EXPECT_GT(opinions.refused, 2);
    EXPECT_LT(opinions.open, 8);
}

TEST(Oracle, PlannerAndGecodeAgreeOnEveryStartOfTwoSmallHeads)
{
    Sizes sizes = severalHeads;
    sizes.mostHeads = 2;
    sizes.mostTasks = 7;
    const Opinions opinions = expectSameOpinions(3001, 3060, sizes, Compare::EveryStart);
    EXPECT_GT(opinions.planned, 20);
    EXPECT_GT(opinions.refused, 5);
    EXPECT_LT(opinions.open, 4);
}

INSTANTIATE_TEST_SUITE_P(Blocks, OracleBlock, testing::Range<std::uint64_t>(0, 10));

}  // namespace
}  // namespace oracle
