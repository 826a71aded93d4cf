#include "core/alarm/mutes.h"

#include "tests/core/run/support.h"

#include <gtest/gtest.h>

namespace core::alarm {
namespace {

using namespace run;

Alarm alarmOf(Kind kind, std::size_t zone)
{
    return {.kind = kind, .subject = Subject::Water, .task = apply(zone), .since = clockAt(0)};
}

TEST(Mutes, SilenceOneAlarmForAWhile)
{
    Mutes mutes;
    const Alarm muted = alarmOf(Kind::LimitNear, 0);
    const Alarm other = alarmOf(Kind::LimitNear, 1);
    EXPECT_TRUE(mutes.mute(muted, clockAt(0)));
    EXPECT_EQ(mutes.until(muted, clockAt(1)), clockAt(2));
    EXPECT_EQ(mutes.audible({muted, other}, clockAt(1)), std::vector{other});
    EXPECT_EQ(mutes.audible({muted, other}, clockAt(2)), (std::vector{muted, other}));
}

TEST(Mutes, AreNotMadeLongerWhileTheyLast)
{
    Mutes mutes;
    const Alarm alarm = alarmOf(Kind::Due, 0);
    EXPECT_TRUE(mutes.mute(alarm, clockAt(0)));
    EXPECT_FALSE(mutes.mute(alarm, clockAt(1, 59)));
    EXPECT_EQ(mutes.until(alarm, clockAt(1, 59)), clockAt(2));
    EXPECT_TRUE(mutes.mute(alarm, clockAt(2)));
}

// However often somebody asks, a passed limit sounds again each minute.
TEST(Mutes, ALimitThatIsPassedCannotBeMutedForGood)
{
    Mutes mutes;
    const Alarm alarm = alarmOf(Kind::LimitPassed, 0);
    int sounded = 0;
    for (Instant now = clockAt(0); now <= clockAt(60); now += Seconds{1}) {
        sounded += mutes.until(alarm, now) ? 0 : 1;
        mutes.mute(alarm, now);
    }
    EXPECT_EQ(sounded, 61);
}

TEST(Mutes, EndWithTheKindThatWasMuted)
{
    Mutes mutes;
    mutes.mute(alarmOf(Kind::LimitNear, 0), clockAt(0));
    EXPECT_FALSE(mutes.until(alarmOf(Kind::LimitPassed, 0), clockAt(0)));
    mutes.mute(alarmOf(Kind::GetReady, 0), clockAt(0));
    EXPECT_FALSE(mutes.until(alarmOf(Kind::Due, 0), clockAt(0)));
}

TEST(Mutes, CanBeEnded)
{
    Mutes mutes;
    mutes.mute(alarmOf(Kind::Due, 0), clockAt(0));
    mutes.unmute(alarmOf(Kind::Due, 0));
    EXPECT_FALSE(mutes.until(alarmOf(Kind::Due, 0), clockAt(0)));
}

// A louder insistence, or a moment that a new plan moved, is the same alarm.
TEST(Mutes, LastWhileTheAlarmGrows)
{
    Mutes mutes;
    Alarm alarm = alarmOf(Kind::Due, 0);
    mutes.mute(alarm, clockAt(0));
    alarm.insistence = 2;
    alarm.since = clockAt(0, 30);
    EXPECT_TRUE(mutes.until(alarm, clockAt(1)));
}

}  // namespace
}  // namespace core::alarm
