#include "app/output/wall_clock.h"

#include "app/session/time_zones.h"
#include "tests/app/output/output_samples.h"

#include <gtest/gtest.h>

namespace app::output {
namespace {

using samples::utc;

// The changes of London's clocks in 2026 (29 March and 25 October, 01:00 UTC): IANA time zone database,
// europe.

TEST(WallClock, ShowsNoMoreThanTheTimeWithinADay)
{
    const session::QtTimeZones zones;
    const WallClock clock{zones, "Europe/London", utc(7, 1, 9, 0), utc(7, 1, 11, 0)};

    EXPECT_EQ(clock.text(utc(7, 1, 9, 5)), "10:05");
    EXPECT_EQ(clock.dayText(utc(7, 1, 9, 5)), "Wednesday 1 July 2026");
    EXPECT_EQ(clock.isoText(utc(7, 1, 9, 5)), "2026-07-01T10:05:00+01:00");
}

TEST(WallClock, ShowsDatesAcrossMidnight)
{
    // Midnight in London is 23:00 UTC in summer.
    const session::QtTimeZones zones;
    const WallClock clock{zones, "Europe/London", utc(7, 1, 22, 0), utc(7, 1, 23, 30)};

    EXPECT_EQ(clock.text(utc(7, 1, 22, 0)), "Wed 1 Jul 23:00");
    EXPECT_EQ(clock.text(utc(7, 1, 23, 30)), "Thu 2 Jul 00:30");
}

TEST(WallClock, TellsTheTwoHoursApartWhenTheClocksGoBack)
{
    const session::QtTimeZones zones;
    const WallClock clock{zones, "Europe/London", utc(10, 25, 0, 0), utc(10, 25, 2, 0)};

    EXPECT_EQ(clock.text(utc(10, 25, 0, 30)), "Sun 25 Oct 01:30 +01:00");
    EXPECT_EQ(clock.text(utc(10, 25, 1, 30)), "Sun 25 Oct 01:30 +00:00");
}

TEST(WallClock, KnowsPlacesWestOfGreenwich)
{
    const session::QtTimeZones zones;
    const WallClock clock{zones, "America/St_Johns", utc(1, 15, 12, 0), utc(1, 15, 13, 0)};

    EXPECT_EQ(clock.text(utc(1, 15, 12, 0)), "08:30");
    EXPECT_EQ(clock.isoText(utc(1, 15, 12, 0)), "2026-01-15T08:30:00-03:30");
}

TEST(WallClock, ShowsSecondsWhenAsked)
{
    const core::measure::UtcOnly zones;
    WallClock clock{zones, "UTC", utc(7, 1, 9, 0), utc(7, 1, 11, 0)};
    clock.showSeconds();

    EXPECT_EQ(clock.text(utc(7, 1, 9, 0) + std::chrono::seconds{7}), "09:00:07");
}

}  // namespace
}  // namespace app::output
