#include "core/stagger/plan.h"

#include "tests/core/stagger/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Looks and late jobs. Hand-worked: minutes from the opening, rinses take 5.

namespace core::stagger {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

service::Looks oneLook(int first, int length, int tolerance)
{
    return {.first = minutes{first},
            .every = {},
            .length = minutes{length},
            .tolerance = minutes{tolerance},
            .until = minutes{first + 1}};
}

/// Applied [0, 10], developing until 40.
Zone looked(const service::Looks& looks)
{
    Zone zone = makeZone("Ends", minutes{10}, exactly(30));
    zone.looks = looks;
    return zone;
}

TaskId look(std::size_t zone = 0, std::size_t part = 0)
{
    return idOf(TaskKind::Look, zone, part);
}

// At 10 and 20 on a clock that starts at 10, each two earlier: the earliest that its tolerance allows.
TEST(PlannerLooks, AreMadeWithinTheirTolerance)
{
    service::Looks looks = oneLook(10, 1, 2);
    looks.every = minutes{10};
    looks.until = minutes{30};
    const Plan plan = planned(fromOpening({looked(looks)}));
    EXPECT_EQ(startOf(plan, look(0, 0)), 18);
    EXPECT_EQ(startOf(plan, look(0, 1)), 28);
    EXPECT_EQ(plan.find(look(0, 2)), nullptr);
    EXPECT_THAT(plan->looksNotDue, IsEmpty());
    EXPECT_FALSE(plan.find(look())->madeWhile);
}

TEST(PlannerLooks, OneThatWouldEndAtTheWaterIsMade)
{
    const Plan plan = planned(fromOpening({looked(oneLook(29, 1, 2))}));
    EXPECT_EQ(startOf(plan, look()), 37);
    EXPECT_THAT(plan->looksNotDue, IsEmpty());
}

TEST(PlannerLooks, OneThatWouldEndAfterTheWaterIsNotDue)
{
    const Plan plan = planned(fromOpening({looked(oneLook(29, 2, 2))}));
    EXPECT_EQ(plan.find(look()), nullptr);
    EXPECT_THAT(plan->looksNotDue, ElementsAre(look()));
}

// Counted from first contact, 8 is within applying, which is over at 10.
TEST(PlannerLooks, OneWithinItsOwnApplicationIsNotDueOrWaitsForItsEnd)
{
    Zone zone = looked(oneLook(8, 1, 1));
    zone.clock = service::ClockStart::FirstContact;
    EXPECT_THAT(planned(fromOpening({zone}))->looksNotDue, ElementsAre(look()));
    zone.looks->tolerance = minutes{2};
    const Plan plan = planned(fromOpening({zone}));
    EXPECT_EQ(startOf(plan, look()), 10);
}

/// The look at the first is due at 20, the second is applied [15, 35]: the water comes at 50 for both.
std::vector<Zone> lookWhileApplying()
{
    Zone first = makeZone("Ends", minutes{10}, exactly(40));
    first.looks = oneLook(10, 1, 0);
    return {first, makeZone("Root", minutes{20}, exactly(15))};
}

TEST(PlannerLooks, OneIsMadeByTheHandsThatApply)
{
    const Plan plan = planned(fromOpening(lookWhileApplying()));
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 1)), 15);
    EXPECT_EQ(startOf(plan, look()), 20);
    EXPECT_EQ(plan.find(look())->madeWhile, idOf(TaskKind::Apply, 1));
    EXPECT_EQ(plan.find(look())->hands, 0U);
}

TEST(PlannerLooks, OneIsMadeByTheHandsThatApplyEvenWhereOthersAreFree)
{
    Service service = fromOpening(lookWhileApplying());
    addHands(service);
    const Plan plan = planned(service);
    EXPECT_EQ(plan.find(look())->madeWhile, idOf(TaskKind::Apply, 1));
    EXPECT_EQ(plan.find(look())->hands, plan.find(idOf(TaskKind::Apply, 1))->hands);
}

TEST(PlannerLooks, HandsThatApplyNeedNotDoLooksOtherwise)
{
    Service service = fromOpening(lookWhileApplying());
    service.crew.hands[0].kinds = {service::Work::Apply, service::Work::Rinse};
    EXPECT_EQ(planned(service).find(look())->hands, 0U);
    service.coats[0].zones[0].looks->first = minutes{27};  // At 37, when nobody applies.
    service.coats[0].zones[0].looks->until = minutes{28};
    EXPECT_FALSE(fits(service));
}

// The same on two heads, the second pair only rinses: nobody who applies to one head looks at another.
TEST(PlannerLooks, OneAtAnotherHeadIsNotMadeWhileApplying)
{
    const std::vector<Zone> zones = lookWhileApplying();
    Service first = fromOpening({zones[0]});
    first.readyBy = at(55);
    first.crew.basins = 2;
    addHands(first, {service::Work::Rinse});
    Service second = fromOpening({zones[1]});
    second.notBefore = at(15);
    second.readyBy = at(55);
    Question question = ask(first);
    question.services.push_back(second);
    EXPECT_FALSE(fits(question));
    question.services[0].crew.hands[1].kinds.push_back(service::Work::Look);
    const Plan plan = planned(question);
    EXPECT_EQ(plan.find(look())->hands, 1U);
    EXPECT_FALSE(plan.find(look())->madeWhile);
}

