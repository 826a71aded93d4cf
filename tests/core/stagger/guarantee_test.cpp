#include "core/service/check.h"
#include "tests/core/stagger/give_by_trying.h"
#include "tests/core/stagger/support.h"
#include "tests/oracle/gecode_model.h"
#include "tests/oracle/random_service.h"

#include <gtest/gtest.h>

#include <random>

// The give. Chains of zones with known answers are worked out by hand: for zones i before j on one pair of
// hands under one rinse, whatever happens between the end of i and the end of j takes from i's window and not
// from j's, so most_i - least_j must be at least the sum of the longest applications between. With the give
// as a share s of the room between 11 and 14 min the longest is 11 + 3s.

namespace core::stagger {
namespace {

TEST(Give, IsWholeWhereTheFirstZonesWindowTakesTheLongestApplication)
{
    // 40 - 26 = 14: the second zone may take its longest.
    const Plan plan = planned(fromOpening({slowZone("Root", 25, 38, 40), slowZone("Ends", 26, 27, 36)}));

    EXPECT_EQ(plan->give, 100);
    EXPECT_TRUE(plan->giveProved);
    EXPECT_EQ(plan->zones.front().slowestHeld, minutes{14});
    EXPECT_EQ(plan->zones.front().quickestHeld, minutes{8});
}

TEST(Give, IsTheGreatestShareThatTheWindowsTake)
{
    // Root first: 40 - 27 = 13 >= 11 + 3s, so s <= 2/3. Ends first: 36 - 25 = 11 leaves nothing. In tenths:
    // 60 %, which is 11 + 1.8 min.
    const Plan plan = planned(fromOpening({slowZone("Root", 25, 38, 40), slowZone("Ends", 27, 27, 36)}));

    EXPECT_EQ(plan->give, 60);
    EXPECT_EQ(plan->zones.front().slowestHeld, Seconds{768});
    EXPECT_EQ(plan->zones.front().quickestHeld, Seconds{552});
}

TEST(Give, OfFourZonesHangsOnTheFirstAndTheLast)
{
    // 75 - 33 = 42 = 3 * 14.
    EXPECT_EQ(planned(fromOpening({slowZone("Root", 55, 70, 75), slowZone("Crown", 45, 58, 65),
                                   slowZone("Mids", 30, 47, 47), slowZone("Ends", 33, 33, 40)}))
                  ->give,
              100);
    // 74 - 33 = 41 >= 3 * (11 + 3s): s <= 8/9.
    EXPECT_EQ(planned(fromOpening({slowZone("Root", 55, 70, 74), slowZone("Crown", 45, 58, 65),
                                   slowZone("Mids", 30, 47, 47), slowZone("Ends", 33, 33, 40)}))
                  ->give,
              80);
}

TEST(Give, ComesBeforeTheTargets)
{
    // For usual lengths Ends begins a minute after Root: 1 + 11 + 27 = 39 for Root, both on target. So that
    // Ends may take 14 min, still have 26 and Root no more than 40, it must begin at once: 11 + 27 = 38 for
    // Root.
    Question question = ask(fromOpening({slowZone("Root", 25, 39, 40), slowZone("Ends", 26, 27, 27)}));
    question.guarantee = false;
    EXPECT_EQ(deviationOf(planned(question)), 0.0);
    EXPECT_FALSE(planned(question)->give);

    question.guarantee = true;
    const Plan plan = planned(question);
    EXPECT_EQ(plan->give, 100);
    EXPECT_EQ(developmentOf(plan, 0), 38);
    EXPECT_EQ(developmentOf(plan, 1), 27);
}

TEST(Give, IsNotSpokenOfWhereEveryLengthIsCertain)
{
    const Plan plan = planned(fromOpening(
        {makeZone("Root", minutes{10}, exactly(30)), makeZone("Ends", minutes{10}, exactly(20))}));

    EXPECT_FALSE(plan->give);
}

TEST(Give, CountsWhatAnApplicationUnderWayMayStillTake)
{
    // Root began at 0 and goes on at 13: it may end at once or at 14. Its window of 30 to 31 takes that
    // minute.
    Question question = ask(fromOpening({slowZone("Root", 30, 30, 31)}));
    happened(question, idOf(TaskKind::Apply), 0);
    question.now = at(13);
    EXPECT_EQ(planned(question)->give, 100);
}

TEST(Give, IsThatOfThePromiseTooWhereCoatsFollowEachOther)
{
    // Each coat takes 11 + 30 + 5 min as usual and up to 3 more: 92 and up to 98. A promise at 95 leaves 3 of
    // those 6, and with the water as early as 29 each coat gains a minute: 5 of 6, 80 % of which the tenths
    // allow.
    Service service = readyBy(95, {slowZone("Root", 29, 30, 60)});
    service.coats.push_back(service.coats.front());
    service.coats.back().name = "Coat 2";
    service.notBefore = opening;

    EXPECT_EQ(planned(service)->give, 80);
}

TEST(Give, StartsSoEarlyThatThePromiseHoldsAfterTheLongestApplication)
{
    // Backwards from 60: 5 min of rinsing, at least 29 of development, up to 14 of applying: it must begin
    // by 12. For usual lengths alone 60 - 5 - 30 - 11 = 14 would do.
    const Plan plan = planned(readyBy(60, {slowZone("Root", 29, 30, 60)}));
    EXPECT_EQ(plan->give, 100);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply)), 12);

    Question question = ask(readyBy(60, {slowZone("Root", 29, 30, 60)}));
    question.guarantee = false;
    EXPECT_EQ(startOf(planned(question), idOf(TaskKind::Apply)), 14);
}

