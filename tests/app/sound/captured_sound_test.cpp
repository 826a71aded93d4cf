#include "app/sound/alarm_player.h"
#include "core/alarm/pattern.h"
#include "tests/app/sound/capture/private_sound.h"

#include <gtest/gtest.h>

#include <signal.h>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <random>
#include <string>

#include <unistd.h>

// What really comes out of a sound device, recorded and searched for the patterns.

namespace app::sound {
namespace {

using capture::Clock;
using capture::PrivateSound;
using capture::Recording;
using capture::waitFor;
using capture::waitUntil;
using core::alarm::Alarm;
using core::alarm::Kind;
using core::alarm::Subject;
using namespace std::chrono_literals;

/// The promise: sound is back this soon after there is something to play on.
constexpr auto backWithin = 5s;

Alarm alarmOf(Kind kind, Subject subject, int insistence = 0)
{
    Alarm alarm;
    alarm.kind = kind;
    alarm.subject = subject;
    alarm.insistence = insistence;
    return alarm;
}

std::chrono::milliseconds lengthOf(const Alarm& alarm)
{
    const auto samples =
        core::alarm::patternSamples(core::alarm::signalOf(alarm), alarm.insistence, capture::rate);
    return std::chrono::milliseconds{samples.size() * 1000 / capture::rate};
}

std::string textOf(const Alarm& alarm)
{
    return lineOf(Play{0, core::alarm::signalOf(alarm), alarm.insistence});
}

std::vector<std::string> textsOf(const std::vector<capture::Heard>& heard)
{
    std::vector<std::string> texts;
    for (const capture::Heard& alarm : heard)
        texts.push_back(lineOf(Play{0, {alarm.kind, alarm.subject, alarm.voice}, alarm.insistence}));
    return texts;
}

class CapturedSound : public testing::Test {
protected:
    static QString program() { return QStringLiteral(PROGRAM_DIR "/basinbell-sound"); }

    bool isHealth(const AlarmPlayer& player, Health health, std::chrono::milliseconds most)
    {
        return waitUntil([&] { return player.health() == health; }, most);
    }

