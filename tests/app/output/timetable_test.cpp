#include "app/output/timetable.h"

#include "app/session/time_zones.h"
#include "tests/app/output/output_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

namespace app::output {
namespace {

using core::measure::Instant;
using core::service::ClockStart;
using testing::HasSubstr;
using testing::Not;

using samples::utc;

std::string timetableFrom(Instant now, const std::string& more = {})
{
    const session::QtTimeZones zones;
    const auto service = samples::service(samples::oneZone(more), zones);
    return timetable({service}, samples::planOf(service, now), zones);
}

TEST(Timetable, SaysInMinutesHowFarThePlanHolds)
{
    const session::QtTimeZones zones;
    auto service = samples::service(samples::oneZone(""), zones);
    core::service::Zone& zone = service.coats.front().zones.front();
    zone.apply.quickest = std::chrono::minutes{18};
    zone.apply.slowest = std::chrono::minutes{24};
    zone.looks.reset();
    const auto text = [&] {
        return timetable({service}, samples::planOf(service, utc(3, 14, 14, 0)), zones);
    };
    EXPECT_THAT(text(), HasSubstr("within what the service says: Root 18 min to 24 min."));

    // Counted from first contact the last strand of a window of 55 min and no less must carry it for 33 min:
    // applying may take 22 min, half of what it may be slower.
    zone.clock = ClockStart::FirstContact;
    zone.develop = {std::chrono::minutes{55}, std::chrono::minutes{55}, std::chrono::minutes{55}};
    zone.lastStrandLeast = std::chrono::minutes{33};
    EXPECT_THAT(text(), HasSubstr("Holds while applying takes Root 19 min to 22 min (50 %"));
}

TEST(Timetable, IsOneAPersonCanWorkFrom)
{
    // From 14:00: mixing 5 min to 14:05, applying 20 min to 14:25, a look 20 min later, and up to
    // 2 min (its tolerance) earlier, at 14:43, water after
    // 35 min of development at 15:00, rinsing 6 min. The first strand carries it 20 + 35 = 55 min.
    EXPECT_EQ(timetableFrom(utc(3, 14, 14, 0)),
              R"(Regrowth: The lamplighter
Saturday 14 March 2026, times in Europe/London. 1 pair of hands, 1 basin.

From   To       Time  Who       What
14:00  14:05   5 min  Wig room  Mix Root colour     as the leaflet says
14:05  14:25  20 min  Wig room  Apply Root
14:43  14:44   1 min  Wig room  Look at Root
15:00  15:06   6 min  Wig room  Rinse All together

Zone  First strand  Last strand  Counted from  Water  Develops  Asked for                                   First strand carries it
Root  14:05         14:25        last strand   15:00    35 min  30 min to 45 min, target 35 min  on target  55 min of at most 1 h 10 min

Every zone gets its target.
It takes 1 h 6 min from the first task to the last.
Proved: there is no better plan.
)");
}

TEST(Timetable, NamesTheHeadOnEveryLineWhereThereAreSeveral)
{
    const session::QtTimeZones zones;
    core::stagger::Question question;
    for (const char* const name : {"The lamplighter", "The miller"}) {
        question.services.push_back(samples::service(samples::oneZone({}), zones));
        question.services.back().head.name = name;
    }
    question.now = utc(3, 14, 14, 0);
    const auto plan = core::stagger::plan(question);
    ASSERT_TRUE(plan) << plan.error().text;

    std::istringstream lines{timetable(question.services, *plan, zones)};
    int named = 0;
    for (std::string line; std::getline(lines, line);) {
        const bool isTask = line.starts_with("14:") || line.starts_with("15:");
        const bool isHead =
            line.find("The lamplighter") != std::string::npos || line.find("The miller") != std::string::npos;
        EXPECT_TRUE(isHead || !isTask) << line;
        named += isHead ? 1 : 0;
    }
    EXPECT_EQ(named, 2 + 8 + 2);  // In the title, with four tasks each, with a zone each.
}

TEST(Timetable, SaysByHowMuchATargetIsMissed)
{
    // Ready by 15:00 with the same 66 min from 14:00: 6 min too many, which the window's least of 30 min
    // allows 5 of. So there is nothing before 14:00 to take from, and from 13:59 it is 30 min of development.
    const std::string text =
        timetableFrom(utc(3, 14, 13, 59), R"("ready_by": "2026-03-14T15:00", "buffer": 0, )");

    EXPECT_THAT(text, HasSubstr("Off target by 5 zone-minutes in all: Root 5 min short."));
    EXPECT_THAT(text, HasSubstr("30 min  30 min to 45 min, target 35 min  5 min short"));
}

TEST(Timetable, ShowsDatesAcrossMidnight)
{
    EXPECT_THAT(timetableFrom(utc(3, 14, 23, 30)), HasSubstr("Sun 15 Mar 00:13  Sun 15 Mar 00:14"));
    EXPECT_THAT(timetableFrom(utc(3, 14, 14, 0)), Not(HasSubstr("Mar 14")));
}

TEST(Timetable, KeepsItsDevelopmentAcrossAClockChange)
{
    // Clocks go back on 25 October 2026 at 01:00 UTC, 02:00 in London. From 00:20 UTC, 01:20 by the clock:
    // application ends at 00:45 UTC, water 35 min later at 01:20 UTC, which is 01:20 by the clock again.
    const std::string text = timetableFrom(utc(10, 25, 0, 20));

    EXPECT_THAT(text, HasSubstr("Sun 25 Oct 01:45 +01:00"));
    EXPECT_THAT(text, HasSubstr("Sun 25 Oct 01:20 +00:00"));
    EXPECT_THAT(text, HasSubstr("35 min  30 min to 45 min"));
    EXPECT_THAT(text, HasSubstr("The clocks change while this lasts"));
}

TEST(PlanWords, NameWhatCannotHoldTogether)
{
    core::stagger::NoPlan none;
    none.text = std::string{"These cannot all hold together."};
    none.demands = {{std::nullopt, std::string{"Root: at least 30 min development"}},
                    {std::nullopt, std::string{"Ready by 15:00"}}};
    none.minimal = true;

    EXPECT_EQ(noPlanText(none),
              "These cannot all hold together.\n"
              "  - Root: at least 30 min development\n"
              "  - Ready by 15:00\n"
              "Without any one of these the others can hold together.\n");
}

TEST(PlanWords, CountOrNameTheLooksThatDoNotFallDue)
{
    const core::measure::UtcOnly zones;
    auto service = samples::service(samples::oneZone("", "UTC"), zones);
    auto& looks = *service.coats[0].zones[0].looks;
    looks.every = core::measure::Seconds{600};
    looks.until = core::measure::Seconds{3000};  // At 20, 30 and 40 min, and water comes at 35.
    const auto plan = samples::planOf(service, utc(3, 14, 14, 0));

    EXPECT_THAT(remarks({service}, plan, Remarks::Counted),
                testing::ElementsAre("One look does not fall due."));
    EXPECT_THAT(remarks({service}, plan, Remarks::EveryLook),
                testing::ElementsAre("Look at Root (3rd) does not fall due."));
}

}  // namespace
}  // namespace app::output
