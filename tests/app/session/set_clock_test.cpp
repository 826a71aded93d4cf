#include "app/session/clock.h"

#include "tests/app/session/session_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// What happens to a run while somebody, or something, sets the clock of the machine it runs on. The machine
// is stood in for; sessions, journal and alarms are the real ones.

namespace app::session {
namespace {

using core::measure::Seconds;
using core::stagger::Preference;
using samples::answerTo;
using samples::noon;
using samples::Stage;
using samples::twoZones;
using std::chrono::nanoseconds;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using std::chrono_literals::operator""h;
using std::chrono_literals::operator""min;
using std::chrono_literals::operator""s;
using std::chrono_literals::operator""ms;

/// A machine whose clocks stand where they are put.
struct FakeMachine {
    nanoseconds elapsed{1h};
    nanoseconds wall = noon().time_since_epoch();
    std::string boot = "first";

    void pass(nanoseconds time)
    {
        elapsed += time;
        wall += time;
    }

    [[nodiscard]] std::shared_ptr<SystemClock> clock()
    {
        return std::make_shared<SystemClock>(
            Machine{.elapsed = [this] { return elapsed; }, .wall = [this] { return wall; }, .boot = boot});
    }
};

using Rung = std::vector<std::pair<Instant, core::alarm::Alarm>>;

/// Lets a minute pass, second by second, and writes down what sounds.
void passMinute(FakeMachine& machine, Session& session)
{
    for (int second = 0; second < 60; ++second) {
        machine.pass(1s);
        session.wake();
    }
}

/// Half an hour of a run in which everything is answered half a minute late, and `disturb` happens to the
/// machine at the start of each minute. What sounded, and the state in the end.
struct Played {
    Rung rung;
    core::run::State state;
    std::vector<std::string> warnings;
};

template <class Disturb>
Played play(const Disturb& disturb)
{
    FakeMachine machine;
    Stage stage{machine.clock()};
    Played played;
    QObject::connect(stage.session.get(), &Session::called, [&](const core::alarm::Call& call) {
        played.rung.emplace_back(stage.session->state().now, call.lead());
    });
    stage.session->begin({twoZones()}, Preference::EndEarly);
    for (int minute = 0; minute < 30; ++minute) {
        disturb(machine, minute);
        passMinute(machine, *stage.session);
        const auto& prompts = stage.session->state().prompts;
        if (!prompts.empty() && prompts.front().due + 30s <= stage.session->state().now) {
            EXPECT_FALSE(stage.session->answer(answerTo(prompts.front())).has_value());
        }
    }
    played.state = stage.session->state();
    played.warnings = stage.warnings;
    return played;
}

Played undisturbed()
{
    return play([](FakeMachine&, int) {});
}

void expectSame(const Played& played, const Played& other)
{
    EXPECT_EQ(played.state, other.state);
    EXPECT_EQ(played.rung, other.rung);
    EXPECT_GT(played.rung.size(), 10U);
}

TEST(SetClock, AStepOfThreeHoursEitherWayChangesNoLaneAndNoAlarm)
{
    const Played plain = undisturbed();
    EXPECT_THAT(plain.warnings, IsEmpty());
    for (const auto step : {nanoseconds{3h}, nanoseconds{-3h}}) {
        const Played stepped = play([step](FakeMachine& machine, int minute) {
            if (minute == 7)
                machine.wall += step;
        });
        expectSame(plain, stepped);
        EXPECT_THAT(stepped.warnings, ElementsAre(HasSubstr("The clock of this machine was set")));
    }
}

TEST(SetClock, IsSpokenOfAgainOnceItIsRightAgain)
{
    const Played stepped = play([](FakeMachine& machine, int minute) {
        if (minute == 7)
            machine.wall += 1h;
        if (minute == 9)
            machine.wall -= 1h;
    });
    expectSame(undisturbed(), stepped);
    EXPECT_THAT(stepped.warnings, ElementsAre(HasSubstr("is 1 h ahead"), HasSubstr("agrees")));
}

// A clock that is nudged, as time servers do, is not worth a word.
TEST(SetClock, SmallCorrectionsAreNotSpokenOf)
{
    const Played nudged = play([](FakeMachine& machine, int) { machine.wall += 400ms; });
    expectSame(undisturbed(), nudged);
    EXPECT_THAT(nudged.warnings, IsEmpty());
}

/// A run that was begun ten minutes ago and then killed, and another program that takes it up.
struct TakenUp {
    FakeMachine machine;
    Stage first{machine.clock()};
    RunId run = first.session->begin({twoZones()}, Preference::EndEarly);
    std::unique_ptr<Stage> second;

