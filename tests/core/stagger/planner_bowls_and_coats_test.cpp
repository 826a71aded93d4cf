#include "core/stagger/plan.h"

#include "tests/core/stagger/support.h"

#include <gtest/gtest.h>

// Bowls and what follows a rinse. Hand-worked: minutes from the opening, rinses take 5.

namespace core::stagger {
namespace {

service::Bowl bowl(const std::string& name, int mix, std::optional<int> potLife = {})
{
    service::Bowl made{.name = name, .mix = minutes{mix}, .potLife = {}, .note = {}};
    if (potLife)
        made.potLife = minutes{*potLife};
    return made;
}

/// Left 20 and right 10 to apply, wide windows: nothing but the bowl is in the way.
Service twoZones()
{
    const oracle::Span wide{minutes{10}, minutes{30}, minutes{90}};
    return fromOpening({makeZone("Left", minutes{20}, wide), makeZone("Right", minutes{10}, wide)});
}

TEST(PlannerBowls, AreMixedBeforeTheyAreUsed)
{
    Service service = twoZones();
    service.coats[0].bowls[0] = bowl("Bowl", 3);
    const Plan plan = planned(service);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Mix)), 0);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 0)), 3);
    // 0 for the zone that comes first and 20 for the other.
    EXPECT_EQ(plan->worth.staleness, minutes{20});
}

// The zones take 30 in all, one straight after the other.
TEST(PlannerBowls, LastForAllTheirZones)
{
    Service service = twoZones();
    service.coats[0].bowls[0] = bowl("Bowl", 3, 30);
    EXPECT_EQ(deviationOf(planned(service)), 10);
    service.coats[0].bowls[0] = bowl("Bowl", 3, 29);
    EXPECT_NE(demandsOf(refused(service)).find("Bowl: used up within 29 min of mixing"), std::string::npos);
}

TEST(PlannerBowls, ThatNeedNoMixingLastFromTheirFirstUse)
{
    Service service = twoZones();
    service.coats[0].bowls[0] = bowl("Bowl", 0, 30);
    EXPECT_EQ(planned(service)->worth.staleness, Seconds{0});
    service.coats[0].bowls[0] = bowl("Bowl", 0, 29);
    EXPECT_FALSE(fits(service));
}

TEST(PlannerBowls, ASecondBowlLastsForItself)
{
    Service service = twoZones();
    service.coats[0].bowls = {bowl("Left bowl", 3, 20), bowl("Right bowl", 3, 10)};
    service.coats[0].zones[1].bowl = 1;
    EXPECT_EQ(planned(service)->worth.staleness, Seconds{0});
}

/// Left over exactly `apart` before right, both mixed by the one pair of hands.
Service twoBowls(int apart)
{
    Service service = fromOpening(
        {makeZone("Left", minutes{10}, exactly(20 + apart)), makeZone("Right", minutes{10}, exactly(20))});
    service.coats[0].bowls = {bowl("Left bowl", 2), bowl("Right bowl", 2)};
    service.coats[0].zones[1].bowl = 1;
    return service;
}

// Left [2, 12], right over at 24: [14, 24] leaves the 2 for its bowl.
TEST(PlannerBowls, AreMixedAsLateAsTheyCan)
{
    const Plan plan = planned(twoBowls(12));
    EXPECT_EQ(plan->worth.staleness, Seconds{0});
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Mix, 1)), 12);
}

// With 10 there is no time in between: both before. Whichever is first waits 2, the right one 10 more: 12.
TEST(PlannerBowls, OfTwoEquallyFreshWaysTheOrderOfTheServiceIsTaken)
{
    const Plan plan = planned(twoBowls(10));
    EXPECT_EQ(plan->worth.staleness, minutes{12});
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Mix, 0)), 0);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Mix, 1)), 2);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 0)), 4);
}

/// 10 of applying, 20 of developing, 5 of rinsing: 35.
Service thirtyFive()
{
    return fromOpening({makeZone("Root", minutes{10}, exactly(20))});
}

TEST(PlannerCoats, DryingAndAssessingFollowTheRinse)
{
    Service service = thirtyFive();
    service.coats[0].dryHands = minutes{4};
    service.coats[0].dryUnattended = minutes{6};
    service.coats[0].assess = minutes{2};
    const Plan plan = planned(service);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Dry)), 35);
    EXPECT_EQ(endOf(plan, idOf(TaskKind::Dry)), 39);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Assess)), 45);
    EXPECT_EQ(plan->end, at(47));
}

// It dries by itself until 45, which the promise includes.
TEST(PlannerCoats, DryingByItselfTakesNoHandsButTime)
{
    Service service = thirtyFive();
    service.notBefore.reset();
    service.readyBy = at(100);
    service.coats[0].dryUnattended = minutes{10};
    service.crew.hands[0].away = {{at(90), at(100)}};
    const Plan plan = planned(service);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Dry)), 90);
    EXPECT_FALSE(plan.find(idOf(TaskKind::Dry))->hands);
    EXPECT_EQ(plan->end, at(100));
    EXPECT_EQ(plan->start, at(55));
}

/// Two coats, the first over at 35 + 2 = 37; the second is mixed in `mix`.
Service twoCoats(int mix)
{
    Service service = thirtyFive();
    service.coats[0].assess = minutes{2};
    service.coats.push_back(service.coats[0]);
    service.coats[1].name = "Coat 2";
    service.coats[1].bowls[0] = bowl("Second bowl", mix);
    return service;
}

TEST(PlannerCoats, TheNextIsMixedAfterTheAssessment)
{
    const Plan plan = planned(twoCoats(3));
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Mix, 0, 0, 1)), 37);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 0, 0, 1)), 40);
}

TEST(PlannerCoats, MixingMayLieInTheLeastGap)
{
    Service service = twoCoats(3);
    service.coats[0].gapLeast = minutes{10};
    const Plan plan = planned(service);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 0, 0, 1)), 47);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Mix, 0, 0, 1)), 44);
}

TEST(PlannerCoats, MixingLiesInTheLongestGap)
{
    Service service = twoCoats(5);
    service.coats[0].gapMost = minutes{5};
    EXPECT_EQ(startOf(planned(service), idOf(TaskKind::Apply, 0, 0, 1)), 42);
    service.coats[1].bowls[0].mix = minutes{6};
    EXPECT_NE(demandsOf(refused(service)).find("Coat 2: at most 5 min after Coat 1"), std::string::npos);
}

// Two zones, of which only the first to be applied has to follow within the gap.
TEST(PlannerCoats, TheLongestGapEndsAtTheFirstApplication)
{
    Service service = twoCoats(3);
    service.coats[0].gapMost = minutes{3};
    service.coats[1].zones[0] = makeZone("Late", minutes{10}, exactly(20));
    service.coats[1].zones.push_back(makeZone("Soon", minutes{10}, exactly(40)));
    const Plan plan = planned(service);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 1, 0, 1)), 40);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 0, 0, 1)), 60);
}

TEST(PlannerCoats, WithoutAssessmentTheGapCountsFromTheEndOfDrying)
{
    Service service = twoCoats(0);
    service.coats[0].assess = Seconds{0};
    service.coats[0].dryHands = minutes{4};
    service.coats[0].dryUnattended = minutes{6};
    service.coats[0].gapLeast = minutes{10};
    service.coats[1].assess = Seconds{0};
    EXPECT_EQ(startOf(planned(service), idOf(TaskKind::Apply, 0, 0, 1)), 55);
}

}  // namespace
}  // namespace core::stagger