// Looks of 2 at one head at 30: the one pair of hands makes both.
TEST(PlannerLooks, TwoAtOneHeadAreMadeTogether)
{
    Zone first = makeZone("Ends", minutes{10}, exactly(40));
    first.looks = oneLook(20, 2, 0);
    Zone second = makeZone("Root", minutes{10}, exactly(30));
    second.looks = oneLook(10, 2, 0);
    const Plan plan = planned(fromOpening({first, second}));
    EXPECT_EQ(startOf(plan, look(0)), 30);
    EXPECT_EQ(startOf(plan, look(1)), 30);
    // A job is no look.
    second.looks.reset();
    second.late.push_back(
        {.name = "Emulsify", .before = minutes{20}, .length = minutes{2}, .tolerance = Seconds{0}});
    EXPECT_FALSE(fits(fromOpening({first, second})));
}

/// A look of 2 at 29, in the last minute of applying [10, 30]; a third zone is applied within `gap` of that.
Service lookAtTheEndOfApplying(int gap)
{
    Zone first = makeZone("Ends", minutes{10}, exactly(60));
    first.looks = oneLook(19, 2, 0);
    const oracle::Span wide{minutes{10}, minutes{20}, minutes{60}};
    Service service =
        fromOpening({first, makeZone("Mids", minutes{20}, wide), makeZone("Root", minutes{10}, wide)});
    service.coats[0].zones[1].after.push_back({.zone = 0, .longestGap = Seconds{0}});
    service.coats[0].zones[2].after.push_back({.zone = 1, .longestGap = minutes{gap}});
    return service;
}

TEST(PlannerLooks, HandsThatApplyStartNothingElseBeforeTheLookIsOver)
{
    EXPECT_FALSE(fits(lookAtTheEndOfApplying(0)));
    const Plan plan = planned(lookAtTheEndOfApplying(1));
    EXPECT_EQ(startOf(plan, look()), 29);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 2)), 31);
}

// The look is due at 28 on the clock if development is 30 or longer, and clashes with the job 2 before
// water. A second less than 30 and it is not due.
TEST(PlannerLooks, OneIsAvoidedByASecondLessWhereNothingElseHelps)
{
    Zone zone = makeZone("Ends", minutes{10}, {minutes{20}, minutes{30}, minutes{30}});
    zone.looks = oneLook(28, 2, 0);
    zone.late.push_back(
        {.name = "Emulsify", .before = minutes{2}, .length = minutes{2}, .tolerance = Seconds{0}});
    Service service = fromOpening({zone});
    const Plan plan = planned(service);
    EXPECT_EQ(plan.zone(0, 0, 0)->development(), minutes{30} - Seconds{1});
    EXPECT_THAT(plan->looksNotDue, ElementsAre(look()));
    addHands(service);
    EXPECT_EQ(planned(service).zone(0, 0, 0)->development(), minutes{30});
}

Service emulsified(int before, int tolerance)
{
    Zone zone = makeZone("Root", minutes{20}, {minutes{30}, minutes{35}, minutes{45}});
    zone.late.push_back({.name = "Emulsify",
                         .before = minutes{before},
                         .length = minutes{3},
                         .tolerance = minutes{tolerance}});
    return fromOpening({zone});
}

// Water at 55: 5 before is 50, and one earlier.
TEST(PlannerLateJobs, AreMadeWithinToleranceBeforeWater)
{
    EXPECT_EQ(startOf(planned(emulsified(5, 1)), idOf(TaskKind::Late)), 49);
    EXPECT_EQ(startOf(planned(emulsified(5, 0)), idOf(TaskKind::Late)), 50);
}

// 2 ahead of water it would not be over; within 1 it may begin 3 ahead.
TEST(PlannerLateJobs, AreOverByTheWater)
{
    EXPECT_EQ(startOf(planned(emulsified(2, 1)), idOf(TaskKind::Late)), 52);
}

// 40 before water, within 1, and not before 20: water at 59 or later, 39 of development.
TEST(PlannerLateJobs, WaitForTheEndOfApplication)
{
    const Plan plan = planned(emulsified(40, 1));
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Late)), 20);
    EXPECT_EQ(developmentOf(plan, 0), 39);
    EXPECT_EQ(deviationOf(plan), 4);
    EXPECT_FALSE(fits(emulsified(47, 1)));
}

TEST(PlannerLateJobs, TakeHands)
{
    Service service = emulsified(5, 0);
    service.crew.hands[0].away = {{at(51), at(52)}};
    const Plan plan = planned(service);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Late)), 52);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply)), 2);
    service.readyBy = at(60);  // Now it has to be over at 51: 2 less of development.
    EXPECT_EQ(deviationOf(planned(service)), 2);
}

}  // namespace
}  // namespace core::stagger