/// Looked at once, at that minute of its clock and not a second sooner or later.
Zone lookedAt(const std::string& name, int apply, int develop, int first, int length)
{
    Zone zone = makeZone(name, minutes{apply}, exactly(develop));
    zone.looks = service::Looks{.first = minutes{first},
                                .every = {},
                                .length = minutes{length},
                                .tolerance = Seconds{0},
                                .until = minutes{first + 1}};
    return zone;
}

/// Usually 3 min to apply, developing from first contact.
Zone fromFirstContact(const std::string& name, int quickest, int slowest, int develop)
{
    Zone zone = makeZone(name, minutes{3}, exactly(develop));
    zone.apply = {minutes{quickest}, minutes{3}, minutes{slowest}};
    zone.clock = service::ClockStart::FirstContact;
    return zone;
}

TEST(Give, OfALookMadeWhileApplyingDoesNotHangOnWhoElseApplies)
{
    // The water at 21 fixes all: Root 0 to 6 and its look at 9; Ends 9 to 13, so the look is made by who
    // applies Ends; Mids from 5, usually to 8 and at the latest to 11, by the other hands. Whether they are
    // still at it at 9 changes nothing about who makes the look.
    Service service = fromOpening({lookedAt("Root", 6, 15, 3, 2), makeZone("Ends", minutes{4}, exactly(8)),
                                   fromFirstContact("Mids", 2, 6, 16)});
    addHands(service);

    const Plan plan = planned(service);
    EXPECT_EQ(plan->give, 100);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Look)), 9);
    EXPECT_EQ(plan.find(idOf(TaskKind::Look))->madeWhile, idOf(TaskKind::Apply, 1));
}

TEST(Give, OfALookMadeWhileTwoApplyHangsOnTheOneWhoMakesIt)
{
    // Root 0 to 2 and Ends 3 to 13 by Hands 1, who leave at 13; so Hands 2, who come at 5, make the look from
    // 11 to 14, while they apply Mids from 9 on. With a share s that may be over by 12 - 2s, but not by 11:
    // then Hands 1 would have to make it. So s < 1/2.
    Service service = fromOpening({lookedAt("Root", 2, 18, 9, 3), makeZone("Ends", minutes{10}, exactly(7)),
                                   fromFirstContact("Mids", 1, 3, 11)});
    addHands(service);
    service.crew.hands[0].away = {{at(13), at(40)}};
    service.crew.hands[1].away = {{at(0), at(5)}};
    service.readyBy = at(25);  // Not when all are back.

    const Plan plan = planned(service);
    EXPECT_EQ(plan->give, 40);
    EXPECT_EQ(plan.find(idOf(TaskKind::Look))->madeWhile, idOf(TaskKind::Apply, 2));
}

