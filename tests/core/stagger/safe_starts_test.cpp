#include "core/stagger/safe_starts.h"

#include "core/stagger/forecast.h"
#include "tests/core/stagger/support.h"

#include <gtest/gtest.h>

#include <algorithm>

// Worked out by hand; that following them breaks nothing is shown in following/.

namespace core::stagger {
namespace {

struct Minutes {
    double earliest = 0;
    double latest = 0;
    bool hangsOnLengths = false;
    SafeFor safeFor = SafeFor::LengthsHeld;

    friend bool operator==(const Minutes&, const Minutes&) = default;
    friend std::ostream& operator<<(std::ostream& out, const Minutes& minutes)
    {
        return out << minutes.earliest << " to " << minutes.latest << (minutes.hangsOnLengths ? " hangs" : "")
                   << (minutes.safeFor == SafeFor::UsualLengths ? " usual" : "");
    }
};

Minutes startOf(const Question& question, const TaskId& id)
{
    const std::vector<SafeStart> starts = safeStarts(question, planned(question));
    const auto found = std::ranges::find(starts, id, &SafeStart::task);
    if (found == starts.end())
        throw std::runtime_error("no safe start of " + taskIdText(id));
    const auto minutesOf = [](Instant instant) {
        return static_cast<double>((instant - opening).count()) / 60;
    };
    return {minutesOf(found->earliest), minutesOf(found->latest.value_or(at(-1))), found->hangsOnLengths,
            found->safeFor};
}

// Ends takes up to 14 min and must then develop for 26: water at least 40 after it begins. Root, applied from
// 0 to 11, has water by 11 + 45 = 56 at the latest. So Ends begins by 16. Water comes from 11 + 25 = 36 for
// Root, and at 11 + 11 + 26 = 48 at the earliest for Ends as usual; by 56, for Root; by 11 + 11 + 36 = 58 for
// Ends.
Question rootHasBeenApplied()
{
    Question question = ask(fromOpening({slowZone("Root", 25, 40, 45), slowZone("Ends", 26, 30, 36)}));
    happened(question, idOf(TaskKind::Apply), 0, 11);
    question.now = at(11);
    return question;
}

TEST(SafeStarts, OfTheNextStepAreThoseWithWhichLimitsHoldForAllLengths)
{
    EXPECT_EQ(startOf(rootHasBeenApplied(), idOf(TaskKind::Apply, 1)), (Minutes{11, 16}));
}

// Put off to 16, Ends is over at 27 as usual. At the latest the water is there at 56, which no length
// changes.
TEST(SafeStarts, OfAStepFurtherAheadTakeLengthsAsUsualUntilThen)
{
    EXPECT_EQ(startOf(rootHasBeenApplied(), idOf(TaskKind::Rinse)), (Minutes{48, 56}));
}

// 'Order kept, feasible for usual lengths': Ends may begin at 56 - 26 - 11 = 19.
TEST(SafeStarts, AreForUsualLengthsWhereNoGuaranteeIsAskedFor)
{
    Question question = rootHasBeenApplied();
    question.guarantee = false;
    EXPECT_EQ(startOf(question, idOf(TaskKind::Apply, 1)), (Minutes{11, 19, false, SafeFor::UsualLengths}));
}

// Nothing ties the first step to the clock: it has no latest start, which is written as -1.
TEST(SafeStarts, HaveNoEndWhereNothingSetsALimit)
{
    Question question = ask(fromOpening({slowZone("Root", 29, 30, 60)}));
    question.now = at(0);
    EXPECT_EQ(startOf(question, idOf(TaskKind::Apply)), (Minutes{0, -1}));
}

// The promise does.
TEST(SafeStarts, OfTheFirstStepAreThoseThatKeepThePromise)
{
    Question question = ask(readyBy(60, {slowZone("Root", 29, 30, 60)}));
    question.now = at(0);
    // Backwards from 60: 5 of rinsing, 29 of development, up to 14 of applying.
    EXPECT_EQ(startOf(question, idOf(TaskKind::Apply)), (Minutes{0, 12}));
}

// Root goes on since 0, is over at 11 as usual and at 8 if it is quick: then its water, 45 after, is 3
// earlier.
TEST(SafeStarts, SayWhatHangsOnLengths)
{
    Question question = ask(fromOpening({slowZone("Root", 25, 40, 45), slowZone("Ends", 26, 30, 36)}));
    happened(question, idOf(TaskKind::Apply), 0);
    question.now = at(1);
    EXPECT_EQ(startOf(question, idOf(TaskKind::Apply, 1)), (Minutes{11, 16, true}));
}

// At 13 Root goes on still: it ends a second later at the earliest.
TEST(SafeStarts, ComeLaterThanNowWhereAnApplicationIsOverdue)
{
    Question question = ask(fromOpening({slowZone("Root", 25, 40, 45), slowZone("Ends", 26, 30, 36)}));
    happened(question, idOf(TaskKind::Apply), 0);
    question.now = at(13);
    EXPECT_EQ(startOf(question, idOf(TaskKind::Apply, 1)).earliest, 13 + 1 / 60.0);
}

// Water is at 90 at the latest as planned: no limit is broken further than the plan breaks it.
TEST(SafeStarts, BreakNoLimitFurtherThanThePlan)
{
    Question question = ask(fromOpening({makeZone("Root", minutes{10}, exactly(30))}));
    happened(question, idOf(TaskKind::Apply), 0, 10);
    question.now = at(90);
    question.mayBreakLimits = true;
    EXPECT_EQ(startOf(question, idOf(TaskKind::Rinse)), (Minutes{90, 90}));
}

// Two pairs of hands, nothing uncertain: each goes at its own thing.
TEST(SafeStarts, KnowWhoDoesWhatWhereEveryLengthIsCertain)
{
    Service service = fromOpening({makeZone("Root", minutes{10}, {minutes{25}, minutes{30}, minutes{35}}),
                                   makeZone("Ends", minutes{10}, {minutes{25}, minutes{30}, minutes{35}})});
    addHands(service);
    const Question question = ask(service);
    // Both are applied from 0 to 10, and the other may be put off by 10.
    EXPECT_EQ(startOf(question, idOf(TaskKind::Apply, 1)).earliest, 0);
    EXPECT_TRUE(forecast(question, planned(question), {.runs = 1}));
}

}  // namespace
}  // namespace core::stagger
