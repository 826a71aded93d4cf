#include "tests/oracle/checker.h"
#include "tests/oracle/dice.h"
#include "tests/oracle/random_facts.h"
#include "tests/oracle/second_opinion.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// The planner against a model of the same rules in Gecode, on 400 random services, 360 random sets of two or
// three heads, 240 of one to three whose lengths are uncertain, and 780 of one to three that are under way,
// 180 of them with uncertain lengths, and 180 of which starts are wanted; with fixed seeds. The give and
// levels 2, 3 and 4 of what is best must be the same to the second, on small ones every start, and so must
// the answer that nothing fits.

namespace oracle {
namespace {

constexpr std::uint64_t inBlock = 30;
/// With more of them Gecode takes long. oracle_long_test.cpp has larger ones.
constexpr std::size_t everydayTasks = 10;

class OracleBlock : public testing::TestWithParam<std::uint64_t> { };

TEST_P(OracleBlock, PlannerAndGecodeAgree)
{
    const Opinions opinions = expectSameOpinions(GetParam() * inBlock + 1, (GetParam() + 1) * inBlock,
                                                 {.mostTasks = everydayTasks});
    EXPECT_GT(opinions.planned, 5);
    EXPECT_GT(opinions.refused, 1);
    EXPECT_LT(opinions.open, 1);
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
    Sizes sizes = severalHeads;
    sizes.mostTasks = everydayTasks;
    const Opinions opinions = expectSameOpinions(before + 1, before + inBlock, sizes);
    EXPECT_GT(opinions.planned, 5);
    EXPECT_GT(opinions.refused, 2);
    EXPECT_LT(opinions.open, 2);
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

class OracleGive : public testing::TestWithParam<std::uint64_t> { };

TEST_P(OracleGive, PlannerAndGecodeAgree)
{
    const std::uint64_t before = 4'000 + GetParam() * 2 * inBlock;
    Sizes sizes = uncertainLengths;
    sizes.mostTasks = everydayTasks;
    const Opinions opinions = expectSameOpinions(before + 1, before + 2 * inBlock, sizes);
    EXPECT_GT(opinions.withGive(10, 10), 5) << textOf(opinions);
    EXPECT_GT(opinions.withGive(1, 9), 2) << textOf(opinions);
    EXPECT_GT(opinions.refused, 2);
    EXPECT_LT(opinions.open, 2);
}

TEST(Oracle, PlannerAndGecodeAgreeOnEveryStartWhereLengthsAreUncertain)
{
    Sizes sizes = uncertainLengths;
    sizes.mostHeads = 2;
    sizes.mostZones = 2;
    sizes.mostTasks = 8;
    const Opinions opinions = expectSameOpinions(5001, 5060, sizes, Compare::EveryStart);
    EXPECT_GT(opinions.withGive(10, 10), 5) << textOf(opinions);
    EXPECT_GT(opinions.withGive(1, 9), 5) << textOf(opinions);
    EXPECT_GT(opinions.refused, 5);
    EXPECT_LT(opinions.open, 2);
}

/// One to three heads, of which some have been begun.
Sizes underWaySizes(bool uncertain)
{
    Sizes sizes = uncertainLengths;
    sizes.uncertain = uncertain;
    sizes.mostTasks = everydayTasks;
    return sizes;
}

TEST_P(OracleBlock, PlannerAndGecodeAgreeOnWhatIsUnderWay)
{
    const Opinions opinions = expectSameOpinionsUnderWay(10'000 + GetParam() * 1'000, 60,
                                                         underWaySizes(false), Compare::EveryStart);
    EXPECT_GT(opinions.planned, 30);
    EXPECT_GT(opinions.refused, 0);
    EXPECT_LT(opinions.open, 2);
}

TEST_P(OracleGive, PlannerAndGecodeAgreeOnWhatIsUnderWay)
{
    const Opinions opinions = expectSameOpinionsUnderWay(20'000 + GetParam() * 1'000, 120,
                                                         underWaySizes(true), Compare::EveryStart);
    EXPECT_GT(opinions.withGive(10, 10), 5) << textOf(opinions);
    EXPECT_GT(opinions.withGive(1, 9), 2) << textOf(opinions);
    EXPECT_LT(opinions.open, 2);
}

// Where limits may be broken Gecode has no say: but the checker knows what they come to.
TEST(Oracle, PlansThatBreakLimitsSayByHowMuch)
{
    int broken = 0;
    for (std::uint64_t seed = 30'000; seed < 30'800; ++seed) {
        core::stagger::Question question = randomQuestion(seed, underWaySizes(false));
        question.mayBreakLimits = true;
        auto plan = core::stagger::plan(question);
        if (plan && seed % 2 == 0) {
            question = underWay(question, plan->data(), seed);
            plan = core::stagger::plan(question);
        }
        if (!plan)
            continue;
        broken += (*plan)->worth.breach.hundredthSeconds > 0 ? 1 : 0;
        EXPECT_THAT(violations(question, plan->data()), testing::IsEmpty())
            << "seed " << seed << '\n'
            << questionText(question) << planText(question, plan->data());
    }
    EXPECT_GT(broken, 100);
}

/// The question with starts that are wanted of some zones, around where its plan has them.
core::stagger::Question withWishes(core::stagger::Question question, const core::stagger::Plan& plan,
                                   std::uint64_t seed)
{
    Dice dice{seed};
    for (const core::stagger::PlannedZone& zone : plan->zones) {
        if (dice.inHundred(50))
            question.services[zone.service].coats[zone.coat].zones[zone.zone].notBefore =
                zone.firstContact + core::measure::Seconds{dice.number(-3, 8)};
    }
    return question;
}

TEST_P(OracleGive, PlannerAndGecodeAgreeOnStartsThatAreWanted)
{
    Opinions opinions;
    Sizes sizes = uncertainLengths;
    sizes.mostTasks = 8;
    for (std::uint64_t seed = 40'000 + GetParam() * 60; seed < 40'060 + GetParam() * 60; ++seed) {
        sizes.uncertain = seed % 2 == 0;
        const core::stagger::Question question = randomQuestion(seed, sizes);
        const auto plan = core::stagger::plan(question);
        if (!plan)
            continue;
        const core::stagger::Question wished = withWishes(question, *plan, seed);
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << questionText(wished));
        opinions += expectSameOpinion(wished, Compare::EveryStart);
    }
    EXPECT_GT(opinions.planned, 15) << textOf(opinions);
    EXPECT_GT(opinions.refused, 0) << textOf(opinions);
    EXPECT_LT(opinions.open, 3);
}

INSTANTIATE_TEST_SUITE_P(Blocks, OracleGive, testing::Range<std::uint64_t>(0, 3));
INSTANTIATE_TEST_SUITE_P(Blocks, OracleBlock, testing::Range<std::uint64_t>(0, 10));

}  // namespace
}  // namespace oracle
