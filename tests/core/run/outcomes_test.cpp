#include "core/run/outcomes.h"
#include "tests/core/run/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// How zones turned out, and what to think of next time.

namespace core::run {
namespace {

using Kind = Answer::Kind;
using testing::HasSubstr;

/// All is on by 21 and rinsed from 45 to 49.
Teller rinsed()
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    teller.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(45));
    teller.mustTell(Kind::Finish, task(TaskKind::Rinse), clockAt(49));
    return teller;
}

Answer turned(std::size_t zone, std::optional<Outcome> outcome, const std::string& words = {})
{
    return {.kind = Kind::TurnOut, .task = apply(zone), .tone = words, .outcome = outcome};
}

TEST(Outcomes, AreKeptForEachZoneInItsPlace)
{
    Teller teller = rinsed();
    ASSERT_EQ(teller.tell(turned(2, Outcome::TooLight), clockAt(60)), std::nullopt);
    ASSERT_EQ(teller.tell(turned(0, Outcome::AsWanted, "a little soft"), clockAt(61)), std::nullopt);
    const auto outcomes = outcomesOf(teller.facts);
    ASSERT_EQ(outcomes.size(), 2U);
    EXPECT_EQ(outcomes[0].zone, apply(0));
    EXPECT_EQ(outcomes[0].outcome, Outcome::AsWanted);
    EXPECT_EQ(outcomes[0].words, "a little soft");
    EXPECT_EQ(outcomes[1].zone, apply(2));
    EXPECT_EQ(outcomes[1].outcome, Outcome::TooLight);
}

TEST(Outcomes, LetTheLastWordCountAndGiveTheOneBeforeBackWhenItIsUndone)
{
    Teller teller = rinsed();
    ASSERT_EQ(teller.tell(turned(1, Outcome::TooDark), clockAt(60)), std::nullopt);
    ASSERT_EQ(teller.tell(turned(1, {}, "muddy"), clockAt(62)), std::nullopt);
    EXPECT_EQ(outcomesOf(teller.facts).front().outcome, std::nullopt);
    EXPECT_EQ(outcomesOf(teller.facts).front().words, "muddy");
    ASSERT_EQ(teller.tell({.kind = Kind::UndoLast}, clockAt(63)), std::nullopt);
    EXPECT_EQ(outcomesOf(teller.facts).front().outcome, Outcome::TooDark);
    ASSERT_EQ(teller.tell({.kind = Kind::UndoLast}, clockAt(64)), std::nullopt);
    EXPECT_TRUE(outcomesOf(teller.facts).empty());
}

TEST(Outcomes, ChangeNothingThatIsPlannedOrAskedFor)
{
    Teller teller{longWig()};
    applyZone(teller, 0, clockAt(2), clockAt(12));
    applyZone(teller, 1, clockAt(12), clockAt(18));
    applyZone(teller, 2, clockAt(18), clockAt(23));
    teller.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(47));
    const State before = teller.at(clockAt(47));
    ASSERT_EQ(teller.tell(turned(0, Outcome::TooWarm), clockAt(47)), std::nullopt);
    ASSERT_EQ(teller.tell({.kind = Kind::Note, .task = apply(0), .tone = "two minutes less"}, clockAt(47)),
              std::nullopt);
    const State after = teller.at(clockAt(47));
    EXPECT_EQ(after.progress, before.progress);
    EXPECT_EQ(after.plan, before.plan);
    EXPECT_EQ(after.prompts, before.prompts);
    EXPECT_EQ(after.lanes, before.lanes);
}

TEST(Outcomes, AreForZonesThatHadWater)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    EXPECT_THAT(teller.tell(turned(0, Outcome::AsWanted), clockAt(11)).value_or(""),
                HasSubstr("not been rinsed"));
    EXPECT_THAT(teller.tell(turned(7, Outcome::AsWanted), clockAt(11)).value_or(""),
                HasSubstr("no such task"));
}

TEST(Outcomes, AreAWordOrWordsInOneLine)
{
    Teller teller = rinsed();
    EXPECT_THAT(teller.tell(turned(0, {}), clockAt(60)).value_or(""), HasSubstr("Say how Root turned out"));
    EXPECT_THAT(teller.tell(turned(0, {}, "a\nb"), clockAt(60)).value_or(""), HasSubstr("one line"));
    EXPECT_THAT(teller.tell(turned(0, {}, std::string(241, 'x')), clockAt(60)).value_or(""),
                HasSubstr("fewer words"));
    EXPECT_EQ(teller.tell(turned(0, {}, std::string(240, 'x')), clockAt(60)), std::nullopt);
    EXPECT_THAT(teller.tell({.kind = Kind::Note, .task = apply(0)}, clockAt(60)).value_or(""),
                HasSubstr("next time"));
}

TEST(Outcomes, CanBeToldOnceTheRunHasBeenEnded)
{
    Teller teller = rinsed();
    teller.mustTell(Kind::End, {}, clockAt(50));
    EXPECT_EQ(teller.tell(turned(0, Outcome::Uneven), clockAt(55)), std::nullopt);
    ASSERT_EQ(teller.tell({.kind = Kind::Note, .task = apply(1), .tone = "thinner sections"}, clockAt(55)),
              std::nullopt);
    ASSERT_EQ(notesOf(teller.facts).size(), 1U);
    EXPECT_EQ(notesOf(teller.facts).front().words, "thinner sections");
    EXPECT_TRUE(teller.at(clockAt(56)).finished);
    EXPECT_NE(teller.tell(Kind::Start, apply(0), clockAt(57)), std::nullopt) << "nothing else can";
}

TEST(Outcomes, CanGoToTheZoneThatWasMeant)
{
    Teller teller = rinsed();
    ASSERT_EQ(teller.tell(turned(0, Outcome::TooCool, "greenish"), clockAt(60)), std::nullopt);
    ASSERT_EQ(teller.tell({.kind = Kind::OtherZone, .task = apply(2)}, clockAt(61)), std::nullopt);
    const auto outcomes = outcomesOf(teller.facts);
    ASSERT_EQ(outcomes.size(), 1U);
    EXPECT_EQ(outcomes[0].zone, apply(2));
    EXPECT_EQ(outcomes[0].outcome, Outcome::TooCool);
    EXPECT_EQ(outcomes[0].words, "greenish");
}

}  // namespace
}  // namespace core::run
