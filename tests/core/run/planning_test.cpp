#include "core/run/planning.h"

#include "tests/core/run/support.h"

#include <gtest/gtest.h>

namespace core::run {
namespace {

using Kind = Answer::Kind;

Instant madeFor(const Teller& teller, Instant now)
{
    PlanHistory history{teller.setup, teller.facts};
    return history.inForce(now).madeFor;
}

TEST(Planning, ThePlanIsThatOfTheLastFactUntilAStartIsThirtySecondsOverdue)
{
    Teller teller{wig()};
    EXPECT_EQ(madeFor(teller, clockAt(0, 29)), clockAt(0));
    EXPECT_EQ(madeFor(teller, clockAt(0, 30)), clockAt(0, 30));
    EXPECT_EQ(madeFor(teller, clockAt(0, 59)), clockAt(0, 30));
    EXPECT_EQ(madeFor(teller, clockAt(7, 1)), clockAt(7));
    teller.mustTell(Kind::Start, apply(0), clockAt(7, 10));
    EXPECT_EQ(madeFor(teller, clockAt(7, 40)), clockAt(7, 10));
    EXPECT_EQ(madeFor(teller, clockAt(17)), clockAt(7, 10));
    // Mids was to start at 14:17:10.
    EXPECT_EQ(madeFor(teller, clockAt(17, 45)), clockAt(17, 40));
}

TEST(Planning, APlanIsNeverMadeForATimeBeforeAnEarlierOne)
{
    Teller teller{wig()};
    teller.mustTell(Kind::Start, apply(0), clockAt(5));
    teller.mustTell(Kind::Finish, apply(0), clockAt(5));
    teller.facts[1].recorded = clockAt(-55);  // The computer's clock was put back an hour.
    EXPECT_EQ(madeFor(teller, clockAt(-55)), clockAt(5));
}

TEST(Planning, WhatIsOverdueHasBeenDueSinceItWasFirstAskedFor)
{
    Teller teller{wig()};
    const State state = teller.at(clockAt(6, 12));
    ASSERT_FALSE(state.prompts.empty());
    EXPECT_EQ(state.prompts[0].task, apply(0));
    EXPECT_EQ(state.prompts[0].due, clockAt(0));
    EXPECT_EQ(state.plan->find(apply(0))->start, clockAt(6));
}

TEST(Planning, AnAnswerAboutSomethingElseDoesNotMakeItDueAnew)
{
    Teller teller{wig()};
    for (std::size_t each = 0; each < 3; ++each)
        applyZone(teller, each, clockAt(0), clockAt(5));
    // Water is due at 5 + 35 = 40; an extra answer comes at 43.
    teller.mustTell(Kind::Leave, look(2), clockAt(43));
    const State state = teller.at(clockAt(44));
    const auto* water = findPrompt(state, Prompt::Asks::Start, task(TaskKind::Rinse));
    ASSERT_TRUE(water);
    EXPECT_EQ(water->due, clockAt(40));
}

TEST(Planning, WhatHadToWaitIsNotLate)
{
    Teller teller{wig()};
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    teller.mustTell(Kind::Finish, apply(0), clockAt(15));
    const State state = teller.at(clockAt(15, 10));
    const auto* next = findPrompt(state, Prompt::Asks::Start, apply(1));
    ASSERT_TRUE(next);
    EXPECT_EQ(next->due, clockAt(15));
}

TEST(Planning, WhenLimitsCannotHoldTheReasonStaysBesideTheLeastHarm)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    EXPECT_FALSE(teller.at(clockAt(16)).reason);
    applyZone(teller, 2, clockAt(40),
              clockAt(45));  // Ends takes water to 67, past 55 for Root and 51 for Mids.
    const State state = teller.at(clockAt(45));
    ASSERT_TRUE(state.reason);
    EXPECT_EQ(state.reason->text, "Applying takes too long.");
    EXPECT_TRUE(state.plan);
}

}  // namespace
}  // namespace core::run
