#include "app/session/session.h"

#include "tests/app/session/session_samples.h"

#include <gtest/gtest.h>

#include <set>

namespace app::session {
namespace {

using core::alarm::Alarm;
using core::alarm::Call;
using core::measure::Seconds;
using core::stagger::Preference;
using samples::answerTo;
using samples::HandClock;
using samples::noon;
using samples::Stage;
using samples::twoZones;
using std::chrono_literals::operator""min;
using std::chrono_literals::operator""s;

struct Heard {
    Instant moment;
    Alarm alarm;

    friend bool operator==(const Heard&, const Heard&) = default;
};

/// Begins a run and listens to it.
struct Listener {
    Listener(std::shared_ptr<HandClock> clock)
        : stage{clock}
    {
        QObject::connect(stage.session.get(), &Session::called, stage.session.get(),
                         [this](const Call& call) {
                             heard.push_back({stage.session->state().now, call.lead()});
                         });
        stage.session->begin({twoZones()}, Preference::AsAsked);
    }
    std::vector<Heard> heard;
    Stage stage;
};

void PrintTo(const Heard& heard, std::ostream* out)
{
    *out << (heard.moment - noon()).count() << " s: kind " << static_cast<int>(heard.alarm.kind) << " of "
         << core::stagger::taskIdText(heard.alarm.task) << ", insistence " << heard.alarm.insistence;
}

TEST(Sounding, DoesNotSoundEachSecondWhenThePlanMovesWhatItCountsFrom)
{
    Sounding sounding;
    Alarm alarm;
    alarm.kind = core::alarm::Kind::Due;
    alarm.every = 20s;
    std::vector<int> heardAt;
    for (int second = 0; second < 60; ++second) {
        alarm.since = noon() + Seconds{second};
        if (!sounding.heardAt(noon() + Seconds{second}, {Call{{alarm}}}).empty())
            heardAt.push_back(second);
    }
    EXPECT_EQ(heardAt, (std::vector{0, 20, 40}));
}

TEST(Sounding, IsTheSameHoweverFarTheClockJumpsWhenTimeIsSimulated)
{
    const auto slowClock = std::make_shared<HandClock>(noon());
    Listener slow{slowClock};
    for (int second = 0; second < 1200; ++second) {
        slowClock->forward(1s);
        samples::settleAt(*slow.stage.session, slowClock->now());
    }
    const auto fastClock = std::make_shared<HandClock>(noon());
    Listener fast{fastClock};
    fastClock->forward(1200s);
    samples::settleAt(*fast.stage.session, fastClock->now());

    EXPECT_GT(slow.heard.size(), 10u);
    EXPECT_EQ(fast.heard, slow.heard);
}

TEST(Sounding, RepeatsUntilItIsAnsweredAndIsQuietThen)
{
    const auto clock = std::make_shared<HandClock>(noon());
    Listener listener{clock};
    const auto& session = *listener.stage.session;
    clock->forward(60s);
    samples::settleAt(*listener.stage.session, clock->now());
    const auto first = session.state().prompts.front();

    std::size_t repeats = 0;
    for (const Heard& heard : listener.heard)
        if (heard.alarm.kind == core::alarm::Kind::Due && heard.alarm.task == first.task)
            ++repeats;
    EXPECT_EQ(repeats, 4u) << "at once and every 20 s";

    ASSERT_FALSE(listener.stage.session->answer(answerTo(first)).has_value());
    listener.heard.clear();
    clock->forward(60s);
    samples::settleAt(*listener.stage.session, clock->now());
    for (const Heard& heard : listener.heard)
        EXPECT_FALSE(heard.alarm.kind == core::alarm::Kind::Due && heard.alarm.task == first.task
                     && heard.alarm.asks == first.asks);
}

TEST(Sounding, TellsOnlyWhatStandsAfterTheMachineSlept)
{
    const auto clock = std::make_shared<HandClock>(noon(), false);
    Listener listener{clock};
    listener.heard.clear();

    clock->forward(30min);
    samples::settleAt(*listener.stage.session, clock->now());

    EXPECT_FALSE(listener.heard.empty()) << "what is due must be heard at once";
    for (const Heard& heard : listener.heard)
        EXPECT_EQ(heard.moment, clock->now());
    EXPECT_LE(listener.heard.size(), listener.stage.session->alarms().size());
}

TEST(Sounding, SoundsAgainAtOnceWhenAKilledRunIsTakenUp)
{
    const auto clock = std::make_shared<HandClock>(noon(), false);
    Listener first{clock};
    clock->forward(45s);
    samples::settleAt(*first.stage.session, clock->now());

    Stage second{clock, first.stage.kept};
    std::vector<Call> heard;
    QObject::connect(second.session.get(), &Session::called, second.session.get(),
                     [&](const Call& call) { heard.push_back(call); });
    second.session->resume(*first.stage.session->current());

    EXPECT_EQ(second.session->alarms(), first.stage.session->alarms());
    EXPECT_EQ(heard, second.session->calls());
}

TEST(Sounding, SoundsOnceForAlarmsThatAreOneCallAndAgainWhenAnotherJoinsIt)
{
    Sounding sounding;
    const auto alarmOf = [](std::size_t zone, int since) {
        Alarm alarm;
        alarm.kind = core::alarm::Kind::Due;
        alarm.task.item = zone;
        alarm.since = noon() + Seconds{since};
        alarm.every = 20s;
        return alarm;
    };
    const Alarm first = alarmOf(0, 0);
    const Alarm same = alarmOf(1, 0);
    const Alarm later = alarmOf(2, 30);
    std::vector<int> heardAt;
    for (int second = 0; second <= 60; ++second) {
        Call call{{first, same}};
        if (second >= 30)
            call.alarms.push_back(later);
        if (second >= 45)  // The first is answered: the others go on as they were.
            call.alarms.erase(call.alarms.begin());
        if (!sounding.heardAt(noon() + Seconds{second}, {call}).empty())
            heardAt.push_back(second);
    }
    EXPECT_EQ(heardAt, (std::vector{0, 20, 30, 40, 60}));
}

TEST(Sounding, IsSilentWhileItIsMutedAndThenSoundsAtOnce)
{
    const auto clock = std::make_shared<HandClock>(noon(), false);
    Listener listener{clock};
    Session& session = *listener.stage.session;
    const auto wait = [&](Seconds length) {
        for (Seconds second{0}; second < length; ++second) {
            clock->forward(1s);
            samples::settleAt(session, clock->now());
        }
    };
    wait(30s);
    const std::vector<Alarm> standing = session.alarms();
    ASSERT_FALSE(standing.empty());
    listener.heard.clear();
    EXPECT_TRUE(session.mute(session.calls().front()));
    EXPECT_EQ(session.alarms(), standing) << "what is muted still stands";
    EXPECT_TRUE(session.audible().empty());
    EXPECT_EQ(session.mutedUntil(standing.front()), session.state().now + Seconds{120});
    EXPECT_FALSE(session.mute({standing})) << "it is not muted for longer while it is muted";
    wait(119s);
    for (const Heard& heard : listener.heard)
        EXPECT_NE(heard.alarm.task, standing.front().task);
    wait(1s);
    ASSERT_FALSE(listener.heard.empty());
    EXPECT_EQ(listener.heard.back().alarm.task, standing.front().task);
    EXPECT_EQ(listener.heard.back().moment, clock->now());
    EXPECT_EQ(listener.heard.back().alarm.insistence, core::alarm::mostInsistence);

    session.mute(session.calls().front());
    listener.heard.clear();
    session.unmute({session.alarms()});
    EXPECT_FALSE(listener.heard.empty()) << "what is let sound again sounds at once";
}

// What was silenced by hand is not silent for whoever takes the run up after a crash.
TEST(Sounding, ForgetsWhatWasMutedWhenTheRunIsTakenUp)
{
    const auto clock = std::make_shared<HandClock>(noon(), false);
    Listener first{clock};
    clock->forward(45s);
    samples::settleAt(*first.stage.session, clock->now());
    ASSERT_TRUE(first.stage.session->mute(first.stage.session->calls().front()));

    Stage second{clock, first.stage.kept};
    second.session->resume(*first.stage.session->current());
    EXPECT_EQ(second.session->audible(), second.session->alarms());
    EXPECT_FALSE(second.session->audible().empty());
}

TEST(Sounding, LetsASlotAnswerWhatItHears)
{
    const auto clock = std::make_shared<HandClock>(noon());
    Stage stage{clock};
    int answers = 0;
    QObject::connect(stage.session.get(), &Session::settled, stage.session.get(), [&] {
        const auto& prompts = stage.session->state().prompts;
        if (!prompts.empty() && prompts.front().due <= stage.session->state().now
            && !prompts.front().waitsFor) {
            ++answers;
            const auto due = prompts.front().due;
            ASSERT_FALSE(stage.session->answer(answerTo(prompts.front())).has_value());
            EXPECT_EQ(stage.session->facts().back().happened, due)
                << "an answer in a slot is for the moment told";
        }
    });
    stage.session->begin({twoZones()}, Preference::AsAsked);

    clock->forward(std::chrono::hours{3});
    for (int turns = 0; turns < 1000 && !stage.session->state().finished; ++turns)
        stage.session->wake();

    EXPECT_TRUE(stage.session->state().finished);
    EXPECT_GT(answers, 8);
}

}  // namespace
}  // namespace app::session
