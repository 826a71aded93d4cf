#include "tests/core/stagger/support.h"

#include <gtest/gtest.h>

// What has happened binds what is still open. Hand-worked: minutes from the opening, rinses take 5.

namespace core::stagger {
namespace {

TEST(PlannerFacts, ALateJobThatIsDoneTiesTheWater)
{
    Zone root = makeZone("Root", minutes{10}, {minutes{20}, minutes{30}, minutes{40}});
    root.late.push_back(
        {.name = "Emulsify", .before = minutes{10}, .length = minutes{2}, .tolerance = minutes{1}});
    Question question = ask(fromOpening({root}));
    happened(question, idOf(TaskKind::Apply), 0, 10);
    happened(question, idOf(TaskKind::Late), 25, 27);
    question.now = at(27);
    // The target is at 40, but water comes 9 to 11 min after the job was begun.
    EXPECT_EQ(startOf(planned(question), idOf(TaskKind::Rinse)), 36);
}

TEST(PlannerFacts, AJobThatGoesOnIsOverBeforeTheWater)
{
    Zone root = makeZone("Root", minutes{10}, {minutes{20}, minutes{30}, minutes{40}});
    root.late.push_back(
        {.name = "Emulsify", .before = minutes{4}, .length = minutes{2}, .tolerance = minutes{4}});
    Service service = fromOpening({root});
    service.head.kind = service::HeadKind::Wefts;
    service.head.piecesComeApart = true;  // Otherwise nothing is done to a head at the basin anyway.
    addHands(service);
    Question question = ask(service);
    happened(question, idOf(TaskKind::Apply), 0, 10);
    happened(question, idOf(TaskKind::Late), 36);
    question.progress.tasks.back().plannedEnd = at(42);
    question.now = at(37);
    EXPECT_EQ(startOf(planned(question), idOf(TaskKind::Rinse)), 42);
}

// Somebody is at each of them, so nobody is free for the third, though facts bind each other to nothing.
TEST(PlannerFacts, TwoTasksThatGoOnTakeTwoPairsOfHands)
{
    const auto zone = [](const std::string& name) {
        return makeZone(name, minutes{10}, {minutes{15}, minutes{30}, minutes{60}});
    };
    Service service = fromOpening({zone("Root"), zone("Mids"), zone("Ends")});
    addHands(service);
    for (const bool guarantee : {false, true}) {
        for (Zone& each : service.coats.front().zones)
            each.apply.slowest = minutes{guarantee ? 12 : 10};
        Question question = ask(service);
        happened(question, idOf(TaskKind::Apply, 0), 0);
        happened(question, idOf(TaskKind::Apply, 1), 4);
        question.now = at(5);
        EXPECT_GE(startOf(planned(question), idOf(TaskKind::Apply, 2)), 10);
    }
}

// At 8, nobody knows any more who does what; but not both can be done by one.
TEST(PlannerFacts, WhoIsAwayIsAtNothing)
{
    const auto zone = [](const std::string& name) {
        return makeZone(name, minutes{10}, {minutes{15}, minutes{30}, minutes{60}});
    };
    Service service = fromOpening({zone("Root"), zone("Ends")});
    addHands(service);
    service.crew.hands.back().away = {{.from = at(2), .until = at(40)}};
    Question question = ask(service);
    happened(question, idOf(TaskKind::Apply, 0), 0);
    question.now = at(5);
    EXPECT_GE(startOf(planned(question), idOf(TaskKind::Apply, 1)), 10);
}

// Hands that only apply began a look while applying; the application is over, the look goes on. It keeps
// nobody else from what comes.
TEST(PlannerFacts, ALookBegunWhileApplyingIsMadeByThoseWhoApplied)
{
    Zone root = makeZone("Root", minutes{10}, {minutes{20}, minutes{30}, minutes{40}});
    root.looks = service::Looks{.first = minutes{8},
                                .every = {},
                                .length = minutes{6},
                                .tolerance = minutes{1},
                                .until = minutes{30}};
    Service service =
        fromOpening({root, makeZone("Ends", minutes{10}, {minutes{18}, minutes{20}, minutes{40}})});
    service.coats.front().bowls.push_back({.name = "Second", .mix = minutes{2}, .potLife = {}, .note = {}});
    service.coats.front().zones.push_back(
        makeZone("Tips", minutes{4}, {minutes{10}, minutes{14}, minutes{40}}));
    service.coats.front().zones.back().bowl = 1;
    addHands(service, {service::Work::Apply});
    Question question = ask(service);
    happened(question, idOf(TaskKind::Apply, 0), 0, 10);
    happened(question, idOf(TaskKind::Apply, 1), 10, 19);
    happened(question, idOf(TaskKind::Look, 0), 18);
    question.now = at(19);
    // Mixing is for the first pair of hands alone.
    const Plan plan = planned(question);
    EXPECT_EQ(plan.find(idOf(TaskKind::Look, 0))->hands, 1U);
}

// Who applies is said to be away, and looks meanwhile: so it is, and the rest is planned.
TEST(PlannerFacts, WhoIsAwayMayStillLookWhileApplying)
{
    Zone root = makeZone("Root", minutes{10}, {minutes{20}, minutes{30}, minutes{40}});
    root.looks = service::Looks{.first = minutes{8},
                                .every = {},
                                .length = minutes{2},
                                .tolerance = minutes{1},
                                .until = minutes{30}};
    Service service =
        fromOpening({root, makeZone("Ends", minutes{10}, {minutes{18}, minutes{20}, minutes{40}})});
    service.crew.hands.front().away = {{.from = at(12), .until = at(25)}};
    Question question = ask(service);
    happened(question, idOf(TaskKind::Apply, 0), 0, 10);
    happened(question, idOf(TaskKind::Apply, 1), 17);
    happened(question, idOf(TaskKind::Look, 0), 18);
    question.now = at(19);
    // Ends are on at 27, and develop for 18 at the least.
    EXPECT_EQ(startOf(planned(question), idOf(TaskKind::Rinse)), 45);
}

// The first alone applies, so it made the look from 8 to 14 and cannot apply again before; the second is free
// all the while, and could have made the look if nobody had been applying.
TEST(PlannerFacts, ALookBegunWhileApplyingIsMadeByNobodyElse)
{
    Zone root = makeZone("Root", minutes{10}, {minutes{20}, minutes{30}, minutes{40}});
    Zone ends = makeZone("Ends", minutes{10}, {minutes{18}, minutes{20}, minutes{40}});
    Zone tips = makeZone("Tips", minutes{2}, {minutes{30}, minutes{35}, minutes{60}});
    tips.looks = service::Looks{.first = minutes{6},
                                .every = {},
                                .length = minutes{6},
                                .tolerance = minutes{1},
                                .until = minutes{30}};
    Service service = fromOpening({root, ends, tips});
    service.crew.hands.front().kinds = {service::Work::Apply};
    addHands(service, {service::Work::Look, service::Work::Rinse});
    Question question = ask(service);
    happened(question, idOf(TaskKind::Apply, 2), 0, 2);
    happened(question, idOf(TaskKind::Apply, 0), 2, 10);
    happened(question, idOf(TaskKind::Look, 2), 8);
    question.now = at(10);
    const Plan plan = planned(question);
    EXPECT_EQ(plan.find(idOf(TaskKind::Look, 2))->hands, 0U);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 1)), 14);
}

