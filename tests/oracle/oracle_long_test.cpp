#include "tests/oracle/second_opinion.h"

#include <gtest/gtest.h>

#include <array>
#include <iostream>

// What oracle_test.cpp does, on 5,000 other random services, in turn of up to two, four, four, five and six
// zones in a coat, on 5,000 other sets of two or three heads, and on 5,000 whose lengths are uncertain: in
// turn up to two zones (and every start compared), up to four and up to six of one head, and twice one to
// three heads. All that bear one name say at their end how many there were of each kind.

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
    EXPECT_LT(opinions.open, 10);
}

TEST_P(LongOracle, PlannerAndGecodeAgreeOnSeveralHeads)
{
    const std::uint64_t before = 100'000 + GetParam() * inBlock;
    const Opinions opinions = expectSameOpinions(before + 1, before + inBlock, severalHeads);
    EXPECT_GT(opinions.planned, 20);
    EXPECT_GT(opinions.refused, 3);
    EXPECT_LT(opinions.open, 7);
}

class LongOracleGive : public testing::TestWithParam<std::uint64_t> {
public:
    static void TearDownTestSuite() { std::cout << "In all: " << textOf(s_all) << '\n'; }

protected:
    static inline Opinions s_all;
};

TEST_P(LongOracleGive, PlannerAndGecodeAgree)
{
    const std::uint64_t before = 200'000 + GetParam() * inBlock;
    Sizes sizes = uncertainLengths;
    sizes.mostZones = std::array<std::size_t, 5>{2, 4, 6, 3, 3}.at(GetParam() % 5);
    sizes.mostHeads = GetParam() % 5 < 3 ? 1 : 3;
    const Opinions opinions = expectSameOpinions(before + 1, before + inBlock, sizes,
                                                 sizes.mostZones <= 2 ? Compare::EveryStart : Compare::Worth);
    s_all += opinions;
    EXPECT_GT(opinions.withGive(10, 10), 10) << textOf(opinions);
    EXPECT_GT(opinions.withGive(1, 9), 5) << textOf(opinions);
    EXPECT_GT(opinions.refused, 3);
    EXPECT_LT(opinions.open, 10);
}

INSTANTIATE_TEST_SUITE_P(Blocks, LongOracleGive, testing::Range<std::uint64_t>(0, 50));
INSTANTIATE_TEST_SUITE_P(Blocks, LongOracle, testing::Range<std::uint64_t>(0, 50));

}  // namespace
}  // namespace oracle
