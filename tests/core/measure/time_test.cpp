#include "core/measure/time.h"

#include "tests/core/measure/london.h"

#include <gtest/gtest.h>

namespace core::measure {
namespace {

using namespace std::chrono;

LocalTime local(year_month_day day, Seconds time)
{
    return local_days{day} + time;
}

TEST(LengthText, SaysHoursMinutesAndSecondsThatAreThere)
{
    EXPECT_EQ(lengthText(minutes{30}), "30 min");
    EXPECT_EQ(lengthText(seconds{750}), "12 min 30 s");
    EXPECT_EQ(lengthText(seconds{45}), "45 s");
    EXPECT_EQ(lengthText(hours{1} + minutes{5}), "1 h 5 min");
    EXPECT_EQ(lengthText(hours{2}), "2 h");
    EXPECT_EQ(lengthText(hours{2} + seconds{1}), "2 h 1 s");
    EXPECT_EQ(lengthText(seconds{0}), "0 min");
    EXPECT_EQ(lengthText(-seconds{90}), "-1 min 30 s");
}

TEST(CountdownText, HasTwoDigitsForSeconds)
{
    EXPECT_EQ(countdownText(seconds{245}), "4:05");
    EXPECT_EQ(countdownText(hours{1} + minutes{4} + seconds{5}), "1:04:05");
    EXPECT_EQ(countdownText(-seconds{30}), "-0:30");
    EXPECT_EQ(countdownText(seconds{0}), "0:00");
}

TEST(ClockText, HasTwoDigitsEach)
{
    const LocalTime time = local(2026y / March / 5, hours{9} + minutes{5} + seconds{7});
    EXPECT_EQ(clockText(time), "09:05");
    EXPECT_EQ(clockTextWithSeconds(time), "09:05:07");
    EXPECT_EQ(isoText(time), "2026-03-05T09:05:07");
}

TEST(IsoText, WorksBefore1970)
{
    EXPECT_EQ(isoText(local(1969y / December / 31, hours{23} + minutes{59})), "1969-12-31T23:59:00");
}

TEST(UtcOnly, KnowsUtcAndNothingElse)
{
    const UtcOnly zones;
    EXPECT_TRUE(zones.knows("UTC"));
    EXPECT_FALSE(zones.knows("Europe/London"));
    const LocalTime noon = local(2026y / June / 1, hours{12});
    ASSERT_EQ(zones.instantsOf(noon, "UTC").size(), 1U);
    EXPECT_EQ(zones.localAt(zones.instantsOf(noon, "UTC").front(), "UTC"), noon);
}

// 35 minutes of development over the autumn change are 35 minutes, though the wall clock
// shows 25 minutes less at the end: 01:45 BST and 35 min is 01:20 GMT.
TEST(Instant, CountsElapsedTimeOverTheAutumnChange)
{
    const London2026 zones;
    const auto quarterToTwo =
        zones.instantsOf(local(2026y / October / 25, hours{1} + minutes{45}), "Europe/London");
    ASSERT_EQ(quarterToTwo.size(), 2U);
    EXPECT_EQ(quarterToTwo[1] - quarterToTwo[0], hours{1});
    const Instant end = quarterToTwo[0] + minutes{35};
    EXPECT_EQ(clockText(zones.localAt(end, "Europe/London")), "01:20");
    EXPECT_EQ(end - quarterToTwo[0], minutes{35});
}

// 35 minutes over the spring change: 00:45 GMT and 35 min is 02:20 BST.
TEST(Instant, CountsElapsedTimeOverTheSpringChange)
{
    const London2026 zones;
    const auto start = zones.instantsOf(local(2026y / March / 29, minutes{45}), "Europe/London");
    ASSERT_EQ(start.size(), 1U);
    EXPECT_EQ(clockText(zones.localAt(start[0] + minutes{35}, "Europe/London")), "02:20");
    EXPECT_TRUE(zones.instantsOf(local(2026y / March / 29, hours{1} + minutes{30}), "Europe/London").empty());
}

}  // namespace
}  // namespace core::measure
