#include "tests/oracle/second_opinion.h"

#include <gtest/gtest.h>

#include <array>

// What oracle_test.cpp does, on 5,000 other random services, in turn of up to two, four, four, five and six
// zones in a coat, and on 5,000 other sets of two or three heads.

namespace oracle {
namespace {

constexpr std::uint64_t inBlock = 100;

class LongOracle : public testing::TestWithParam<std::uint64_t> { };

TEST_P(LongOracle, PlannerAndGecodeAgree)
{
    const std::uint64_t before = 10'000 + GetParam() * inBlock;
    const std::size_t mostZones = std::array<std::size_t, 5>{2, 4, 4, 5, 6}.at(GetParam() % 5);
    const Opinions opinions = expectSameOpinions(before + 1, before + inBlock, {.mostZones = mostZones},
                                                 mostZones <= 2 ? Compare::EveryStart : Compare::Worth);
    EXPECT_GT(opinions.planned, 20);
    EXPECT_GT(opinions.refused, 3);
    EXPECT_LT(opinions.open, 15);
}

TEST_P(LongOracle, PlannerAndGecodeAgreeOnSeveralHeads)
{
    const std::uint64_t before = 100'000 + GetParam() * inBlock;
    const Opinions opinions = expectSameOpinions(before + 1, before + inBlock, severalHeads);
    EXPECT_GT(opinions.planned, 20);
    EXPECT_GT(opinions.refused, 3);
    EXPECT_LT(opinions.open, 25);
}

INSTANTIATE_TEST_SUITE_P(Blocks, LongOracle, testing::Range<std::uint64_t>(0, 50));

}  // namespace
}  // namespace oracle
