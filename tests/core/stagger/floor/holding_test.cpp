#include "core/stagger/floor/holding.h"

#include "core/stagger/floor/floor.h"
#include "core/stagger/forecast.h"
#include "core/stagger/safe_starts.h"
#include "core/temporal/controllability.h"
#include "tests/bench/floor_service.h"
#include "tests/core/stagger/following/followed.h"
#include "tests/core/stagger/support.h"
#include "tests/oracle/checker.h"
#include "tests/oracle/order.h"
#include "tests/oracle/random_service.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <ctime>

// The give of plans of many heads: as much as is found, and never more than the plan has.

namespace core::stagger::floor {
namespace {

using testing::IsEmpty;

/// The checker's own network of the plan's order; only what follows from it is drawn as the planner draws it,
/// as the checker's own way takes too long for so many tasks.
void expectHoldsByTheCheckersOrder(const Question& question, const Plan& plan)
{
    const oracle::PlanView view{question, plan.data()};
    const oracle::Points points{question};
    const temporal::UncertainNetwork network = oracle::networkOf(points, oracle::orderOf(view), *plan->give);
    EXPECT_THAT(temporal::objectionsTo(network, points.timesOf(view)), IsEmpty());
}

/// Each run is judged by the checker as if its lengths had been known.
void expectEveryRunKeepsAllLimits(const Question& question, const Plan& plan, int runs)
{
    Follower follower{question, plan};
    std::mt19937_64 random{1};
    std::vector<std::vector<Time>> lengths(2);
    for (const temporal::Uncertain& link : follower.links()) {
        lengths[0].push_back(link.least);
        lengths[1].push_back(link.most);
    }
    while (static_cast<int>(lengths.size()) < runs)
        lengths.push_back(follower.randomLengths(random));
    for (const std::vector<Time>& each : lengths) {
        for (const Way way : {Way::AsPlanned, Way::AtTheLatest})
            EXPECT_THAT(wrongWith(question, follower.follow(each, way, random)), IsEmpty());
    }
}

TEST(Holding, ADayOfTwelveHeadsCanBePlannedToHoldForAllLengths)
{
    const Question question = bench::dayOnTheFloor(12);
    const auto answer = plan(question, conflicts(3'000));
    ASSERT_TRUE(answer) << answer.error().text;
    EXPECT_THAT(oracle::violations(question, answer->data()), IsEmpty());
    EXPECT_EQ((*answer)->give, 100);
    EXPECT_TRUE((*answer)->giveProved);
    expectHoldsByTheCheckersOrder(question, *answer);
    expectEveryRunKeepsAllLimits(question, *answer, 6);
}

TEST(Holding, APlanOfTwelveHeadsCanBeFollowed)
{
    const Question question = bench::dayOnTheFloor(12, 2);
    const auto answer = plan(question, conflicts(2'000));
    ASSERT_TRUE(answer) << answer.error().text;
    ASSERT_GT((*answer)->give, 0);
    const std::vector<SafeStart> starts = safeStarts(question, *answer);
    EXPECT_EQ(starts.size(), (*answer)->tasks.size());
    for (const SafeStart& start : starts) {
        EXPECT_EQ(start.safeFor, SafeFor::LengthsHeld);
        EXPECT_LE(start.earliest, answer->find(start.task)->start);
    }
    const auto forecasted = forecast(question, *answer, {.runs = 100, .seed = 1});
    ASSERT_TRUE(forecasted);
    if ((*answer)->give == 100) {
        EXPECT_EQ(forecasted->allInside, 100);
    }
}

// The checker, which has an order and reductions of its own, judges the give of plans of up to 60 tasks.
TEST(Holding, NeverSaysMoreThanAnyPlanCanHoldAndMostlyFindsThat)
{
    int compared = 0;
    int reached = 0;
    int some = 0;
    for (std::uint64_t seed = 1; seed <= 120; ++seed) {
        const Question question = oracle::randomQuestion(seed,
                                                         {.leastHeads = 2,
                                                          .mostHeads = 3,
                                                          .mostTasks = 12,
                                                          .mostZones = 3,
                                                          .mostCoats = 2,
                                                          .uncertain = true});
        const auto exact = plan(question, conflicts(20'000));
        if (!exact || !(*exact)->giveProved)
            continue;
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << oracle::questionText(question));
        const auto answer = planFloor(question, conflicts(2'000));
        if (!answer)
            continue;
        EXPECT_THAT(oracle::violations(question, answer->data()), IsEmpty());
        ASSERT_EQ((*answer)->give.has_value(), (*exact)->give.has_value());
        if (!(*answer)->give)
            continue;
        ++compared;
        EXPECT_LE((*answer)->give, (*exact)->give);
        EXPECT_EQ((*answer)->giveProved, (*answer)->give == 100);
        EXPECT_LE((*answer)->provedBound, (*answer)->worth);
        if ((*answer)->give == (*exact)->give && (*exact)->proved) {
            EXPECT_GE((*answer)->worth, (*exact)->worth);
            EXPECT_LE((*answer)->provedBound, (*exact)->worth);
        }
        if ((*answer)->give < 100) {
            EXPECT_FALSE(oracle::holdsFor({question, answer->data()}, *(*answer)->give + 10));
        }
        reached += (*answer)->give == (*exact)->give ? 1 : 0;
        some += (*answer)->give > 0 ? 1 : 0;
    }
    RecordProperty("compared", compared);
    RecordProperty("reached", reached);
    RecordProperty("some", some);
    EXPECT_GT(compared, 40);
    EXPECT_GT(reached * 2, compared);
    EXPECT_LT(some, compared);
}

TEST(Holding, WhatWasKnownBeforeIsNeverMadeWorse)
{
    int less = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const Question question = oracle::randomQuestion(seed,
                                                         {.leastHeads = 2,
                                                          .mostHeads = 2,
                                                          .mostTasks = 12,
                                                          .mostZones = 3,
                                                          .mostCoats = 2,
                                                          .uncertain = true});
        const auto exact = plan(question, conflicts(20'000));
        if (!exact || !(*exact)->give)
            continue;
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << oracle::questionText(question));
        const auto alone = planFloor(question, conflicts(1'000));
        less += alone && (*alone)->give < (*exact)->give ? 1 : 0;
        const auto answer = planFloor(question, conflicts(1'000), *exact);
        ASSERT_TRUE(answer);
        EXPECT_THAT(oracle::violations(question, answer->data()), IsEmpty());
        EXPECT_FALSE(isBetter(*exact, *answer));
        EXPECT_EQ((*answer)->giveProved, (*exact)->giveProved);
    }
    EXPECT_GT(less, 0);
}

TEST(Holding, WhereNoGuaranteeIsAskedForNothingIsSaidOfIt)
{
    Question question = bench::dayOnTheFloor(2, 1);
    question.guarantee = false;
    const auto answer = planFloor(question, conflicts(500));
    ASSERT_TRUE(answer) << answer.error().text;
    EXPECT_FALSE((*answer)->give);
}

/// Nobody is promised anything, and every zone is looked at some five times.
Question hugeFloor(std::size_t& zones, std::size_t& looks)
{
    Question question = bench::dayOnTheFloor(24);
    for (service::Service& service : question.services) {
        service.readyBy.reset();
        for (service::Coat& coat : service.coats) {
            for (service::Zone& zone : coat.zones) {
                zone.looks->first = std::max<Seconds>(zone.develop.target - minutes{10}, minutes{1});
                zone.looks->every = minutes{2};
                zone.looks->tolerance = minutes{1};
                ++zones;
                looks += zone.looks->moments().size();
            }
        }
    }
    return question;
}

TEST(Holding, TwoHundredZonesWithAThousandLooksEndSoonAfterTheyAreStopped)
{
    std::size_t zones = 0;
    std::size_t looks = 0;
    const Question question = hugeFloor(zones, looks);
    EXPECT_GT(zones, 200U);
    EXPECT_GT(looks, 1'000U);
    const std::clock_t begin = std::clock();
    const auto passed = [begin] { return static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC; };
    const auto answer =
        plan(question, {.conflicts = UINT64_MAX, .stop = [&] { return passed() > 6; }, .better = {}});
    EXPECT_LT(passed(), 30);
    if (!answer) {
        EXPECT_TRUE(answer.error().stopped);
        return;
    }
    EXPECT_THAT(oracle::violations(question, answer->data()), IsEmpty());
    ASSERT_TRUE((*answer)->give);
    EXPECT_EQ((*answer)->giveProved, (*answer)->give == 100);
    EXPECT_FALSE(safeStarts(question, *answer).empty());
    EXPECT_LT(passed(), 45);
}

TEST(Holding, OnlyWhatIsStillOpenIsSlowed)
{
    Question question = ask(fromOpening({slowZone("Root", 25, 38, 40), slowZone("Ends", 26, 27, 36)}));
    happened(question, idOf(TaskKind::Apply, 0), 0);
    const Question slow = slowed(question, 5);
    const std::vector<service::Zone>& zones = slow.services.front().coats.front().zones;
    EXPECT_EQ(zones[0].apply.usual, minutes{11});
    EXPECT_EQ(zones[1].apply.usual, Seconds{11 * 60 + 90});
    EXPECT_EQ(zones[1].apply.slowest, minutes{14});
}

}  // namespace
}  // namespace core::stagger::floor
