#include "tests/core/run/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace core::run {
namespace {

using Kind = Answer::Kind;
using testing::HasSubstr;

TEST(Decide, AStartIsAFactOfThatMomentMinusAgo)
{
    Teller teller{wig()};
    ASSERT_FALSE(teller.tell({.kind = Kind::Start, .task = apply(0), .ago = minutes(2)}, clockAt(5)));
    ASSERT_EQ(teller.facts.size(), 1u);
    EXPECT_EQ(teller.facts[0].happened, clockAt(3));
    EXPECT_EQ(teller.facts[0].recorded, clockAt(5));
}

TEST(Decide, RefusesWhatCannotBe)
{
    Teller teller{wig()};
    EXPECT_THAT(refusal(teller, {.kind = Kind::Finish, .task = apply(0)}, clockAt(0)),
                HasSubstr("not been started"));
    EXPECT_THAT(refusal(teller, {.kind = Kind::Start, .task = apply(8)}, clockAt(0)),
                HasSubstr("no such task"));
    EXPECT_THAT(refusal(teller, {.kind = Kind::Start, .task = apply(0), .ago = minutes(-1)}, clockAt(0)),
                HasSubstr("still to come"));
    EXPECT_THAT(refusal(teller, {.kind = Kind::UndoLast}, clockAt(0)), HasSubstr("nothing to undo"));
    teller.mustTell(Kind::Start, apply(0), clockAt(5));
    EXPECT_THAT(refusal(teller, {.kind = Kind::Start, .task = apply(0)}, clockAt(6)),
                HasSubstr("started already"));
    EXPECT_THAT(refusal(teller, {.kind = Kind::Finish, .task = apply(0), .ago = minutes(2)}, clockAt(6)),
                HasSubstr("before Apply Root started"));
    EXPECT_EQ(teller.facts.size(), 1u);
}

// What is wanted is for the plan; who has the mixture in hand decides.
TEST(Decide, AZoneCanBeBegunBeforeItIsWanted)
{
    Service wanted = wig();
    wanted.coats[0].zones[0].notBefore = clockAt(20);
    Teller teller{wanted};
    teller.setup.planner = stagger::plan;
    teller.mustTell(Kind::Start, apply(0), clockAt(5));
    EXPECT_EQ(teller.facts.size(), 1u);
    const State state = teller.at(clockAt(6));
    ASSERT_TRUE(state.plan);
    EXPECT_TRUE((*state.plan)->broken.empty());
}

TEST(Decide, AnExtremeAgoIsRefusedAndNotReckonedWith)
{
    Teller teller{wig()};
    EXPECT_THAT(refusal(teller, {.kind = Kind::Start, .task = apply(0), .ago = Seconds::max()}, clockAt(0)),
                HasSubstr("more than a day"));
}

TEST(Decide, WaterComesAfterApplying)
{
    Teller teller{wig()};
    const Answer water{.kind = Kind::Start, .task = task(TaskKind::Rinse)};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    EXPECT_THAT(refusal(teller, water, clockAt(11)), HasSubstr("Mids has not been applied"));
    teller.mustTell(Kind::Start, apply(1), clockAt(11));
    EXPECT_THAT(refusal(teller, water, clockAt(12)), HasSubstr("Mids is still being applied"));
    teller.mustTell(Kind::Finish, apply(1), clockAt(17));
    teller.mustTell(Kind::Drop, apply(2), clockAt(18));
    EXPECT_FALSE(teller.tell(water, clockAt(19)));
    EXPECT_THAT(refusal(teller, {.kind = Kind::Start, .task = apply(2)}, clockAt(20)),
                HasSubstr("has begun"));
}

TEST(Decide, MixtureOnTheHairIsNotForgotten)
{
    Teller teller{wig()};
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    EXPECT_THAT(refusal(teller, {.kind = Kind::Drop, .task = apply(0)}, clockAt(1)),
                HasSubstr("cannot be left out"));
    EXPECT_THAT(refusal(teller, {.kind = Kind::Drop, .task = task(TaskKind::Rinse)}, clockAt(1)),
                HasSubstr("has mixture on it"));
}

TEST(Decide, ALookIsAnsweredWithWhatCameOfIt)
{
    Teller teller{wig()};
    EXPECT_THAT(refusal(teller, {.kind = Kind::Leave, .task = look(2)}, clockAt(0)),
                HasSubstr("not been applied"));
    applyZone(teller, 2, clockAt(0), clockAt(5));
    EXPECT_THAT(refusal(teller, {.kind = Kind::Start, .task = look(2)}, clockAt(6)),
                HasSubstr("say what came of it"));
    EXPECT_THAT(refusal(teller, {.kind = Kind::LookAgain, .task = look(2)}, clockAt(6)),
                HasSubstr("how many minutes"));
    teller.mustTell(Kind::Leave, look(2), clockAt(13));
    EXPECT_THAT(refusal(teller, {.kind = Kind::Leave, .task = look(2)}, clockAt(13)),
                HasSubstr("answered already"));
}

TEST(Decide, RinsingAZoneNowAnswersItsLookToo)
{
    Teller teller{wig()};
    applyZone(teller, 2, clockAt(0), clockAt(5));
    teller.mustTell(Kind::RinseZoneNow, look(2), clockAt(13));
    ASSERT_EQ(teller.facts.size(), 4u);
    EXPECT_EQ(teller.facts[2].verdict, Verdict::RinseNow);
    EXPECT_EQ(teller.facts[3].task, task(TaskKind::RinseAlone, 2));
    EXPECT_THAT(refusal(teller, {.kind = Kind::RinseZoneNow, .task = apply(2)}, clockAt(14)),
                HasSubstr("being rinsed already"));
}

TEST(Decide, DryingThatTakesNoHandsIsLeftToItselfAtOnce)
{
    Service service = wig();
    service.coats[0].dryUnattended = minutes(20);
    Teller teller{service};
    teller.mustTell(Kind::Start, task(TaskKind::Dry), clockAt(0));
    ASSERT_EQ(teller.facts.size(), 2u);
    EXPECT_EQ(teller.facts[1].kind, FactKind::Finished);
    ASSERT_FALSE(teller.tell({.kind = Kind::UndoLast}, clockAt(1)));
    EXPECT_TRUE(progressOf(teller.setup, teller.facts).empty());
}

TEST(Decide, AnEndedRunTakesOnlyAnUndo)
{
    Teller teller{wig()};
    ASSERT_FALSE(teller.tell({.kind = Kind::End}, clockAt(1)));
    EXPECT_TRUE(teller.at(clockAt(1)).finished);
    EXPECT_THAT(refusal(teller, {.kind = Kind::Start, .task = apply(0)}, clockAt(2)), HasSubstr("was ended"));
    ASSERT_FALSE(teller.tell({.kind = Kind::UndoLast}, clockAt(3)));
    EXPECT_FALSE(teller.at(clockAt(3)).finished);
}

// One word for all that were looked at; taken back as one, put right as one.
TEST(Decide, SeveralLooksAreLeftWithOneAnswer)
{
    Teller teller = twoLooks();
    const std::size_t before = teller.facts.size();
    ASSERT_FALSE(teller.tell({.kind = Kind::Leave, .task = look(1), .also = {look(2)}}, clockAt(29)));
    ASSERT_EQ(teller.facts.size(), before + 2);
    EXPECT_EQ(teller.facts.back().task, look(2));
    EXPECT_EQ(teller.facts.back().verdict, Verdict::Leave);

    ASSERT_FALSE(teller.tell({.kind = Kind::MoveLast, .ago = minutes(2)}, clockAt(30)));
    const auto progress = teller.at(clockAt(30)).progress;
    EXPECT_EQ(progress.find(look(1))->end, clockAt(28));
    EXPECT_EQ(progress.find(look(2))->end, clockAt(28));
    teller.tell({.kind = Kind::UndoLast}, clockAt(30));
    teller.tell({.kind = Kind::UndoLast}, clockAt(30));
    EXPECT_FALSE(teller.at(clockAt(30)).progress.find(look(1)));
    EXPECT_FALSE(teller.at(clockAt(30)).progress.find(look(2)));
}

TEST(Decide, IfOneOfSeveralLooksCannotHaveBeenMadeNoneIsTaken)
{
    Service service = wig();
    service.coats[0].zones[1].looks = service.coats[0].zones[2].looks;
    Teller teller{service};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    const std::size_t before = teller.facts.size();
    EXPECT_THAT(refusal(teller, {.kind = Kind::Leave, .task = look(1), .also = {look(2)}}, clockAt(24)),
                HasSubstr("Ends has not been applied"));
    EXPECT_THAT(refusal(teller, {.kind = Kind::Leave, .task = look(1), .also = {look(7)}}, clockAt(24)),
                HasSubstr("no such look"));
    EXPECT_EQ(teller.facts.size(), before);
}

}  // namespace
}  // namespace core::run