    TakenUp()
    {
        EXPECT_FALSE(first.session->answer(answerTo(first.session->state().prompts.front())).has_value());
        machine.pass(10min);
    }

    core::run::State resume()
    {
        second = std::make_unique<Stage>(machine.clock(), first.kept);
        EXPECT_EQ(second->session->resume(run), std::nullopt);
        return second->session->state();
    }
};

// The clock was set while no program was there to see it.
TEST(SetClock, ARunThatIsTakenUpInTheSameBootGoesByElapsedTime)
{
    TakenUp plain;
    const core::run::State expected = plain.resume();
    EXPECT_EQ(expected.now, noon() + 10min);
    EXPECT_THAT(plain.second->warnings, IsEmpty());
    for (const auto step : {nanoseconds{3h}, nanoseconds{-3h}}) {
        TakenUp stepped;
        stepped.machine.wall += step;
        EXPECT_EQ(stepped.resume(), expected);
        EXPECT_THAT(stepped.second->warnings, ElementsAre(HasSubstr("is 3 h")));
    }
}

// While it slept the boot clock went on.
TEST(SetClock, AMachineThatSleptIsThatMuchLater)
{
    TakenUp slept;
    slept.machine.pass(25min);
    EXPECT_EQ(slept.resume().now, noon() + 35min);
    EXPECT_THAT(slept.second->warnings, IsEmpty());
}

TEST(SetClock, AfterARebootTheTimeOfDayCountsAndThatIsSaid)
{
    TakenUp started;
    started.machine.boot = "second";
    started.machine.elapsed = 40s;
    started.machine.wall += 5min;
    EXPECT_EQ(started.resume().now, noon() + 15min);
    EXPECT_THAT(started.second->warnings, ElementsAre(HasSubstr("started anew")));
    // From now on the new boot counts.
    started.machine.pass(2min);
    started.machine.wall += 3h;
    EXPECT_EQ(started.resume().now, noon() + 17min);
    EXPECT_THAT(started.second->warnings, ElementsAre(HasSubstr("is 3 h")));
}

TEST(SetClock, AfterARebootWithAClockThatWentBackThatIsSaidToo)
{
    TakenUp started;
    started.machine.boot = "second";
    started.machine.wall = noon().time_since_epoch() - 2h;
    started.resume();
    EXPECT_THAT(started.second->warnings, ElementsAre(HasSubstr("started anew"), HasSubstr("earlier time")));
}

// A program that was started before the clock was put right begins its runs by the clock as it is.
TEST(SetClock, ANewRunGoesByTheClockAsItIs)
{
    FakeMachine machine;
    Stage stage{machine.clock()};
    machine.wall += 26h;
    stage.session->begin({twoZones()}, Preference::EndEarly);
    EXPECT_EQ(stage.session->state().now, noon() + 26h);
}

// Midnight, and the hour at which clocks are changed, are seconds like others: instants know neither.
TEST(SetClock, MidnightAndTheChangeOfClocksAreSecondsLikeOthers)
{
    const auto at = [](Instant start) {
        FakeMachine machine;
        machine.wall = start.time_since_epoch();
        Stage stage{machine.clock()};
        stage.session->begin({twoZones()}, Preference::EndEarly);
        std::vector<Seconds> rung;
        QObject::connect(stage.session.get(), &Session::called, [&](const core::alarm::Call&) {
            rung.push_back(stage.session->state().now - start);
        });
        for (int minute = 0; minute < 20; ++minute)
            passMinute(machine, *stage.session);
        return rung;
    };
    using namespace std::chrono;
    const auto plain = at(sys_days{2026y / 3 / 14} + 12h);
    EXPECT_GT(plain.size(), 10U);
    EXPECT_EQ(at(sys_days{2026y / 3 / 15} - 5min), plain);
    // Summer time begins in the European Union on 29 March 2026 at 01:00 UTC and ends on 25 October
    // (Directive 2000/84/EC).
    EXPECT_EQ(at(sys_days{2026y / 3 / 29} + 55min), plain);
    EXPECT_EQ(at(sys_days{2026y / 10 / 25} + 55min), plain);
}

}  // namespace
}  // namespace app::session