// Rinsing began at 50 without the look at 20: it can be made no more, so it keeps nothing else from being
// planned.
TEST(PlannerFacts, ALookThatWasMissedIsGoneOnceTheRinseHasBegun)
{
    Zone root = makeZone("Root", minutes{10}, {minutes{20}, minutes{30}, minutes{40}});
    root.looks = service::Looks{.first = minutes{10},
                                .every = {},
                                .length = minutes{1},
                                .tolerance = minutes{1},
                                .until = minutes{30}};
    Service service = fromOpening({root});
    service.coats.front().assess = minutes{2};
    Question question = ask(service);
    happened(question, idOf(TaskKind::Apply), 0, 10);
    happened(question, idOf(TaskKind::Rinse), 40);
    question.now = at(41);
    const Plan plan = planned(question);
    EXPECT_EQ(plan.find(idOf(TaskKind::Look)), nullptr);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Assess)), 45);
}

// Rinsing began at 40 and reaches the Ends at 44: as pieces come apart, their look (20 to 23 after 20) and
// what is to be done 2 before that water can still be done.
TEST(PlannerFacts, APieceThatWaterHasStillToReachIsWorkedOn)
{
    Zone root = makeZone("Root", minutes{10}, {minutes{20}, minutes{30}, minutes{40}});
    Zone ends = makeZone("Ends", minutes{10}, {minutes{20}, minutes{24}, minutes{40}});
    ends.reach = minutes{4};
    ends.looks = service::Looks{.first = minutes{21},
                                .every = {},
                                .length = minutes{1},
                                .tolerance = minutes{1},
                                .until = minutes{24}};
    ends.late.push_back(
        {.name = "Emulsify", .before = minutes{2}, .length = minutes{2}, .tolerance = minutes{0}});
    Service service = fromOpening({root, ends});
    service.head.kind = service::HeadKind::Wefts;
    addHands(service);
    for (const bool comeApart : {true, false}) {
        service.head.piecesComeApart = comeApart;
        Question question = ask(service);
        happened(question, idOf(TaskKind::Apply, 0), 0, 10);
        happened(question, idOf(TaskKind::Apply, 1), 10, 20);
        happened(question, idOf(TaskKind::Rinse), 40);
        question.now = at(41);
        const Plan plan = planned(question);
        ASSERT_EQ(plan.find(idOf(TaskKind::Look, 1)) != nullptr, comeApart);
        ASSERT_EQ(plan.find(idOf(TaskKind::Late, 1)) != nullptr, comeApart);
        if (comeApart) {
            EXPECT_EQ(startOf(plan, idOf(TaskKind::Look, 1)), 41);
            EXPECT_EQ(startOf(plan, idOf(TaskKind::Late, 1)), 42);
        }
    }
}

