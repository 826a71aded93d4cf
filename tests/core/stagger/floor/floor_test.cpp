#include "core/stagger/floor/floor.h"
#include "core/stagger/floor/holding.h"
#include "core/stagger/floor/part.h"
#include "tests/bench/floor_service.h"
#include "tests/core/stagger/support.h"
#include "tests/oracle/checker.h"
#include "tests/oracle/random_service.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Many heads at once: a sound plan whenever it is stopped, never worse than before, and a bound that is true.

namespace core::stagger::floor {
namespace {

using testing::IsEmpty;

void expectSound(const Question& question, const Plan& plan)
{
    EXPECT_THAT(oracle::violations(question, plan.data()), IsEmpty());
    EXPECT_LE(plan->provedBound, plan->worth);
}

TEST(Floor, PlansADayOfTwelveHeads)
{
    const Question question = bench::dayOnTheFloor(12);
    EXPECT_GT(bench::taskCount(question), 450U);
    ASSERT_TRUE(isLarge(question));
    const auto answer = plan(question, conflicts(4'000));
    ASSERT_TRUE(answer) << answer.error().text;
    expectSound(question, *answer);
    EXPECT_GT((*answer)->provedBound.waste, Seconds{0});
}

TEST(Floor, EachPlanItTellsOfIsSoundAndBetterThanTheOneBefore)
{
    const Question question = bench::dayOnTheFloor(6, 2);
    std::vector<Plan> told;
    Budget budget = conflicts(5'000);
    budget.better = [&](const Plan& plan) { told.push_back(plan); };
    const auto answer = plan(question, budget);
    ASSERT_TRUE(answer) << answer.error().text;
    ASSERT_GT(told.size(), 1U);
    for (const Plan& plan : told)
        expectSound(question, plan);
    for (std::size_t later = 1; later < told.size(); ++later)
        EXPECT_TRUE(isBetter(told[later], told[later - 1]));
    EXPECT_FALSE(isBetter(told.back(), *answer));
    EXPECT_EQ(told.back()->worth, (*answer)->worth);
}

TEST(Floor, TheSameConflictsGiveTheSamePlan)
{
    const Question question = bench::dayOnTheFloor(5, 3);
    EXPECT_EQ(plan(question, conflicts(3'000)), plan(question, conflicts(3'000)));
}

TEST(Floor, MoreTimeIsNeverWorse)
{
    const Question question = bench::dayOnTheFloor(5, 4);
    std::optional<Plan> before;
    for (const std::uint64_t most : {1'000U, 2'000U, 4'000U}) {
        const auto answer = plan(question, conflicts(most));
        ASSERT_TRUE(answer) << answer.error().text;
        if (before) {
            EXPECT_FALSE(isBetter(*before, *answer));
        }
        before = *answer;
    }
}

TEST(Floor, StoppedAtAnyMomentItHasASoundPlanOrSaysThatItWasStopped)
{
    const Question question = bench::dayOnTheFloor(5, 5);
    int planned = 0;
    int stopped = 0;
    for (int most = 1; most < 1'000; most *= 2) {
        int asked = 0;
        const auto answer =
            plan(question, {.conflicts = UINT64_MAX, .stop = [&] { return ++asked > most; }, .better = {}});
        if (answer) {
            ++planned;
            expectSound(question, *answer);
        } else {
            ++stopped;
            EXPECT_TRUE(answer.error().stopped);
        }
    }
    EXPECT_GT(planned, 3);
    EXPECT_GT(stopped, 1);
}

// The search for the whole is exact, so what the floor proves must lie below it, and what it finds above.
TEST(Floor, ItsBoundIsTrueAndItFindsTheBestOfSmallQuestions)
{
    int compared = 0;
    int reached = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const Question question = oracle::randomQuestion(
            seed, {.leastHeads = 2, .mostHeads = 3, .mostTasks = 14, .mostZones = 3, .mostCoats = 2});
        const auto exact = plan(question);
        if (!exact)
            continue;
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << oracle::questionText(question));
        ASSERT_TRUE((*exact)->proved);
        const auto answer = planFloor(question, conflicts(5'000));
        if (!answer) {
            EXPECT_TRUE(answer.error().stopped) << answer.error().text;
            continue;
        }
        ++compared;
        expectSound(question, *answer);
        EXPECT_LE((*answer)->provedBound, (*exact)->worth);
        EXPECT_GE((*answer)->worth, (*exact)->worth);
        reached += (*answer)->worth == (*exact)->worth ? 1 : 0;
    }
    EXPECT_GT(compared, 100);
    EXPECT_GE(reached * 10, compared * 9);
}

// Facts stand, and limits that can no longer hold are broken by as little as is found.
TEST(Floor, BreaksLimitsOnlyWhereARunLeavesNoChoice)
{
    int broken = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        Question question = oracle::randomQuestion(
            seed, {.leastHeads = 2, .mostHeads = 2, .mostTasks = 12, .mostZones = 2, .mostCoats = 1});
        question.preference = Preference::AsAsked;
        const Instant now = opening + Seconds{10};
        question.progress.tasks.push_back(
            {.id = {.service = 1}, .start = now - Seconds{3}, .end = {}, .plannedEnd = {}});
        question.now = now;
        for (service::Bowl& bowl : question.services[1].coats[0].bowls)
            bowl.mix = Seconds{0};
        question.mayBreakLimits = true;
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << oracle::questionText(question));
        const auto exact = plan(question);
        const auto answer = planFloor(question, conflicts(3'000));
        ASSERT_EQ(exact.has_value(), answer.has_value());
        if (!exact)
            continue;
        expectSound(question, *answer);
        EXPECT_LE((*answer)->provedBound, (*exact)->worth);
        EXPECT_GE((*answer)->worth, (*exact)->worth);
        broken += (*answer)->worth.breach > measure::Harm{} ? 1 : 0;
    }
    EXPECT_GT(broken, 5);
}

TEST(Floor, SaysWhichHeadCannotFitEvenOnItsOwn)
{
    Question question = bench::dayOnTheFloor(6, 6);
    service::Service& impossible = question.services[4];
    impossible.readyBy = *impossible.notBefore + minutes{30};
    const auto answer = plan(question, conflicts(200'000));
    ASSERT_FALSE(answer);
    EXPECT_FALSE(answer.error().stopped);
    EXPECT_THAT(answer.error().text, testing::HasSubstr("Wig 5"));
    ASSERT_FALSE(answer.error().demands.empty());
    EXPECT_THAT(answer.error().demands.front().what, testing::StartsWith("Wig 5, "));
}

TEST(Floor, WorthsAddUpLevelByLevel)
{
    const Worth a{{1}, {20}, Seconds{300}, Seconds{4'000}};
    const Worth b{{10}, {200}, Seconds{3'000}, Seconds{40'000}};
    const Worth both{{11}, {220}, Seconds{3'300}, Seconds{44'000}};
    EXPECT_EQ(a + b, both);
    EXPECT_EQ(both - b, a);
}

}  // namespace
}  // namespace core::stagger::floor