    PrivateSound m_sound;
};

double secondsOfProcessor(qint64 process)
{
    std::ifstream file{"/proc/" + std::to_string(process) + "/stat"};
    std::string word;
    for (int i = 1; i < 14; ++i)
        file >> word;
    double user = 0;
    double system = 0;
    file >> user >> system;
    return (user + system) / static_cast<double>(::sysconf(_SC_CLK_TCK));
}

std::vector<Alarm> everyAlarm()
{
    std::vector<Alarm> alarms;
    for (const Kind kind : {Kind::GetReady, Kind::Due, Kind::LimitNear, Kind::LimitPassed})
        for (const Subject subject : {Subject::Task, Subject::Look, Subject::Water})
            for (const int insistence : {0, core::alarm::mostInsistence})
                alarms.push_back(alarmOf(kind, subject, insistence));
    for (int voice = 1; voice < core::alarm::voices; ++voice) {
        alarms.push_back(alarmOf(Kind::Due, Subject::Look));
        alarms.back().voice = voice;
    }
    return alarms;
}

/// Plays them one after another and gives those that were not found, all others having been found in their
/// order.
std::vector<Alarm> thoseNotHeard(AlarmPlayer& player, const std::vector<Alarm>& alarms)
{
    Recording recording;
    EXPECT_TRUE(recording.begun());
    for (const Alarm& alarm : alarms) {
        player.sound(alarm);
        waitFor(lengthOf(alarm) + 250ms);
    }
    waitFor(250ms);
    const auto heard = textsOf(recording.end(core::alarm::voices));
    std::vector<Alarm> missing;
    auto next = heard.begin();
    for (const Alarm& alarm : alarms)
        if (next != heard.end() && *next == textOf(alarm))
            ++next;
        else
            missing.push_back(alarm);
    EXPECT_EQ(next, heard.end()) << "heard without having been played, or out of order: " << *next;
    return missing;
}

// A computer that is busy with other things makes a sound stutter now and then, a player of the sound
// server's own no less; a person hears such an alarm, the finder does not know it. So what was not found is
// played again.
TEST_F(CapturedSound, HoldsEveryAlarmInItsOrder)
{
    ASSERT_TRUE(m_sound.startServer());
    AlarmPlayer player{program()};
    player.keepReady(true);
    ASSERT_TRUE(isHealth(player, Health::Working, 5s));

    const auto all = everyAlarm();
    auto missing = thoseNotHeard(player, all);
    std::printf("of %zu alarms %zu came out without a stutter\n", all.size(), all.size() - missing.size());
    EXPECT_LE(missing.size(), all.size() / 4);
    for (int again = 0; again < 3 && !missing.empty(); ++again)
        missing = thoseNotHeard(player, missing);
    for (const Alarm& alarm : missing)
        ADD_FAILURE() << "never found: " << textOf(alarm);
}

/// How late each order was heard, in milliseconds; what stuttered is left out.
std::vector<double> latenessOf(const std::vector<double>& ordered, const std::vector<capture::Heard>& heard)
{
    std::vector<double> late;
    for (const capture::Heard& alarm : heard) {
        const auto after = std::ranges::upper_bound(ordered, alarm.at + 0.02);  // The clock is good to 10 ms.
        if (after != ordered.begin())
            late.push_back((alarm.at - *std::prev(after)) * 1000);
    }
    std::ranges::sort(late);
    return late;
}

TEST_F(CapturedSound, IsNeverLateByAQuarterOfASecond)
{
    ASSERT_TRUE(m_sound.startServer());
    Recording recording;
    ASSERT_TRUE(recording.begun());
    AlarmPlayer player{program()};
    player.keepReady(true);
    ASSERT_TRUE(isHealth(player, Health::Working, 5s));

    const Alarm alarm = alarmOf(Kind::GetReady, Subject::Task);
    std::mt19937 random{7};
    std::vector<Clock::time_point> moments;
    for (int i = 0; i < 50; ++i) {
        moments.push_back(Clock::now());
        player.sound(alarm);
        waitFor(lengthOf(alarm) + std::chrono::milliseconds{300 + random() % 100});
    }
    const auto heard = recording.end();
    std::vector<double> ordered;
    for (const auto moment : moments)
        ordered.push_back(recording.at(moment));
    const auto late = latenessOf(ordered, heard);
    ASSERT_GE(late.size(), 38U);
    ASSERT_LE(late.size(), 50U);
    std::printf(
        "alarm lateness over %zu alarms, ms: least %.0f, median %.0f, 95 of 100 within %.0f, most %.0f\n",
        late.size(), late.front(), late[late.size() / 2], late[late.size() * 95 / 100], late.back());
    EXPECT_LT(late.back(), 250);
}

TEST_F(CapturedSound, ReturnsWithTheDeviceAndMakesUpForWhatStillStands)
{
    ASSERT_TRUE(m_sound.startServer());
    AlarmPlayer player{program()};
    player.keepReady(true);
    ASSERT_TRUE(isHealth(player, Health::Working, 5s));

    m_sound.removeDevice();
    ASSERT_TRUE(isHealth(player, Health::NoDevice, 2s));
    EXPECT_FALSE(player.healthText().isEmpty());
    const Alarm standing = alarmOf(Kind::Due, Subject::Look, 1);
    const Alarm answered = alarmOf(Kind::LimitPassed, Subject::Water);
    player.setStanding({standing, answered});
    player.sound(answered);
    player.sound(standing);
    player.sound(standing);
    player.setStanding({standing});
    waitFor(4s);

    ASSERT_TRUE(m_sound.addDevice());
    Recording recording;
    ASSERT_TRUE(recording.begun());
    ASSERT_TRUE(isHealth(player, Health::Working, backWithin));
    EXPECT_TRUE(player.healthText().isEmpty());
    waitFor(lengthOf(standing) + 1s);
    EXPECT_EQ(textsOf(recording.end()), std::vector{textOf(standing)});
}

// At moments that fall differently into the rests of a sink on which nothing sounds.
TEST_F(CapturedSound, NoticesADeviceThatTakesNoSound)
{
    ASSERT_TRUE(m_sound.startServer());
    AlarmPlayer player{program()};
    player.keepReady(true);
    for (const auto rest : {1000ms, 1300ms, 1600ms}) {
        ASSERT_TRUE(isHealth(player, Health::Working, backWithin));
        waitFor(rest);
        ASSERT_TRUE(m_sound.holdDevice());
        const auto held = Clock::now();
        ASSERT_TRUE(isHealth(player, Health::Stalled, 2s));
        std::printf("a device that takes no sound: known after %.0f ms\n",
                    std::chrono::duration<double, std::milli>(Clock::now() - held).count());
        EXPECT_FALSE(player.healthText().isEmpty());
        ASSERT_TRUE(m_sound.letDeviceGoOn());
    }

    ASSERT_TRUE(isHealth(player, Health::Working, backWithin));
    const Alarm alarm = alarmOf(Kind::Due, Subject::Look);
    player.setStanding({alarm});
    waitFor(1s);
    ASSERT_TRUE(m_sound.holdDevice());
    player.sound(alarm);  // Before anybody knows.
    ASSERT_TRUE(isHealth(player, Health::Stalled, 2s));
    Recording recording;
    ASSERT_TRUE(m_sound.letDeviceGoOn());
    ASSERT_TRUE(isHealth(player, Health::Working, backWithin));
    waitFor(lengthOf(alarm) + 1s);
    EXPECT_EQ(textsOf(recording.end()), std::vector{textOf(alarm)});
}

TEST_F(CapturedSound, ReturnsWithTheServer)
{
    ASSERT_TRUE(m_sound.startServer());
    AlarmPlayer player{program()};
    player.keepReady(true);
    ASSERT_TRUE(isHealth(player, Health::Working, 5s));

    const Alarm alarm = alarmOf(Kind::LimitNear, Subject::Task);
    player.setStanding({alarm});
    player.sound(alarm);
    m_sound.killServer();  // Before it has sounded.
    ASSERT_TRUE(isHealth(player, Health::NoDevice, 3s));
    waitFor(1s);

    ASSERT_TRUE(m_sound.startServer());
    Recording recording;
    ASSERT_TRUE(recording.begun());
    ASSERT_TRUE(isHealth(player, Health::Working, backWithin));
    waitFor(lengthOf(alarm) + 1s);
    EXPECT_EQ(textsOf(recording.end()), std::vector{textOf(alarm)});
}

TEST_F(CapturedSound, IsKnownToBeMissingAndFindsAServerThatStartsLater)
{
    const auto began = Clock::now();
    AlarmPlayer player{program()};
    player.keepReady(true);
    ASSERT_TRUE(isHealth(player, Health::NoDevice, 2s));
    std::printf("no sound server: known after %.0f ms\n",
                std::chrono::duration<double, std::milli>(Clock::now() - began).count());
    const Alarm alarm = alarmOf(Kind::Due, Subject::Water);
    player.setStanding({alarm});
    player.sound(alarm);
    waitFor(7s);
    EXPECT_EQ(player.health(), Health::NoDevice);

    ASSERT_TRUE(m_sound.startServer());
    const auto returned = Clock::now();
    Recording recording;
    ASSERT_TRUE(recording.begun());
    ASSERT_TRUE(isHealth(player, Health::Working, backWithin));
    std::printf("sound server started later: playing after %.0f ms\n",
                std::chrono::duration<double, std::milli>(Clock::now() - returned).count());
    waitFor(lengthOf(alarm) + 1s);
    EXPECT_EQ(textsOf(recording.end()), std::vector{textOf(alarm)});
}

TEST_F(CapturedSound, SurvivesTheEndOfTheSoundProgram)
{
    ASSERT_TRUE(m_sound.startServer());
    Recording recording;
    ASSERT_TRUE(recording.begun());
    AlarmPlayer player{program()};
    player.keepReady(true);
    ASSERT_TRUE(isHealth(player, Health::Working, 5s));

    const Alarm alarm = alarmOf(Kind::LimitPassed, Subject::Look, 2);
    player.setStanding({alarm});
    const auto killed = player.soundProcess();
    player.sound(alarm);
    ASSERT_EQ(::kill(static_cast<pid_t>(killed), SIGKILL), 0);
    ASSERT_TRUE(isHealth(player, Health::NoDevice, 2s));
    ASSERT_TRUE(isHealth(player, Health::Working, backWithin));
    EXPECT_NE(player.soundProcess(), killed);
    waitFor(lengthOf(alarm) + 1s);
    EXPECT_EQ(textsOf(recording.end()), std::vector{textOf(alarm)});
}

TEST_F(CapturedSound, CostsLittleWhileItWaits)
{
    ASSERT_TRUE(m_sound.startServer());
    AlarmPlayer player{program()};
    for (const bool ready : {true, false}) {
        player.keepReady(ready);
        ASSERT_TRUE(isHealth(player, Health::Working, 5s));
        waitFor(3s);
        const double before = secondsOfProcessor(player.soundProcess());
        const double serverBefore = secondsOfProcessor(m_sound.serverProcess());
        waitFor(15s);
        const double share = (secondsOfProcessor(player.soundProcess()) - before) / 15 * 100;
        const double server = (secondsOfProcessor(m_sound.serverProcess()) - serverBefore) / 15 * 100;
        std::printf("%s: sound program %.2f %% of a core, sound server %.2f %%\n",
                    ready ? "kept ready" : "idle", share, server);
        EXPECT_LT(share, 1.0);  // With room for other work on the same computer.
    }
}

}  // namespace
}  // namespace app::sound