/// A service of a few seconds, so that everything can be tried.
Service tinyService(std::mt19937& random)
{
    const auto from = [&random](int least, int most) {
        return Seconds{std::uniform_int_distribution<int>{least, most}(random)};
    };
    std::vector<Zone> zones;
    const bool two = from(0, 1).count() == 1;
    const int count = two ? 2 : static_cast<int>(from(2, 3).count());
    for (int place = 0; place < count; ++place) {
        Zone zone = makeZone("Zone " + std::to_string(place), Seconds{2}, {});
        zone.apply = {from(1, 2), Seconds{2}, from(2, 4)};
        zone.develop.least = from(2, 6);
        zone.develop.target = zone.develop.least + from(0, 1);
        zone.develop.most = zone.develop.target + from(0, 3);
        if (from(0, 2).count() == 0) {
            zone.looks = service::Looks{
                .first = from(1, 3), .every = {}, .length = Seconds{1}, .tolerance = Seconds{1}};
            zone.looks->until = zone.develop.target;
        }
        zones.push_back(zone);
    }
    Service service = makeService(std::move(zones), Seconds{2});
    service.coats.front().bowls.front().mix = from(0, 1);
    service.notBefore = opening;
    if (two)
        addHands(service);
    return service;
}

// And what the second planner of tests/oracle finds.
TEST(Give, IsWhatTryingEverythingFinds)
{
    std::mt19937 random{20261125};
    int whole = 0;
    int some = 0;
    for (int turn = 0; turn < 120; ++turn) {
        const Service service = tinyService(random);
        if (!service::checkService(service).empty())
            continue;
        const std::string shown = oracle::questionText(ask(service));
        const std::optional<TriedOut> expected = giveByTrying(service);
        const auto found = plan(ask(service));
        ASSERT_EQ(found.has_value(), expected.has_value()) << shown;
        const oracle::GecodeAnswer third = oracle::planWithGecode(ask(service));
        ASSERT_EQ(third.plan.has_value(), expected.has_value()) << shown;
        if (!found)
            continue;
        ASSERT_EQ(third.give, (*found)->give) << shown;
        ASSERT_EQ(third.plan->worth, (*found)->worth) << shown;
        const int give = (*found)->give.value_or(100);
        whole += (*found)->give && give == 100 ? 1 : 0;
        some += give < 100 && give > 0 ? 1 : 0;
        ASSERT_EQ(give, expected->give) << shown;
        ASSERT_EQ((*found)->worth.deviation.hundredthSeconds, expected->worth.deviation.hundredthSeconds)
            << shown;
        ASSERT_EQ((*found)->worth.waste, expected->worth.waste) << shown;
        ASSERT_EQ((*found)->worth.staleness, expected->worth.staleness) << shown;
    }
    EXPECT_GT(whole, 10);
    EXPECT_GT(some, 3);
}

// What holds for all lengths of a range holds for those of a part of it.
TEST(Give, IsNoLessWhereLengthsAreMoreCertain)
{
    std::mt19937 random{20261127};
    int plans = 0;
    int more = 0;
    for (int turn = 0; turn < 400; ++turn) {
        Service service = tinyService(random);
        const auto before = plan(ask(service));
        if (!before || !(*before)->give)
            continue;
        for (Zone& zone : service.coats.front().zones) {
            const auto between = [&random](Seconds least, Seconds most) {
                return Seconds{
                    std::uniform_int_distribution<std::int64_t>{least.count(), most.count()}(random)};
            };
            zone.apply.quickest = between(zone.apply.quickest, zone.apply.usual);
            zone.apply.slowest = between(zone.apply.usual, zone.apply.slowest);
        }
        const auto after = plan(ask(service));
        ASSERT_TRUE(after) << oracle::questionText(ask(service));
        ASSERT_GE((*after)->give.value_or(100), *(*before)->give) << oracle::questionText(ask(service));
        ++plans;
        more += (*after)->give.value_or(100) > *(*before)->give ? 1 : 0;
    }
    EXPECT_GT(plans, 50);
    EXPECT_GT(more, 5);
}

}  // namespace
}  // namespace core::stagger
