#include "core/alarm/alarm.h"

#include "tests/core/run/support.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace core::alarm {
namespace {

using namespace run;

const Manners manners;  // Notice 120 s, due again every 20 s, limits every 10 s, louder every 40 s.

Teller allApplied()
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    return teller;
}

std::vector<Alarm> alarmsOf(const Teller& teller, Instant now)
{
    return alarmsAt(teller.at(now), manners, now);
}

const Alarm* find(const std::vector<Alarm>& alarms, Kind kind, const TaskId& task)
{
    const auto found = std::ranges::find_if(
        alarms, [&](const Alarm& alarm) { return alarm.kind == kind && alarm.task == task; });
    return found == alarms.end() ? nullptr : &*found;
}

TEST(Alarms, ALookIsAnnouncedThenDueThenInsisted)
{
    const Teller teller = allApplied();  // Look at Ends at 21 + 8 = 29.
    EXPECT_TRUE(alarmsOf(teller, clockAt(26, 59)).empty());
    const auto ahead = alarmsOf(teller, clockAt(27));
    ASSERT_EQ(ahead.size(), 1u);
    EXPECT_EQ(ahead[0].kind, Kind::GetReady);
    EXPECT_EQ(ahead[0].subject, Subject::Look);
    EXPECT_EQ(ahead[0].every, Seconds{0});
    const auto due = alarmsOf(teller, clockAt(29));
    ASSERT_EQ(due.size(), 1u);
    EXPECT_EQ(due[0].kind, Kind::Due);
    EXPECT_EQ(due[0].since, clockAt(29));
    EXPECT_EQ(due[0].insistence, 0);
    EXPECT_EQ(alarmsOf(teller, clockAt(29, 40))[0].insistence, 1);
    EXPECT_EQ(alarmsOf(teller, clockAt(30, 20))[0].insistence, 2);
    EXPECT_EQ(alarmsOf(teller, clockAt(40))[0].insistence, mostInsistence);
    EXPECT_EQ(alarmsOf(teller, clockAt(40))[0].since, clockAt(29));
}

TEST(Alarms, AnAnswerSilencesIt)
{
    Teller teller = allApplied();
    teller.mustTell(Answer::Kind::Leave, look(2), clockAt(29, 10));
    EXPECT_TRUE(alarmsOf(teller, clockAt(29, 10)).empty());
}

TEST(Alarms, WhatWaitsForSomethingThatRunsIsSilent)
{
    Teller teller{wig()};
    teller.mustTell(Answer::Kind::Start, apply(0), clockAt(0));
    const auto alarms = alarmsOf(teller, clockAt(10));
    ASSERT_EQ(alarms.size(), 1u);
    EXPECT_EQ(alarms[0].task, apply(0));
    EXPECT_EQ(alarms[0].asks, Prompt::Asks::Finish);
    EXPECT_EQ(alarms[0].kind, Kind::Due);
}

TEST(Alarms, AnApplicationThatMayTakeLongerIsAskedForSoftlyAtFirst)
{
    Service service = wig();
    service.coats[0].zones[0].apply.slowest = minutes(14);
    Teller teller{service};
    teller.mustTell(Answer::Kind::Start, apply(0), clockAt(0));
    EXPECT_EQ(alarmsOf(teller, clockAt(11)).at(0).kind, Kind::GetReady);
    EXPECT_EQ(alarmsOf(teller, clockAt(14)).at(0).kind, Kind::Due);
    EXPECT_EQ(alarmsOf(teller, clockAt(14)).at(0).insistence, 0);
}

// Water is due at 45; Mids' limit is 16 + 35 = 51, Ends' 51 too, Root's 55.
TEST(Alarms, WaterThatIsNotTurnedOnBringsTheLimitsNearAndPast)
{
    Teller teller = allApplied();
    teller.mustTell(Answer::Kind::Leave, look(2), clockAt(29));
    EXPECT_EQ(alarmsOf(teller, clockAt(48)).size(), 1u);
    const auto near = alarmsOf(teller, clockAt(49));
    ASSERT_EQ(near.size(), 3u);
    EXPECT_EQ(near[0].kind, Kind::LimitNear);
    EXPECT_EQ(near[1].kind, Kind::LimitNear);
    EXPECT_EQ(near[2].kind, Kind::Due);
    const auto passed = alarmsOf(teller, clockAt(51));
    ASSERT_TRUE(find(passed, Kind::LimitPassed, apply(1)));
    EXPECT_EQ(passed[0].kind, Kind::LimitPassed);
    EXPECT_EQ(passed[0].subject, Subject::Water);
    const auto much = alarmsOf(teller, clockAt(600));
    ASSERT_TRUE(find(much, Kind::LimitPassed, apply(0)));
    EXPECT_EQ(find(much, Kind::LimitPassed, apply(1))->since, clockAt(51));
    EXPECT_EQ(find(much, Kind::LimitPassed, apply(1))->insistence, mostInsistence);
    teller.mustTell(Answer::Kind::Start, task(TaskKind::Rinse), clockAt(600));
    EXPECT_TRUE(alarmsOf(teller, clockAt(600)).empty());
}

