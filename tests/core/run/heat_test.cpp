#include "tests/core/run/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Heat over a head: put on, taken off, asked about in time, and never worked with.

namespace core::run {
namespace {

using Asks = Prompt::Asks;
using Kind = Answer::Kind;
using testing::HasSubstr;
using testing::IsEmpty;

TaskId heat(std::size_t part = 0)
{
    return task(TaskKind::Heat, 0, part);
}

Answer heatFor(Seconds length, Seconds ago = Seconds{0})
{
    return {.kind = Kind::Start, .task = heat(), .ago = ago, .again = length};
}

/// Root is applied from 0 to 10.
Teller withRoot()
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    return teller;
}

TEST(Heat, IsOnFromWhenItWasPutOnUntilItWasTakenOff)
{
    Teller teller = withRoot();
    ASSERT_EQ(refusal(teller, heatFor(Seconds{0}, minutes(1)), clockAt(12)), "(taken)");
    ASSERT_EQ(teller.at(clockAt(12)).heats, (std::vector{Heat{heat(), clockAt(11), {}}}));

    teller.mustTell(Kind::Finish, heat(), clockAt(20));
    EXPECT_THAT(teller.at(clockAt(20)).heats, IsEmpty());
    EXPECT_EQ(teller.facts.back().task, heat());
}

TEST(Heat, ChangesNoWindowNoPlanAndNoLimit)
{
    Teller with = withRoot();
    const State before = with.at(clockAt(12));
    ASSERT_EQ(refusal(with, heatFor(minutes(10)), clockAt(12)), "(taken)");
    State after = with.at(clockAt(12));
    EXPECT_EQ(after.lanes, before.lanes);
    EXPECT_EQ(after.limits, before.limits);
    EXPECT_EQ(after.progress, before.progress);
    ASSERT_TRUE(after.plan && before.plan);
    EXPECT_EQ((*after.plan)->tasks, (*before.plan)->tasks);
}

TEST(Heat, IsAskedAboutOnceItsTimeIsUpIfThatWasSaid)
{
    Teller teller = withRoot();
    ASSERT_EQ(refusal(teller, heatFor(minutes(10)), clockAt(12)), "(taken)");
    const State state = teller.at(clockAt(15));
    const Prompt* prompt = findPrompt(state, Asks::Finish, heat());
    ASSERT_NE(prompt, nullptr);
    EXPECT_EQ(prompt->due, clockAt(22));
    EXPECT_EQ(prompt->pressing, clockAt(22));
    teller.mustTell(Kind::Finish, prompt->task, clockAt(22));
    EXPECT_EQ(findPrompt(teller.at(clockAt(22)), Asks::Finish, heat()), nullptr);

    Teller open = withRoot();
    ASSERT_EQ(refusal(open, heatFor(Seconds{0}), clockAt(12)), "(taken)");
    EXPECT_EQ(findPrompt(open.at(clockAt(60)), Asks::Finish, heat()), nullptr);
}

TEST(Heat, CanBePutOnAgainAndEachTimeIsATaskOfItsOwn)
{
    Teller teller = withRoot();
    ASSERT_EQ(refusal(teller, heatFor(minutes(2)), clockAt(11)), "(taken)");
    EXPECT_THAT(refusal(teller, heatFor(minutes(2)), clockAt(12)), HasSubstr("already"));
    teller.mustTell(Kind::Finish, heat(), clockAt(13));
    EXPECT_THAT(refusal(teller, {.kind = Kind::Finish, .task = heat()}, clockAt(14)), HasSubstr("No heat"));
    ASSERT_EQ(refusal(teller, heatFor(minutes(5)), clockAt(15)), "(taken)");
    EXPECT_EQ(teller.at(clockAt(15)).heats, (std::vector{Heat{heat(1), clockAt(15), clockAt(20)}}));
}

TEST(Heat, IsPutRightLikeEverythingElse)
{
    Teller teller = withRoot();
    ASSERT_EQ(refusal(teller, heatFor(minutes(10)), clockAt(14)), "(taken)");
    ASSERT_EQ(refusal(teller, {.kind = Kind::MoveLast, .ago = minutes(3)}, clockAt(15)), "(taken)");
    EXPECT_EQ(teller.at(clockAt(15)).heats, (std::vector{Heat{heat(), clockAt(12), clockAt(22)}}));
    teller.mustTell(Kind::Finish, heat(), clockAt(20));
    EXPECT_THAT(refusal(teller, {.kind = Kind::MoveLast, .ago = minutes(9)}, clockAt(20)),
                HasSubstr("before the heat was put on"));
    ASSERT_EQ(refusal(teller, {.kind = Kind::UndoLast}, clockAt(21)), "(taken)");
    EXPECT_EQ(teller.at(clockAt(21)).heats.size(), 1U);
    ASSERT_EQ(refusal(teller, {.kind = Kind::UndoLast}, clockAt(22)), "(taken)");
    ASSERT_EQ(refusal(teller, {.kind = Kind::UndoLast}, clockAt(22)), "(taken)");  // The move, and the heat.
    EXPECT_THAT(teller.at(clockAt(22)).heats, IsEmpty());
}

// What is put on before anything carries mixture would be for nothing; water ends what is on.
TEST(Heat, IsForMixtureOnTheHairAndEndsWithTheWater)
{
    Teller teller{wig()};
    EXPECT_THAT(refusal(teller, heatFor(minutes(5)), clockAt(0)), HasSubstr("Nothing was on the hair"));
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    ASSERT_EQ(refusal(teller, heatFor(minutes(60)), clockAt(22)), "(taken)");
    teller.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(45));
    EXPECT_THAT(teller.at(clockAt(45)).heats, IsEmpty());
    EXPECT_THAT(refusal(teller, heatFor(minutes(5)), clockAt(46)), HasSubstr("Nothing was on the hair"));
    // Taking the water back brings it back.
    ASSERT_EQ(refusal(teller, {.kind = Kind::UndoLast}, clockAt(46)), "(taken)");
    EXPECT_EQ(teller.at(clockAt(46)).heats.size(), 1U);
}

TEST(Heat, IsNeverLeftOutNorForLongerThanADay)
{
    Teller teller = withRoot();
    EXPECT_THAT(refusal(teller, {.kind = Kind::Drop, .task = heat()}, clockAt(11)),
                HasSubstr("never planned"));
    EXPECT_THAT(refusal(teller, heatFor(minutes(1441)), clockAt(11)), HasSubstr("how many minutes"));
    EXPECT_THAT(refusal(teller, heatFor(-minutes(1)), clockAt(11)), HasSubstr("how many minutes"));
}

}  // namespace
}  // namespace core::run
