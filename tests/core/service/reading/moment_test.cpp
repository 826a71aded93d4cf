#include "core/service/reading/moment.h"

#include "tests/core/measure/london.h"

#include <gtest/gtest.h>

namespace core::service::reading {
namespace {

using namespace std::chrono;
using measure::Instant;

struct Read {
    Instant moment;
    std::string problem;
};

Read read(const char* words, year_month_day day = 2026y / June / 1)
{
    const measure::London2026 zones;
    const Clock clock{zones, "Europe/London", local_days{day}};
    Findings findings;
    const Instant moment = readMoment(json::text(words), clock, "ready_by", findings);
    const auto problems = findings.take();
    return {moment, problems.empty() ? "" : problemText(problems.front())};
}

Instant utc(year_month_day day, seconds time)
{
    return sys_days{day} + time;
}

TEST(Moment, OfAClockTimeIsOnTheDayOfTheFile)
{
    EXPECT_EQ(read("14:30").moment,
              utc(2026y / June / 1, hours{13} + minutes{30}));  // summer time is an hour ahead
    EXPECT_EQ(read("14:30", 2026y / January / 5).moment, utc(2026y / January / 5, hours{14} + minutes{30}));
    EXPECT_EQ(read("00:00:09").moment, utc(2026y / May / 31, hours{23} + seconds{9}));
}

TEST(Moment, OfADateNeedsNoDay)
{
    EXPECT_EQ(read("2026-12-24T09:05").moment, utc(2026y / December / 24, hours{9} + minutes{5}));
    EXPECT_EQ(read("2026-12-24T09:05:59").moment,
              utc(2026y / December / 24, hours{9} + minutes{5} + seconds{59}));
}

TEST(Moment, TakesAnOffsetFromUtc)
{
    EXPECT_EQ(read("2026-12-24T09:05Z").moment, utc(2026y / December / 24, hours{9} + minutes{5}));
    EXPECT_EQ(read("2026-12-24T09:05-03:30").moment, utc(2026y / December / 24, hours{12} + minutes{35}));
    EXPECT_EQ(read("09:05+02:00").moment, utc(2026y / June / 1, hours{7} + minutes{5}));
}

TEST(Moment, SkippedByTheClocksIsRefused)
{
    EXPECT_EQ(read("2026-03-29T01:30").problem,
              "ready_by: 01:30 does not exist on 2026-03-29 in Europe/London, because the clocks go forward "
              "over it; "
              "name a time before or after the change");
    EXPECT_EQ(read("2026-03-29T00:59").problem, "");
    EXPECT_EQ(read("2026-03-29T02:00").problem, "");
}

TEST(Moment, RepeatedByTheClocksNeedsAnOffset)
{
    EXPECT_EQ(read("2026-10-25T01:30").problem,
              "ready_by: 01:30 comes twice on 2026-10-25 in Europe/London, because the clocks go back; write "
              "\"2026-10-25T01:30+01:00\" for the first or \"2026-10-25T01:30+00:00\" for the second");
    EXPECT_EQ(read("2026-10-25T01:30+01:00").moment, utc(2026y / October / 25, minutes{30}));
    EXPECT_EQ(read("2026-10-25T01:30+00:00").moment, utc(2026y / October / 25, hours{1} + minutes{30}));
    EXPECT_EQ(read("2026-10-25T00:59").problem, "");
    EXPECT_EQ(read("2026-10-25T02:00").problem, "");
}

TEST(Moment, WrittenInAnyOtherWayIsRefused)
{
    for (const char* words : {"",
                              "9:05",
                              "24:00",
                              "12:60",
                              "12:30:60",
                              "12",
                              "12:30 ",
                              " 12:30",
                              "12.30",
                              "noon",
                              "2026-02-29T10:00",
                              "2026-13-01T10:00",
                              "2026-06-31T10:00",
                              "2026-06-01 10:00",
                              "2026-06-01",
                              "2026-06-01T",
                              "10:00+1",
                              "10:00+24:00",
                              "10:00z",
                              "-026-06-01T10:00",
                              "10:00Z+01:00"})
        EXPECT_EQ(read(words).problem,
                  "ready_by: " + json::quoted(words)
                      + " is not a clock time; write \"14:30\", or \"2026-10-25T14:30\" with the day");
}

TEST(Day, IsReadStrictly)
{
    EXPECT_EQ(readDay("2024-02-29"), local_days{2024y / February / 29});
    for (const char* words : {"2026-02-29", "2026-2-9", "2026-06-01T", "26-06-01", "2026/06/01", ""})
        EXPECT_FALSE(readDay(words)) << words;
}

}  // namespace
}  // namespace core::service::reading
