#include "core/stagger/head_name.h"
#include "tests/core/stagger/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Several heads on one crew: whose rules are whose. Hand-worked: minutes from the opening, rinses take 5.

namespace core::stagger {
namespace {

TaskId of(std::size_t head, TaskKind kind, std::size_t item = 0)
{
    return {.service = head, .coat = 0, .kind = kind, .item = item};
}

Zone rootFor(int apply = 20)
{
    return makeZone("Root", minutes{apply}, {minutes{30}, minutes{35}, minutes{45}});
}

/// These heads, with the crew of the first.
Question together(std::vector<Service> heads)
{
    Question question;
    for (std::size_t head = 0; head < heads.size(); ++head)
        heads[head].head.name = head == 0 ? "Ada" : head == 1 ? "Bea" : "Cleo";
    question.services = std::move(heads);
    return question;
}

// Ada 0 to 20, water at 55. Bea 20 to 40, water at 75. 60 and 80 until each is done; the other way round is
// worth as much, and then the first head starts first.
TEST(PlannerHeads, OnePairOfHandsAppliesThemOneAfterTheOther)
{
    const Plan plan = planned(together({fromOpening({rootFor()}), fromOpening({rootFor()})}));
    EXPECT_EQ(startOf(plan, of(0, TaskKind::Apply)), 0);
    EXPECT_EQ(startOf(plan, of(1, TaskKind::Apply)), 20);
    EXPECT_EQ(startOf(plan, of(1, TaskKind::Rinse)), 75);
    EXPECT_EQ(deviationOf(plan), 0);
    EXPECT_EQ(plan->worth.waste, minutes{60 + 80});
}

// With a pair of hands each, both could be under water at 55: one basin, so one starts 5 later. Two basins:
// both.
TEST(PlannerHeads, ShareTheBasins)
{
    Service first = fromOpening({rootFor()});
    addHands(first);
    const Plan one = planned(together({first, fromOpening({rootFor()})}));
    EXPECT_EQ(startOf(one, of(0, TaskKind::Rinse)), 55);
    EXPECT_EQ(startOf(one, of(1, TaskKind::Apply)), 5);
    EXPECT_EQ(startOf(one, of(1, TaskKind::Rinse)), 60);
    EXPECT_EQ(one->worth.waste, minutes{60 + 65});
    first.crew.basins = 2;
    const Plan two = planned(together({first, fromOpening({rootFor()})}));
    EXPECT_EQ(startOf(two, of(1, TaskKind::Rinse)), 55);
    EXPECT_EQ(two.find(of(1, TaskKind::Rinse))->basin, 1);
    EXPECT_EQ(two->worth.waste, minutes{60 + 60});
}

// Ada is under water from 55 to 60; Bea's application goes from 50 to 70 all the same.
TEST(PlannerHeads, AHeadAtTheBasinKeepsNoOtherHeadWaiting)
{
    Service first = fromOpening({rootFor()});
    addHands(first);
    Service second = fromOpening({rootFor()});
    second.notBefore = at(50);
    const Plan plan = planned(together({first, second}));
    EXPECT_EQ(startOf(plan, of(0, TaskKind::Rinse)), 55);
    EXPECT_EQ(startOf(plan, of(1, TaskKind::Apply)), 50);
    EXPECT_EQ(plan->worth.waste, minutes{60 + 60});
}

/// Ten to apply, exactly 30 to develop, looked at for two minutes 20 after the end of application.
Zone lookedAt()
{
    Zone zone = makeZone("Fringe", minutes{10}, exactly(30));
    zone.looks = service::Looks{.first = minutes{20},
                                .every = {},
                                .length = minutes{2},
                                .tolerance = Seconds{0},
                                .until = minutes{30}};
    return zone;
}

// On one head the look at 30 would be made while the other zone is applied. Here that is another head:
// - Ada first: her look (30 to 32) and rinse (40 to 45) leave no 25 minutes for Bea before 45, so Bea is done
// at
//   45 + 25 + 30 + 5 = 105. In all 45 + 105 = 150.
// - Bea first: 0 to 25, rinse 55 to 60. Ada's look comes 30 after her start, not before 60: 30 to 40, look 60
// to
//   62, rinse 70 to 75. In all 60 + 75 = 135, which is less.
TEST(PlannerHeads, HandsThatApplyOnOneHeadMakeNoLookAtAnother)
{
    const Question question =
        together({fromOpening({lookedAt()}), fromOpening({makeZone("Root", minutes{25}, exactly(30))})});
    const Plan plan = planned(question);
    EXPECT_EQ(startOf(plan, of(1, TaskKind::Apply)), 0);
    EXPECT_EQ(startOf(plan, of(0, TaskKind::Apply)), 30);
    EXPECT_EQ(startOf(plan, of(0, TaskKind::Look)), 60);
    EXPECT_EQ(plan->worth.waste, minutes{60 + 75});
    EXPECT_FALSE(plan.find(of(0, TaskKind::Look))->madeWhile);
}

// With a second pair of hands Bea is applied from 15 to 40, and the look at 30 takes the hands that are free.
TEST(PlannerHeads, ALookBesideTheApplicationOfAnotherHeadTakesHandsOfItsOwn)
{
    Service first = fromOpening({lookedAt()});
    addHands(first);
    Service second = fromOpening({makeZone("Root", minutes{25}, exactly(30))});
    second.notBefore = at(15);
    const Plan plan = planned(together({first, second}));
    EXPECT_EQ(startOf(plan, of(0, TaskKind::Look)), 30);
    EXPECT_EQ(startOf(plan, of(1, TaskKind::Apply)), 15);
    const PlannedTask* look = plan.find(of(0, TaskKind::Look));
    EXPECT_FALSE(look->madeWhile);
    EXPECT_NE(look->hands, plan.find(of(1, TaskKind::Apply))->hands);
}

// Both would be looked at from 30 to 32, and only one pair of hands looks. On one head it would make both
// looks together; on two it makes one after the other, so Bea starts two later.
TEST(PlannerHeads, LooksAtTwoHeadsAreNotMadeTogether)
{
    Service first = fromOpening({lookedAt()});
    addHands(first);
    first.crew.hands.back().kinds = {service::Work::Apply, service::Work::Rinse};
    first.crew.basins = 2;
    const Plan plan = planned(together({first, fromOpening({lookedAt()})}));
    EXPECT_EQ(startOf(plan, of(0, TaskKind::Look)), 30);
    EXPECT_EQ(startOf(plan, of(1, TaskKind::Look)), 32);
    EXPECT_EQ(plan->worth.waste, minutes{45 + 47});
}

// Both are promised for 100, Bea with 10 to spare. Ada is best begun at 40, Bea at 30, and one pair of hands
// does both: Bea goes first, at 20. 60 before Ada's promise and 70 before Bea's.
TEST(PlannerHeads, EachHeadHasItsOwnPromiseAndBuffer)
{
    Service second = readyBy(100, {rootFor()});
    second.buffer = minutes{10};
    const Plan plan = planned(together({readyBy(100, {rootFor()}), second}));
    EXPECT_EQ(startOf(plan, of(0, TaskKind::Apply)), 40);
    EXPECT_EQ(startOf(plan, of(1, TaskKind::Apply)), 20);
    EXPECT_EQ(plan->worth.waste, minutes{60 + 70});
}

// Ada ends as early as she can, Bea starts as late as her promise allows.
TEST(PlannerHeads, EachHeadWastesInItsOwnWay)
{
    const Plan plan = planned(together({fromOpening({rootFor()}), readyBy(200, {rootFor()})}));
    EXPECT_EQ(endOf(plan, of(0, TaskKind::Rinse)), 60);
    EXPECT_EQ(startOf(plan, of(1, TaskKind::Apply)), 140);
    EXPECT_EQ(plan->worth.waste, minutes{60 + 60});
}

// Only the crew of the first is asked.
TEST(PlannerHeads, HaveTheCrewOfTheFirst)
{
    Service second = fromOpening({rootFor()});
    addHands(second);
    second.crew.basins = 3;
    const Plan plan = planned(together({fromOpening({rootFor()}), second}));
    EXPECT_EQ(startOf(plan, of(1, TaskKind::Apply)), 20);
}

// Bea's root is being applied since 0 and is usually over at 20. Ada waits for the hands.
TEST(PlannerHeads, WhatHappenedToOneBindsTheOther)
{
    Question question = together({fromOpening({rootFor()}), fromOpening({rootFor()})});
    happened(question, of(1, TaskKind::Apply), 0);
    question.now = at(6);
    const Plan plan = planned(question);
    EXPECT_EQ(startOf(plan, of(0, TaskKind::Apply)), 20);
    EXPECT_EQ(startOf(plan, of(1, TaskKind::Rinse)), 55);
}

// Two need 20 and 30 and 5 each; one pair of hands cannot have both ready by 60: 20 + 20 + 30 + 5 = 75.
TEST(PlannerHeads, AReasonNamesTheHeads)
{
    Service first = readyBy(60, {rootFor()});
    first.notBefore = opening;
    Service second = first;
    const NoPlan reason = refused(together({first, second}));
    EXPECT_TRUE(reason.minimal);
    EXPECT_THAT(demandsOf(reason), testing::HasSubstr("Ada, ready by the promised time"));
    EXPECT_THAT(demandsOf(reason), testing::HasSubstr("Bea, ready by the promised time"));
    EXPECT_THAT(demandsOf(reason), testing::HasSubstr("one pair of hands"));
}

TEST(PlannerHeads, HaveNamesThatTellThemApart)
{
    std::vector<Service> heads(5);
    heads[0].head.name = "Ada";
    heads[1].name = "A bob";
    heads[3].head.name = "Ada";
    heads[4].name = "Ada";
    EXPECT_EQ(headName(heads, 0), "Ada 1");
    EXPECT_EQ(headName(heads, 1), "A bob");
    EXPECT_EQ(headName(heads, 2), "Head 3");
    EXPECT_EQ(headName(heads, 3), "Ada 2");
    EXPECT_EQ(headName(heads, 4), "Ada 3");
}

}  // namespace
}  // namespace core::stagger
