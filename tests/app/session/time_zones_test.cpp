#include "app/session/time_zones.h"

#include <gtest/gtest.h>

namespace app::session {
namespace {

using core::measure::Instant;
using core::measure::LocalTime;
using std::chrono_literals::operator""h;
using std::chrono_literals::operator""min;

LocalTime local(int month, int day, int hour, int minute)
{
    return std::chrono::local_days{std::chrono::year{2026} / month / day} + std::chrono::hours{hour}
    + std::chrono::minutes{minute};
}

Instant utc(int month, int day, int hour, int minute)
{
    return Instant{local(month, day, hour, minute).time_since_epoch()};
}

// The rules of the zones are those of the IANA time zone database, europe and australasia.

TEST(TimeZones, KnowTheWorldsNamesAndNoOthers)
{
    const QtTimeZones zones;
    for (const char* const zone : {"UTC", "Europe/London", "America/New_York", "Asia/Kolkata"})
        EXPECT_TRUE(zones.knows(zone)) << zone;
    for (const char* const zone : {"", "Europe/Atlantis", "UTC+01:00", "europe/london ", "../etc/passwd"})
        EXPECT_FALSE(zones.knows(zone)) << zone;
    EXPECT_TRUE(zones.knows(localZone()));
}

TEST(TimeZones, HaveOneInstantForAnOrdinaryTime)
{
    const QtTimeZones zones;
    EXPECT_EQ(zones.instantsOf(local(7, 1, 12, 0), "Europe/London"), std::vector{utc(7, 1, 11, 0)});
    EXPECT_EQ(zones.instantsOf(local(1, 1, 12, 0), "Asia/Kolkata"), std::vector{utc(1, 1, 6, 30)});
    EXPECT_EQ(zones.instantsOf(local(1, 1, 12, 0), "UTC"), std::vector{utc(1, 1, 12, 0)});
}

TEST(TimeZones, HaveNoInstantForATimeThatIsSkipped)
{
    // In 2026 London's clocks go forward on 29 March at 01:00 UTC, from 01:00 to 02:00.
    const QtTimeZones zones;
    EXPECT_TRUE(zones.instantsOf(local(3, 29, 1, 30), "Europe/London").empty());
    EXPECT_TRUE(zones.instantsOf(local(3, 29, 1, 0), "Europe/London").empty());
    EXPECT_EQ(zones.instantsOf(local(3, 29, 2, 0), "Europe/London"), std::vector{utc(3, 29, 1, 0)});
}

TEST(TimeZones, HaveTwoInstantsForATimeThatIsRepeated)
{
    // And back on 25 October at 01:00 UTC, from 02:00 to 01:00. Lord Howe Island moves by half an hour.
    const QtTimeZones zones;
    EXPECT_EQ(zones.instantsOf(local(10, 25, 1, 30), "Europe/London"),
              (std::vector{utc(10, 25, 0, 30), utc(10, 25, 1, 30)}));
    EXPECT_EQ(zones.instantsOf(local(4, 5, 1, 45), "Australia/Lord_Howe"),
              (std::vector{utc(4, 4, 14, 45), utc(4, 4, 15, 15)}));
}

TEST(TimeZones, ShowEveryInstantAsSomethingThatLeadsBackToIt)
{
    const QtTimeZones zones;
    for (const char* const zone :
         {"Europe/London", "America/New_York", "Australia/Lord_Howe", "Pacific/Apia"})
        for (Instant instant = utc(1, 1, 0, 0); instant < utc(12, 31, 0, 0); instant += 127h + 17min) {
            const auto found = zones.instantsOf(zones.localAt(instant, zone), zone);
            EXPECT_EQ(std::count(found.begin(), found.end(), instant), 1)
                << zone << " " << instant.time_since_epoch().count();
        }
}

}  // namespace
}  // namespace app::session
