#include "core/stagger/plan.h"

#include "tests/core/stagger/support.h"

#include <gtest/gtest.h>

// Windows, orders and water. Hand-worked: minutes from the opening, rinses take 5 unless said.

namespace core::stagger {
namespace {

using service::ClockStart;

TEST(PlannerWindows, DevelopmentCountsFromTheEndOfApplicationOrFromFirstContact)
{
    Zone zone = makeZone("Root", minutes{20}, exactly(35));
    EXPECT_EQ(startOf(planned(fromOpening({zone})), idOf(TaskKind::Rinse)), 55);
    zone.clock = ClockStart::FirstContact;
    EXPECT_EQ(startOf(planned(fromOpening({zone})), idOf(TaskKind::Rinse)), 35);
}

// The first strand may carry it for 55, of which 20 are applying.
TEST(PlannerWindows, TheFirstStrandIsCoveredNoLongerThanItMay)
{
    Zone zone = makeZone("Root", minutes{20}, {minutes{30}, minutes{40}, minutes{45}});
    zone.firstStrandMost = minutes{55};
    const Plan plan = planned(fromOpening({zone}));
    EXPECT_EQ(developmentOf(plan, 0), 35);
    EXPECT_EQ(deviationOf(plan), 5);
    zone.firstStrandMost = minutes{50} - Seconds{1};
    EXPECT_FALSE(fits(fromOpening({zone})));
}

// Counted from first contact 20 would do, but the last strand is covered at 20 and needs 15.
TEST(PlannerWindows, TheLastStrandIsCoveredAsLongAsItMust)
{
    Zone zone = makeZone("Crown", minutes{20}, {minutes{10}, minutes{20}, minutes{45}});
    zone.clock = ClockStart::FirstContact;
    zone.lastStrandLeast = minutes{15};
    const Plan plan = planned(fromOpening({zone}));
    EXPECT_EQ(developmentOf(plan, 0), 35);
    EXPECT_EQ(deviationOf(plan), 15);
    zone.lastStrandLeast = minutes{25} + Seconds{1};
    EXPECT_FALSE(fits(fromOpening({zone})));
}

TEST(PlannerWindows, WaterComesAfterTheApplicationEvenWhereTheClockStartsAtFirstContact)
{
    Zone zone = makeZone("Toner", minutes{10}, {minutes{3}, minutes{5}, minutes{20}});
    zone.clock = ClockStart::FirstContact;
    const Plan plan = planned(fromOpening({zone}));
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Rinse)), 10);
    EXPECT_EQ(deviationOf(plan), 5);
}

/// 50 wanted for the first, 20 for the second, both wide open; 10 each to apply.
Service fiftyAndTwenty()
{
    return fromOpening({makeZone("Root", minutes{10}, {minutes{10}, minutes{50}, minutes{60}}),
                        makeZone("Ends", minutes{10}, {minutes{10}, minutes{20}, minutes{60}})});
}

TEST(PlannerWindows, AZoneMayWaitForItsMoment)
{
    const Plan plan = planned(fiftyAndTwenty());
    EXPECT_EQ(deviationOf(plan), 0);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 1)), 30);  // Water at 60.
}

// Within 5 of the root the ends are over at 25 at the latest: developments differ by 15 where 30 is wanted.
TEST(PlannerWindows, ABlendLineIsStillWet)
{
    Service service = fiftyAndTwenty();
    service.coats[0].zones[1].after.push_back({.zone = 0, .longestGap = minutes{5}});
    const Plan plan = planned(service);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 1)), 15);
    EXPECT_EQ(developmentOf(plan, 0), 35);
    EXPECT_EQ(developmentOf(plan, 1), 20);
    EXPECT_EQ(deviationOf(plan), 15);
}

// The root after the ends: it develops 10 less at least where it should develop 30 more: 40.
TEST(PlannerWindows, AZoneGoesOnAfterAnother)
{
    Service service = fiftyAndTwenty();
    service.coats[0].zones[0].after.push_back({.zone = 1, .longestGap = {}});
    const Plan plan = planned(service);
    EXPECT_EQ(endOf(plan, idOf(TaskKind::Apply, 1)), startOf(plan, idOf(TaskKind::Apply, 0)));
    EXPECT_EQ(deviationOf(plan), 40);
}

TEST(PlannerWindows, TwoPairsOfHandsKeepTheOrderToo)
{
    Service service = fiftyAndTwenty();
    service.coats[0].zones[0].after.push_back({.zone = 1, .longestGap = {}});
    addHands(service);
    EXPECT_EQ(deviationOf(planned(service)), 40);
}

