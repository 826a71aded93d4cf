#include "tests/oracle/second_opinion.h"

#include <gtest/gtest.h>

#include <array>
#include <iostream>
#include <map>
#include <string>

// What oracle_test.cpp does, on 5,000 other random services, in turn of up to two, four, four, five and six
// zones in a coat, on 5,000 other sets of two or three heads, on 5,000 whose lengths are uncertain, and on
// 5,000 of each, certain or not, that are under way. Every start is compared where there are at most two
// zones in a coat.

namespace oracle {
namespace {

constexpr std::uint64_t inBlock = 100;

/// Says at its end how many there were of each kind.
class LongOracle : public testing::TestWithParam<std::uint64_t> {
public:
    static void TearDownTestSuite()
    {
        for (const auto& [kind, opinions] : s_all)
            std::cout << "In all, " << kind << ": " << textOf(opinions) << '\n';
        s_all.clear();
    }

protected:
    static void count(const std::string& kind, const Opinions& opinions) { s_all[kind] += opinions; }

private:
    static inline std::map<std::string, Opinions> s_all;
};

TEST_P(LongOracle, PlannerAndGecodeAgree)
{
    const std::uint64_t before = 10'000 + GetParam() * inBlock;
    const std::size_t mostZones = std::array<std::size_t, 5>{2, 4, 4, 5, 6}.at(GetParam() % 5);
    const Opinions opinions = expectSameOpinions(before + 1, before + inBlock, {.mostZones = mostZones},
                                                 mostZones <= 2 ? Compare::EveryStart : Compare::Worth);
    count("one head", opinions);
    EXPECT_GT(opinions.planned, 20);
    EXPECT_GT(opinions.refused, 3);
    EXPECT_LT(opinions.open, 10);
}

TEST_P(LongOracle, PlannerAndGecodeAgreeOnSeveralHeads)
{
    const std::uint64_t before = 100'000 + GetParam() * inBlock;
    const Opinions opinions = expectSameOpinions(before + 1, before + inBlock, severalHeads);
    count("two or three heads", opinions);
    EXPECT_GT(opinions.planned, 20);
    EXPECT_GT(opinions.refused, 3);
    EXPECT_LT(opinions.open, 7);
}

/// In turn up to two, four and six zones of one head, and twice one to three heads.
Sizes manySizes(std::uint64_t block)
{
    Sizes sizes = uncertainLengths;
    sizes.mostZones = std::array<std::size_t, 5>{2, 4, 6, 3, 3}.at(block % 5);
    sizes.mostHeads = block % 5 < 3 ? 1 : 3;
    return sizes;
}

Compare howMuch(const Sizes& sizes)
{
    return sizes.mostZones <= 2 ? Compare::EveryStart : Compare::Worth;
}

TEST_P(LongOracle, PlannerAndGecodeAgreeOnWhatIsUnderWay)
{
    Sizes sizes = manySizes(GetParam());
    sizes.uncertain = false;
    const Opinions opinions = expectSameOpinionsUnderWay(1'000'000 + GetParam() * 1'000,
                                                         static_cast<int>(inBlock), sizes, howMuch(sizes));
    count("under way", opinions);
    EXPECT_GT(opinions.planned, 50);
    EXPECT_LT(opinions.open, 7);
}

class LongOracleGive : public LongOracle { };

TEST_P(LongOracleGive, PlannerAndGecodeAgree)
{
    const std::uint64_t before = 200'000 + GetParam() * inBlock;
    const Sizes sizes = manySizes(GetParam());
    const Opinions opinions = expectSameOpinions(before + 1, before + inBlock, sizes, howMuch(sizes));
    count("uncertain lengths", opinions);
    EXPECT_GT(opinions.withGive(10, 10), 10) << textOf(opinions);
    EXPECT_GT(opinions.withGive(1, 9), 5) << textOf(opinions);
    EXPECT_GT(opinions.refused, 3);
    EXPECT_LT(opinions.open, 10);
}

TEST_P(LongOracleGive, PlannerAndGecodeAgreeOnWhatIsUnderWay)
{
    const Sizes sizes = manySizes(GetParam());
    const Opinions opinions = expectSameOpinionsUnderWay(2'000'000 + GetParam() * 1'000,
                                                         static_cast<int>(inBlock), sizes, howMuch(sizes));
    count("uncertain lengths, under way", opinions);
    EXPECT_GT(opinions.withGive(10, 10), 5) << textOf(opinions);
    EXPECT_LT(opinions.open, 10);
}

INSTANTIATE_TEST_SUITE_P(Blocks, LongOracleGive, testing::Range<std::uint64_t>(0, 50));
INSTANTIATE_TEST_SUITE_P(Blocks, LongOracle, testing::Range<std::uint64_t>(0, 50));

}  // namespace
}  // namespace oracle