// Bonafide et al. 2015 (PMC4456276): alarms that ask for nothing make people slow to answer those that do.
TEST(Alarms, ALimitThatWaterIsToMeetInTimeIsNotAnnouncedBesideIt)
{
    Service service = wig();
    service.coats[0].zones[0].develop = window(30, 35, 36);  // Water 45, limit 46.
    Teller teller{service};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    teller.mustTell(Answer::Kind::Leave, look(2), clockAt(29));
    EXPECT_FALSE(find(alarmsOf(teller, clockAt(44, 59)), Kind::LimitNear, apply(0)));
    EXPECT_TRUE(find(alarmsOf(teller, clockAt(45)), Kind::LimitNear, apply(0)));
    EXPECT_TRUE(find(alarmsOf(teller, clockAt(46)), Kind::LimitPassed, apply(0)));
}

// Lanes are told apart by ear: zone by zone, and the second head goes on after the first's three zones.
TEST(Alarms, EachLaneHasItsVoice)
{
    const Teller teller = allApplied();
    EXPECT_EQ(alarmsOf(teller, clockAt(29))[0].voice, 2);  // A look at the third zone.

    State state;
    for (const std::size_t service : {0U, 1U}) {
        for (const std::size_t coat : {0U, 1U})
            for (std::size_t zone = 0; zone < 3 + service; ++zone)
                state.lanes.push_back({.service = service, .coat = coat, .zone = zone});
    }
    const auto voiceOf = [&](const TaskId& task) {
        state.prompts = {{.task = task, .due = clockAt(0), .pressing = clockAt(0)}};
        return alarmsAt(state, manners, clockAt(0)).at(0).voice;
    };
    EXPECT_EQ(voiceOf({.kind = stagger::TaskKind::Apply, .item = 1}), 1);
    EXPECT_EQ(voiceOf({.service = 1, .kind = stagger::TaskKind::Apply, .item = 1}), 4);
    EXPECT_EQ(voiceOf({.service = 1, .coat = 1, .kind = stagger::TaskKind::Look, .item = 1}), 4);
    EXPECT_EQ(voiceOf({.service = 1, .kind = stagger::TaskKind::Late, .item = 3}), 0);  // All six are used.
    EXPECT_EQ(voiceOf({.service = 1, .kind = stagger::TaskKind::Rinse, .item = 2}), 3);
}

TEST(Alarms, NextChangeMissesNothing)
{
    const Teller teller = allApplied();
    // Followed only when it says so, the run sounds as if it were watched every second.
    std::vector<std::pair<Instant, std::vector<Alarm>>> watched;
    for (Instant now = clockAt(22); now <= clockAt(60); now += Seconds{1}) {
        auto alarms = alarmsOf(teller, now);
        if (watched.empty() || watched.back().second != alarms)
            watched.emplace_back(now, std::move(alarms));
    }
    std::vector<std::pair<Instant, std::vector<Alarm>>> woken;
    std::optional<Instant> next = clockAt(22);
    int wakes = 0;
    while (next && *next <= clockAt(60)) {
        const Instant now = *next;
        auto alarms = alarmsOf(teller, now);
        if (woken.empty() || woken.back().second != alarms)
            woken.emplace_back(now, std::move(alarms));
        next = nextChange(teller.at(now), manners, now);
        ASSERT_TRUE(!next || *next > now);
        ++wakes;
    }
    EXPECT_EQ(woken, watched);
    EXPECT_LT(wakes, 400);
}

TEST(Alarms, RepeatsAreWokenFor)
{
    const Teller teller = allApplied();
    EXPECT_EQ(nextChange(teller.at(clockAt(29)), manners, clockAt(29)), clockAt(29, 20));
    EXPECT_EQ(nextChange(teller.at(clockAt(29, 25)), manners, clockAt(29, 25)), clockAt(29, 40));
}

TEST(Alarms, NothingStandsInAFinishedRun)
{
    Teller teller = allApplied();
    teller.tell(Answer{.kind = Answer::Kind::End}, clockAt(22));
    EXPECT_TRUE(alarmsOf(teller, clockAt(90)).empty());
    EXPECT_FALSE(nextChange(teller.at(clockAt(90)), manners, clockAt(90)));
}

}  // namespace
}  // namespace core::alarm
