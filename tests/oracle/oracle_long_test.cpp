#include "tests/oracle/second_opinion.h"

#include <gtest/gtest.h>

// What oracle_test.cpp does, on 5,000 other random services of up to five zones.

namespace oracle {
namespace {

constexpr std::uint64_t inBlock = 100;

class LongOracle : public testing::TestWithParam<std::uint64_t> { };

TEST_P(LongOracle, PlannerAndGecodeAgree)
{
    const std::uint64_t before = 10'000 + GetParam() * inBlock;
    const Opinions opinions = expectSameOpinions(before + 1, before + inBlock, 5);
    EXPECT_GT(opinions.planned, 20);
    EXPECT_GT(opinions.refused, 10);
    EXPECT_LT(opinions.open, 15);
}

INSTANTIATE_TEST_SUITE_P(Blocks, LongOracle, testing::Range<std::uint64_t>(0, 50));

}  // namespace
}  // namespace oracle
