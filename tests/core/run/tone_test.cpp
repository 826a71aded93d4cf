#include "tests/core/run/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// What was seen at a look, in words.

namespace core::run {
namespace {

using Kind = Answer::Kind;
using testing::HasSubstr;

/// All is applied by 21; Ends are looked at at 29.
Teller applied()
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    return teller;
}

Answer seen(Kind kind, const std::string& tone)
{
    return {.kind = kind, .task = look(2), .again = minutes(4), .tone = tone};
}

TEST(Tone, IsKeptWithTheLookAndShownInItsLane)
{
    Teller teller = applied();
    ASSERT_EQ(teller.tell(seen(Kind::LookAgain, "still yellow"), clockAt(29)), std::nullopt);
    EXPECT_EQ(teller.facts.back().tone, "still yellow");
    EXPECT_EQ(teller.at(clockAt(30)).lanes[2].tone, (SeenTone{"still yellow", clockAt(29)}));
    EXPECT_EQ(teller.at(clockAt(30)).lanes[1].tone, std::nullopt);

    ASSERT_EQ(teller.tell(seen(Kind::Leave, "even"), clockAt(33)), std::nullopt);
    EXPECT_EQ(teller.at(clockAt(34)).lanes[2].tone, (SeenTone{"even", clockAt(33)}));
    ASSERT_EQ(teller.tell({.kind = Kind::UndoLast}, clockAt(34)), std::nullopt);
    EXPECT_EQ(teller.at(clockAt(34)).lanes[2].tone, (SeenTone{"still yellow", clockAt(29)}));
    ASSERT_EQ(teller.tell({.kind = Kind::MoveLast, .ago = minutes(7)}, clockAt(35)), std::nullopt);
    EXPECT_EQ(teller.at(clockAt(35)).lanes[2].tone, (SeenTone{"still yellow", clockAt(28)}));
}

// A look that nobody said a tone of does not take the last one away.
TEST(Tone, StaysUntilAnotherIsSeen)
{
    Teller teller = applied();
    ASSERT_EQ(teller.tell(seen(Kind::LookAgain, "turning green"), clockAt(29)), std::nullopt);
    ASSERT_EQ(teller.tell(seen(Kind::Leave, ""), clockAt(33)), std::nullopt);
    EXPECT_EQ(teller.at(clockAt(34)).lanes[2].tone, (SeenTone{"turning green", clockAt(29)}));
}

TEST(Tone, GoesWithARinseThatALookAskedForAndIsNotLostWithoutOne)
{
    Teller teller = applied();
    Answer now = seen(Kind::RinseZoneNow, "even");
    ASSERT_EQ(teller.tell(now, clockAt(29)), std::nullopt);
    EXPECT_EQ(teller.at(clockAt(29)).lanes[2].tone, (SeenTone{"even", clockAt(29)}));

    Teller other = applied();
    now.task = apply(1);
    EXPECT_THAT(other.tell(now, clockAt(29)).value_or(""), HasSubstr("kept with a look"));
}

TEST(Tone, IsOneLineOfAFewWords)
{
    Teller teller = applied();
    EXPECT_THAT(teller.tell(seen(Kind::Leave, "a\nb"), clockAt(29)).value_or(""), HasSubstr("one line"));
    EXPECT_THAT(teller.tell(seen(Kind::Leave, std::string(241, 'x')), clockAt(29)).value_or(""),
                HasSubstr("fewer words"));
    EXPECT_EQ(teller.tell(seen(Kind::Leave, std::string(240, 'x')), clockAt(29)), std::nullopt);
}

}  // namespace
}  // namespace core::run
