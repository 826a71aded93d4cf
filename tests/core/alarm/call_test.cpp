#include "core/alarm/call.h"

#include "core/alarm/words.h"
#include "tests/core/run/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace core::alarm {
namespace {

using namespace run;
using testing::ElementsAre;

Alarm alarmOf(Kind kind, Subject subject, const TaskId& task, Instant since, int insistence = 0)
{
    return {.kind = kind,
            .subject = subject,
            .task = task,
            .asks = subject == Subject::Look ? Prompt::Asks::Look : Prompt::Asks::Start,
            .since = since,
            .every = Seconds{20},
            .insistence = insistence};
}

std::vector<TaskId> tasksOf(const Call& call)
{
    std::vector<TaskId> tasks;
    for (const Alarm& alarm : call.alarms)
        tasks.push_back(alarm.task);
    return tasks;
}

TEST(Calls, WhatBeginsWithinAMinuteIsOneInOrderOfHarm)
{
    const auto calls = callsOf({alarmOf(Kind::Due, Subject::Task, apply(1), clockAt(30)),
                                alarmOf(Kind::Due, Subject::Look, look(2), clockAt(30, 40)),
                                alarmOf(Kind::Due, Subject::Water, task(TaskKind::Rinse), clockAt(31))},
                               Manners{});
    ASSERT_EQ(calls.size(), 1U);
    EXPECT_THAT(tasksOf(calls[0]), ElementsAre(task(TaskKind::Rinse), look(2), apply(1)));
}

TEST(Calls, WhatBeginsLaterIsAnother)
{
    const auto calls = callsOf({alarmOf(Kind::Due, Subject::Look, look(0), clockAt(30)),
                                alarmOf(Kind::Due, Subject::Look, look(1), clockAt(31, 1))},
                               Manners{});
    ASSERT_EQ(calls.size(), 2U);
    EXPECT_THAT(tasksOf(calls[0]), ElementsAre(look(0)));
}

TEST(Calls, ALimitIsNeverHiddenAmongLesserThings)
{
    const auto calls = callsOf({alarmOf(Kind::LimitPassed, Subject::Water, apply(1), clockAt(30)),
                                alarmOf(Kind::LimitPassed, Subject::Water, apply(0), clockAt(30, 5)),
                                alarmOf(Kind::LimitNear, Subject::Water, apply(2), clockAt(30)),
                                alarmOf(Kind::Due, Subject::Water, task(TaskKind::Rinse), clockAt(30)),
                                alarmOf(Kind::GetReady, Subject::Look, look(2), clockAt(30))},
                               Manners{});
    ASSERT_EQ(calls.size(), 4U);
    EXPECT_THAT(tasksOf(calls[0]), ElementsAre(apply(1), apply(0)));
    EXPECT_THAT(tasksOf(calls[1]), ElementsAre(apply(2)));
    for (const Call& call : calls)
        for (const Alarm& alarm : call.alarms)
            EXPECT_EQ(alarm.kind, call.lead().kind);
}

TEST(Calls, SoundAsTheFirstAndAsLoudAsTheOneThatWaitedLongest)
{
    const Call call{{alarmOf(Kind::Due, Subject::Water, task(TaskKind::Rinse), clockAt(31)),
                     alarmOf(Kind::Due, Subject::Look, look(0), clockAt(30), 2)}};
    EXPECT_EQ(call.lead().subject, Subject::Water);
    EXPECT_EQ(call.lead().since, clockAt(30));
    EXPECT_EQ(call.lead().insistence, 2);
}

// Every alarm is in one call, whatever stands.
TEST(Calls, LoseNoAlarm)
{
    Teller teller = twoLooks();
    for (Instant now = clockAt(21); now < clockAt(70); now += Seconds{7}) {
        const auto alarms = alarmsAt(teller.at(now), Manners{}, now);
        std::vector<Alarm> called;
        for (const Call& call : callsOf(alarms, Manners{}))
            called.insert(called.end(), call.alarms.begin(), call.alarms.end());
        EXPECT_THAT(called, testing::UnorderedElementsAreArray(alarms));
    }
}

TEST(Calls, AreSaidInOneSentence)
{
    Teller teller{wig()};
    const State state = teller.at(clockAt(0));
    const Call call{{alarmOf(Kind::Due, Subject::Water, task(TaskKind::Rinse), clockAt(0)),
                     alarmOf(Kind::Due, Subject::Look, look(1), clockAt(0)),
                     alarmOf(Kind::Due, Subject::Look, look(2), clockAt(0)),
                     alarmOf(Kind::Due, Subject::Task, apply(0), clockAt(0))}};
    EXPECT_EQ(callText({wig()}, state, call),
              "Water on: Root, Mids, Ends; Mids, Ends: look now; Apply Root now");
}

// Two notices that would follow each other within a minute are one; what is due keeps its moment.
TEST(Calls, NoticesComeTogether)
{
    Service service = wig();
    service.coats[0].zones[1].looks = service.coats[0].zones[2].looks;
    service.coats[0].zones[1].looks->first = minutes(13);  // Mids: 16 + 13 = 29; Ends: 21 + 8 = 29.
    service.coats[0].zones[1].looks->tolerance = Seconds{0};
    service.coats[0].zones[1].looks->until = minutes(14);
    service.coats[0].zones[2].looks->first = minutes(8) + Seconds{30};
    service.coats[0].zones[2].looks->tolerance = Seconds{0};
    Teller teller{service};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    EXPECT_TRUE(alarmsAt(teller.at(clockAt(26, 59)), Manners{}, clockAt(26, 59)).empty());
    EXPECT_EQ(
        callsOf(alarmsAt(teller.at(clockAt(27)), Manners{}, clockAt(27)), Manners{}).at(0).alarms.size(), 2U);
    const auto due = callsOf(alarmsAt(teller.at(clockAt(29, 29)), Manners{}, clockAt(29, 29)), Manners{});
    EXPECT_THAT(tasksOf(due.at(0)), ElementsAre(look(1)));
    EXPECT_EQ(due.at(0).lead().kind, Kind::Due);
}

}  // namespace
}  // namespace core::alarm
