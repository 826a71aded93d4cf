#include "tests/core/run/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace core::run {
namespace {

using Kind = Answer::Kind;
using testing::HasSubstr;

TEST(Correction, UndoingTwiceTakesBackTwoAnswers)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    ASSERT_FALSE(teller.tell({.kind = Kind::UndoLast}, clockAt(11)));
    EXPECT_FALSE(progressOf(teller.setup, teller.facts).tasks.at(0).end);
    ASSERT_FALSE(teller.tell({.kind = Kind::UndoLast}, clockAt(11)));
    EXPECT_TRUE(progressOf(teller.setup, teller.facts).empty());
    EXPECT_TRUE(teller.tell({.kind = Kind::UndoLast}, clockAt(11)));
}

TEST(Correction, AnUndoCanBeUndoneByItsNumber)
{
    Teller teller{wig()};
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    const auto before = progressOf(teller.setup, teller.facts);
    ASSERT_FALSE(teller.tell({.kind = Kind::UndoLast}, clockAt(1)));
    ASSERT_FALSE(teller.tell({.kind = Kind::UndoLast, .about = teller.facts.back().number}, clockAt(2)));
    EXPECT_EQ(progressOf(teller.setup, teller.facts), before);
}

TEST(Correction, AnAnswerOfTwoFactsIsUndoneAndRedoneAsOne)
{
    Teller teller{wig()};
    applyZone(teller, 2, clockAt(0), clockAt(5));
    const auto before = progressOf(teller.setup, teller.facts);
    teller.mustTell(Kind::RinseZoneNow, look(2), clockAt(13));
    const auto after = progressOf(teller.setup, teller.facts);
    ASSERT_FALSE(teller.tell({.kind = Kind::UndoLast}, clockAt(14)));
    EXPECT_EQ(progressOf(teller.setup, teller.facts), before);
    ASSERT_FALSE(teller.tell({.kind = Kind::UndoLast, .about = teller.facts.back().number}, clockAt(14)));
    EXPECT_EQ(progressOf(teller.setup, teller.facts), after);
}

TEST(Correction, AStartIsUndoneWithItsEnd)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    ASSERT_FALSE(teller.tell({.kind = Kind::UndoLast, .about = FactNumber{1}}, clockAt(11)));
    EXPECT_TRUE(progressOf(teller.setup, teller.facts).empty());
}

TEST(Correction, TheLastAnswerHappenedEarlier)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(12));
    ASSERT_FALSE(teller.tell({.kind = Kind::MoveLast, .ago = minutes(3)}, clockAt(13)));
    EXPECT_EQ(progressOf(teller.setup, teller.facts).tasks.at(0).end, clockAt(10));
    // Put right once more: what was moved is meant, not the moving.
    ASSERT_FALSE(teller.tell({.kind = Kind::MoveLast, .ago = minutes(4)}, clockAt(13)));
    EXPECT_EQ(progressOf(teller.setup, teller.facts).tasks.at(0).end, clockAt(9));
}

TEST(Correction, NothingIsMovedBeforeItsStartOrPastItsEnd)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(5), clockAt(12));
    EXPECT_THAT(teller.tell({.kind = Kind::MoveLast, .ago = minutes(9)}, clockAt(13)).value_or(""),
                HasSubstr("before Apply Root started"));
    EXPECT_THAT(teller.tell({.kind = Kind::MoveLast, .about = FactNumber{1}}, clockAt(13)).value_or(""),
                HasSubstr("after Apply Root ended"));
    EXPECT_THAT(teller.tell({.kind = Kind::MoveLast, .about = FactNumber{77}}, clockAt(13)).value_or(""),
                HasSubstr("does not stand"));
}

}  // namespace
}  // namespace core::run