// Rinsed for 10, the left is reached at once and the right after 5: applied 5 after one another both get 20.
TEST(PlannerWindows, WaterReachesAZoneLaterThanItsGroup)
{
    Service service =
        fromOpening({makeZone("Left", minutes{5}, exactly(20)), makeZone("Right", minutes{5}, exactly(20))});
    service.coats[0].groups[0].rinse = minutes{10};
    EXPECT_FALSE(fits(service));
    service.coats[0].zones[1].reach = minutes{5};
    const Plan plan = planned(service);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Rinse)), 25);
    EXPECT_EQ(plan.zone(0, 0, 1)->water, at(30));
}

TEST(PlannerWindows, ABookedBasinFixesTheWater)
{
    Service service = fromOpening({makeZone("Root", minutes{20}, {minutes{30}, minutes{35}, minutes{45}})});
    service.coats[0].groups[0].waterEarliest = at(70);
    service.coats[0].groups[0].waterLatest = at(75);
    const Plan plan = planned(service);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Rinse)), 70);
    EXPECT_EQ(developmentOf(plan, 0), 35);
    service.coats[0].groups[0].waterEarliest.reset();
    service.coats[0].groups[0].waterLatest = at(49);  // 20 + 30 = 50.
    EXPECT_NE(demandsOf(refused(service)).find("the basin is booked, water by a fixed time"),
              std::string::npos);
}

/// Left and right have to be applied at once by two pairs of hands, who are back when it is time to rinse.
Service twoGroups()
{
    const oracle::Span window{minutes{20}, minutes{20}, minutes{30}};
    Service service =
        fromOpening({makeZone("Left", minutes{10}, window), makeZone("Right", minutes{10}, window)});
    service.coats[0].zones[1].group = 1;
    service.coats[0].groups.push_back(
        {.name = "Right", .rinse = minutes{5}, .waterEarliest = {}, .waterLatest = {}});
    addHands(service);
    service.crew.basins = 2;
    for (service::Hands& hands : service.crew.hands)
        hands.away = {{at(10), at(30)}};
    service.readyBy = at(45);
    return service;
}

Service comingApart(Service service)
{
    service.head.kind = service::HeadKind::Wefts;
    service.head.piecesComeApart = true;
    return service;
}

// [0, 10] both, wanted at 30 both; one head is at one basin at a time, so one waits 5.
TEST(PlannerWindows, OneHeadIsAtOneBasin)
{
    EXPECT_EQ(deviationOf(planned(twoGroups())), 5);
}

TEST(PlannerWindows, WeftsThatComeApartAreAtTwoBasins)
{
    Service service = comingApart(twoGroups());
    EXPECT_EQ(deviationOf(planned(service)), 0);
}

TEST(PlannerWindows, WeftsThatComeApartShareTheOnlyBasin)
{
    Service service = comingApart(twoGroups());
    service.crew.basins = 1;
    EXPECT_EQ(deviationOf(planned(service)), 5);
}

/// The first is rinsed [15, 20]; the second takes 12 to apply and has to start within `gap` of 5.
Service whileAtTheBasin(int gap)
{
    Service service = fromOpening(
        {makeZone("Fringe", minutes{5}, exactly(10)), makeZone("Back", minutes{12}, exactly(30))});
    service.coats[0].zones[1].after.push_back({.zone = 0, .longestGap = minutes{gap}});
    service.coats[0].zones[1].group = 1;
    service.coats[0].groups.push_back(
        {.name = "Back", .rinse = minutes{5}, .waterEarliest = {}, .waterLatest = {}});
    addHands(service);
    return service;
}

// Between 5 and 15 there are 10, not 12.
TEST(PlannerWindows, NothingIsAppliedWhileTheHeadIsAtABasin)
{
    EXPECT_FALSE(fits(whileAtTheBasin(6)));
    EXPECT_EQ(startOf(planned(whileAtTheBasin(15)), idOf(TaskKind::Apply, 1)), 20);
}

TEST(PlannerWindows, WeftsThatComeApartAreAppliedMeanwhile)
{
    Service service = comingApart(whileAtTheBasin(6));
    EXPECT_EQ(startOf(planned(service), idOf(TaskKind::Apply, 1)), 5);
    service.crew.hands.pop_back();
    EXPECT_FALSE(fits(service));  // Rinsing and applying are two things at once.
}

// The bowl lasts just for the application, so it is mixed [17, 20], while the head is rinsed.
TEST(PlannerWindows, ABowlIsMixedWhileTheHeadIsAtABasin)
{
    Service service = whileAtTheBasin(15);
    service.coats[0].bowls.push_back(
        {.name = "Back bowl", .mix = minutes{3}, .potLife = minutes{12}, .note = {}});
    service.coats[0].zones[1].bowl = 1;
    const Plan plan = planned(service);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Mix, 1)), 17);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 1)), 20);
    service.crew.hands.pop_back();
    EXPECT_FALSE(fits(service));
}

}  // namespace
}  // namespace core::stagger
