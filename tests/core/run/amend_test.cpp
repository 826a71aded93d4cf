#include "core/run/amend/amend.h"

#include "core/run/amend/revisions.h"
#include "core/service/check.h"
#include "tests/core/run/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

// Answers that change what is planned from then on. The arithmetic is beside each, in minutes.

namespace core::run {
namespace {

using Kind = Answer::Kind;
using testing::HasSubstr;
using testing::IsEmpty;

/// Told things, and planned for by the real planner.
Teller realTeller(const Service& service)
{
    Teller teller{service};
    teller.setup.planner = stagger::plan;
    return teller;
}

const std::vector<Service>& servicesOf(const Teller& teller)
{
    return servicesAt(teller.setup, teller.facts);
}

std::vector<std::string> laneNames(const Teller& teller, const State& state)
{
    std::vector<std::string> names;
    for (const Lane& lane : state.lanes)
        names.push_back(servicesOf(teller)[lane.service].coats[lane.coat].zones[lane.zone].name);
    return names;
}

// Root takes 10 to apply and is stopped after 4: it counts from then, and 6 are left for later.
TEST(Amend, ApplyingThatIsInterruptedLeavesTheRestAsAZoneOfItsOwn)
{
    Teller teller{namedWig()};
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    mustTell(teller, {.kind = Kind::Interrupt, .task = apply(0)}, clockAt(4));

    const State state = teller.at(clockAt(4));
    EXPECT_THAT(laneNames(teller, state), testing::ElementsAre("Root", "Mids", "Ends", "Root, the rest"));
    EXPECT_EQ(state.lanes[0].stage, Stage::Developing);
    EXPECT_EQ(state.lanes[0].clockStart, clockAt(4));
    EXPECT_EQ(state.lanes[3].stage, Stage::Waiting);
    const service::Zone& rest = servicesOf(teller)[0].coats[0].zones[3];
    EXPECT_EQ(rest.apply.usual, minutes(6));
    EXPECT_EQ(rest.develop, servicesOf(teller)[0].coats[0].zones[0].develop);
    EXPECT_NE(findPrompt(state, Prompt::Asks::Start, apply(3)), nullptr);
}

TEST(Amend, TakingAnInterruptionBackLetsTheApplicationGoOn)
{
    Teller teller{namedWig()};
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    mustTell(teller, {.kind = Kind::Interrupt, .task = apply(0)}, clockAt(4));
    mustTell(teller, {.kind = Kind::UndoLast}, clockAt(5));

    EXPECT_EQ(servicesOf(teller)[0].coats[0].zones.size(), 3U);
    EXPECT_EQ(teller.at(clockAt(5)).lanes[0].stage, Stage::Applying);
    // And taking that back interrupts it again, at the time it was.
    mustTell(teller, {.kind = Kind::UndoLast, .about = teller.facts.back().number}, clockAt(6));
    EXPECT_EQ(teller.at(clockAt(6)).lanes[0].applicationEnd, clockAt(4));
    EXPECT_EQ(servicesOf(teller)[0].coats[0].zones.size(), 4U);
}

TEST(Amend, OnlyApplyingThatIsUnderWayCanBeInterrupted)
{
    Teller teller{namedWig()};
    EXPECT_THAT(refusal(teller, {.kind = Kind::Interrupt, .task = apply(0)}, clockAt(0)),
                HasSubstr("under way"));
    applyZone(teller, 0, clockAt(0), clockAt(10));
    EXPECT_THAT(refusal(teller, {.kind = Kind::Interrupt, .task = apply(0)}, clockAt(11)),
                HasSubstr("under way"));
}

// Somebody who is away from 0 to 20 applies nothing before 20.
TEST(Amend, NothingIsPlannedForWhoIsAway)
{
    Teller teller = realTeller(namedWig());
    mustTell(teller, awayAnswer(servicesOf(teller), 0, {clockAt(0), clockAt(20)}), clockAt(0));
    const State state = teller.at(clockAt(0));
    ASSERT_TRUE(state.plan);
    EXPECT_EQ((*state.plan)->start, clockAt(20));
}

TEST(Amend, TimesAwayThatTouchBecomeOne)
{
    Service service = namedWig();
    service.crew.hands[0].away = {{clockAt(0), clockAt(5)}, {clockAt(30), clockAt(40)}};
    const Answer answer = awayAnswer({service}, 0, {clockAt(5), clockAt(31)});
    EXPECT_THAT(answer.services[0].crew.hands[0].away,
                testing::ElementsAre(measure::Interval{clockAt(0), clockAt(40)}));
}

// Root and Mids both want 30 to the minute under one water, so they end together: two pairs of hands have to
// apply.
TEST(Amend, WhoComesToHelpIsPlannedFor)
{
    Service service = namedWig();
    service.coats[0].zones[0].develop = service.coats[0].zones[1].develop = window(30, 30, 30);
    Teller teller = realTeller(service);
    EXPECT_TRUE(teller.at(clockAt(0)).reason);
    mustTell(teller, helperAnswer(servicesOf(teller), "Wig room"), clockAt(0));
    EXPECT_EQ(servicesOf(teller)[0].crew.hands[1].name, "Wig room 2");
    const State state = teller.at(clockAt(0));
    ASSERT_TRUE(state.plan);
    EXPECT_FALSE(state.reason);
    EXPECT_NE(state.plan->find(apply(0))->hands, state.plan->find(apply(1))->hands);
}

TEST(Amend, WhoHasGoneIsPlannedForNoMore)
{
    Service service = namedWig();
    service.crew.hands.push_back({.name = "Trainee", .away = {}, .kinds = {}});
    Teller teller = realTeller(service);
    mustTell(teller, goneAnswer(servicesOf(teller), 0, clockAt(0)), clockAt(0));
    const State state = teller.at(clockAt(0));
    ASSERT_TRUE(state.plan);
    for (const stagger::PlannedTask& task : (*state.plan)->tasks)
        EXPECT_EQ(task.hands, 1U) << stagger::taskName(servicesOf(teller)[0], task.id);
}

TEST(Amend, AZoneThatIsRinsedByItselfHasAGroupOfItsOwn)
{
    Teller teller = realTeller(namedWig());
    mustTell(teller, apartAnswer(servicesOf(teller), apply(2)), clockAt(0));
    const State state = teller.at(clockAt(0));
    ASSERT_TRUE(state.plan);
    EXPECT_NE(state.plan->find(task(TaskKind::Rinse, 1)), nullptr);
    EXPECT_EQ(servicesOf(teller)[0].coats[0].groups[1].name, "Ends alone");
}

TEST(Amend, AZoneCanBeAddedAndTakenBackUntilItHasBegun)
{
    Teller teller = realTeller(namedWig());
    const Answer added = zoneAnswer(servicesOf(teller), 0, 0, zone("Fringe", 3, window(10, 15, 30)));
    mustTell(teller, added, clockAt(0));
    EXPECT_EQ(laneNames(teller, teller.at(clockAt(0))).back(), "Fringe");
    teller.mustTell(Kind::Start, apply(3), clockAt(1));
    const auto number = teller.facts.front().number;
    EXPECT_THAT(refusal(teller, {.kind = Kind::UndoLast, .about = number}, clockAt(2)),
                HasSubstr("which brought it"));
    mustTell(teller, {.kind = Kind::UndoLast}, clockAt(2));
    mustTell(teller, {.kind = Kind::UndoLast, .about = number}, clockAt(2));
    EXPECT_EQ(teller.at(clockAt(2)).lanes.size(), 3U);
}

TEST(Amend, WhatALaterChangeBuildsOnStays)
{
    Teller teller{namedWig()};
    mustTell(teller, helperAnswer(servicesOf(teller), "Anna"), clockAt(0));
    const auto first = teller.facts.back().number;
    mustTell(teller, helperAnswer(servicesOf(teller), "Berit"), clockAt(1));
    EXPECT_THAT(refusal(teller, {.kind = Kind::UndoLast, .about = first}, clockAt(2)),
                HasSubstr("Undo the later change first"));
    mustTell(teller, {.kind = Kind::UndoLast}, clockAt(2));
    EXPECT_EQ(servicesOf(teller)[0].crew.hands.size(), 2U);
    mustTell(teller, {.kind = Kind::UndoLast, .about = first}, clockAt(3));
    EXPECT_EQ(servicesOf(teller)[0].crew.hands.size(), 1U);
}

// Facts name places, so whatever was there stays there.
TEST(Amend, RefusesServicesThatLackSomethingOrAreWrong)
{
    Teller teller{namedWig()};
    Answer fewer{.kind = Kind::Amend, .services = servicesOf(teller)};
    fewer.services[0].coats[0].zones.pop_back();
    EXPECT_THAT(refusal(teller, fewer, clockAt(0)), HasSubstr("cannot be taken out"));
    Answer none{.kind = Kind::Amend};
    EXPECT_THAT(refusal(teller, none, clockAt(0)), HasSubstr("cannot be taken out"));
    Answer wrong{.kind = Kind::Amend, .services = servicesOf(teller)};
    wrong.services[0].coats[0].zones[0].develop.least = minutes(99);
    EXPECT_THAT(refusal(teller, wrong, clockAt(0)), HasSubstr("coats[0].zones[0].develop"));
    EXPECT_THAT(teller.facts, IsEmpty());
    EXPECT_THAT(teller.setup.revisions, IsEmpty());
}

// Root is on the hair: it is still rinsed, and nothing else is begun. One undo takes all of it back.
TEST(Amend, OfAnAbandonedCoatOnlyWhatIsOnTheHairIsLeftToDo)
{
    Teller teller{namedWig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    mustTell(teller, {.kind = Kind::Abandon, .task = apply(1)}, clockAt(12));
    const State state = teller.at(clockAt(12));
    EXPECT_EQ(state.lanes[0].stage, Stage::Developing);
    EXPECT_EQ(state.lanes[1].stage, Stage::Dropped);
    EXPECT_EQ(state.lanes[2].stage, Stage::Dropped);
    ASSERT_EQ(state.prompts.size(), 1U);
    EXPECT_EQ(state.prompts[0].task, task(TaskKind::Rinse));
    mustTell(teller, {.kind = Kind::UndoLast}, clockAt(13));
    EXPECT_THAT(teller.at(clockAt(13)).progress.dropped, IsEmpty());
}

TEST(Amend, AnAbandonedCoatThatWasNotBegunIsOver)
{
    Teller teller{namedWig()};
    mustTell(teller, {.kind = Kind::Abandon, .task = apply(1)}, clockAt(0));
    EXPECT_TRUE(teller.at(clockAt(0)).finished);
    EXPECT_THAT(refusal(teller, {.kind = Kind::Abandon, .task = apply(1)}, clockAt(1)),
                HasSubstr("Nothing of this coat"));
}

// Root has had 40 of at most 45 when Mids and Ends, 11 of applying and at least 15, have not begun: something
// has to give. Whatever is chosen, the plan is then the one that was offered, and the product's longest time
// is watched as before.
TEST(Amend, AChoiceOnceTakenIsWhatIsPlanned)
{
    Teller teller = realTeller(namedWig());
    applyZone(teller, 0, clockAt(0), clockAt(10));
    const Instant now = clockAt(50);
    ASSERT_TRUE(teller.at(now).reason);
    const std::vector<stagger::Choice> choices = choicesAt(teller.setup, teller.facts, now);
    ASSERT_GT(choices.size(), 1U);
    for (const stagger::Choice& choice : choices) {
        if (choice.kind == stagger::ChoiceKind::CarryOn)
            continue;
        Teller chosen = teller;
        mustTell(chosen, choiceAnswer(choice), now);
        const State state = chosen.at(now);
        ASSERT_TRUE(state.plan) << choice.what;
        EXPECT_EQ((*state.plan)->worth.deviation, choice.plan->worth.deviation) << choice.what;
        EXPECT_EQ(state.lanes[0].mostAt, clockAt(55)) << choice.what;
        const bool open = std::ranges::any_of(
            choice.plan->broken, [](const stagger::BrokenLimit& limit) { return !limit.already; });
        if (!open || choice.kind == stagger::ChoiceKind::PassLimit) {
            EXPECT_FALSE(state.reason) << choice.what << ": " << state.reason->text;
        }
    }
}

TEST(Amend, NothingIsToBeChosenWhereAllLimitsCanHold)
{
    Teller teller = realTeller(namedWig());
    EXPECT_THAT(choicesAt(teller.setup, teller.facts, clockAt(0)), IsEmpty());
}

// The rinse that came with the change is gone with it, and nothing is left that could not be named.
TEST(Amend, ATaskThatCameWithAChangeThatWasTakenBackIsNoLongerSpokenOf)
{
    Teller teller = realTeller(namedWig());
    mustTell(teller, apartAnswer(servicesOf(teller), apply(2)), clockAt(0));
    mustTell(teller, {.kind = Kind::UndoLast}, clockAt(1));
    for (const Change& change : teller.at(clockAt(1)).changes)
        EXPECT_EQ(change.task.kind == TaskKind::Rinse && change.task.item == 1, false);
    mustTell(teller, apartAnswer(servicesOf(teller), apply(2)), clockAt(2));
    teller.mustTell(Kind::Drop, task(TaskKind::Rinse, 1), clockAt(3));
    EXPECT_THAT(refusal(teller, {.kind = Kind::UndoLast, .about = teller.facts[2].number}, clockAt(4)),
                HasSubstr("which brought it"));
}

// What was known then is what counted then: a run that is looked at again looks as it did.
TEST(Amend, AMomentBeforeAChangeLooksAsItDidThen)
{
    Teller teller{namedWig()};
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    const State before = teller.at(clockAt(3));
    mustTell(teller, {.kind = Kind::Interrupt, .task = apply(0)}, clockAt(4));
    EXPECT_EQ(stateAt(teller.setup, std::span{teller.facts}.first(1), clockAt(3)), before);
}

}  // namespace
}  // namespace core::run