// Mixed from 0 to 3, Root on at once; Ends go on at 15 at the earliest, their target bids them wait until 25:
// the bowl is as stale as that, whether or not it was mixed before now.
TEST(PlannerFacts, ABowlThatIsMixedGetsStaleAllTheSame)
{
    Service service =
        fromOpening({makeZone("Root", minutes{12}, exactly(30)), makeZone("Ends", minutes{10}, exactly(10))});
    service.coats.front().bowls.front().mix = minutes{3};
    Question question = ask(service);
    EXPECT_EQ(planned(question)->worth.staleness, minutes{22});
    happened(question, idOf(TaskKind::Mix), 0, 3);
    happened(question, idOf(TaskKind::Apply), 3);
    question.now = at(4);
    const Plan plan = planned(question);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Apply, 1)), 25);
    EXPECT_EQ(plan->worth.staleness, minutes{22});
}

// Root goes on in the first of two coats. While the second is planned, the first stands. For usual lengths
// Ends would begin a minute after Root; so that the plan holds for all, it begins at once.
TEST(PlannerFacts, AnApplicationThatGoesOnLeavesTheGiveToCoatsPlannedInTurn)
{
    Service service = fromOpening({slowZone("Root", 25, 39, 40), slowZone("Ends", 26, 27, 27)});
    service.coats.push_back(service.coats.front());
    service.coats.back().name = "Coat 2";
    Question question = ask(service);
    happened(question, idOf(TaskKind::Apply), 0);
    question.now = at(2);
    EXPECT_EQ(planned(question)->give, 100);
}

}  // namespace
}  // namespace core::stagger
