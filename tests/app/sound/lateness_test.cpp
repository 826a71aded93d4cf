#include "app/session/session.h"
#include "app/sound/alarm_player.h"
#include "tests/app/sound/capture/load.h"
#include "tests/app/sound/capture/private_sound.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>

// From the second of the clock at which an alarm is to sound, through a run of sixteen lanes that is planned
// again meanwhile, to its first sample in the recording of a loudspeaker, while every processor is kept busy.

namespace app::sound {
namespace {

using capture::Clock;
using capture::waitUntil;
using core::alarm::Kind;
using core::measure::Seconds;
using core::run::Answer;
using core::stagger::TaskId;
using core::stagger::TaskKind;
using namespace std::chrono_literals;

constexpr std::size_t lanes = 16;

/// What is asked for is 1,000; less is for trying it.
std::size_t alarmsWanted()
{
    const char* wanted = std::getenv("BASINBELL_ALARMS");
    return wanted ? std::strtoul(wanted, nullptr, 10) : 1000;
}

core::service::Service sixteenZones()
{
    core::service::Coat coat;
    coat.bowls.resize(1);
    coat.groups.resize(1);
    coat.groups[0].rinse = 4min;
    for (std::size_t zone = 0; zone < lanes; ++zone) {
        core::service::Zone made;
        made.name = "Zone " + std::to_string(zone + 1);
        made.apply = {1min, 1min, 1min};
        made.develop = {40min, 90min, 300min};
        if (zone > 0)
            made.after.push_back({.zone = zone - 1, .longestGap = {}});
        if (zone == 0)
            made.looks = core::service::Looks{
                .first = 5min, .every = {}, .length = 1min, .tolerance = 2min, .until = 6min};
        coat.zones.push_back(made);
    }
    core::service::Service service;
    service.name = "Sixteen lanes";
    service.crew.hands.resize(1);
    service.coats = {coat};
    return service;
}

/// A run of which every lane develops and a look is due that nobody answers, sounding each second.
class SixteenLanes {
public:
    SixteenLanes()
        : m_session{eachSecond()}
    {
        m_session.begin({sixteenZones()}, core::stagger::Preference::EndEarly);
        for (std::size_t zone = 0; zone < lanes; ++zone)
            for (const auto kind : {Answer::Kind::Start, Answer::Kind::Finish}) {
                Answer answer;
                answer.kind = kind;
                answer.task = TaskId{.kind = TaskKind::Apply, .item = zone};
                const auto left = static_cast<std::int64_t>(lanes - zone);
                answer.ago = Seconds{20 * left + (kind == Answer::Kind::Start ? 20 : 0)};
                EXPECT_FALSE(m_session.answer(answer));
            }
    }
    session::Session& session() { return m_session; }

private:
    static session::Session::Parts eachSecond()
    {
        session::Session::Parts parts;
        parts.manners.repeatDue = Seconds{1};
        parts.manners.growEvery = Seconds{0};
        return parts;
    }

    session::Session m_session;
};

/// When the second began in which the call was made.
Clock::time_point secondBefore(Clock::time_point moment)
{
    const auto wall = std::chrono::system_clock::now().time_since_epoch();
    return moment - std::chrono::duration_cast<Clock::duration>(wall - std::chrono::floor<Seconds>(wall));
}

struct Lateness {
    std::vector<double> milliseconds;
    std::size_t missing = 0;
};

/// Each sound against the moment at which it was to begin; what has none within half a second is missing.
Lateness latenessOf(const std::vector<double>& wanted, const std::vector<capture::Heard>& heard)
{
    Lateness lateness;
    for (const double moment : wanted) {
        const auto found = std::ranges::find_if(heard, [moment](const capture::Heard& sound) {
            return sound.at >= moment - 0.02 && sound.at < moment + 0.5;
        });
        if (found == heard.end())
            ++lateness.missing;
        else
            lateness.milliseconds.push_back((found->at - moment) * 1000);
    }
    std::ranges::sort(lateness.milliseconds);
    return lateness;
}

TEST(Lateness, IsAtMostAHundredAndFiftyMillisecondsWithSixteenLanesAndBusyProcessors)
{
    capture::PrivateSound sound;
    ASSERT_TRUE(sound.startServer());
    AlarmPlayer player{QStringLiteral(PROGRAM_DIR "/basinbell-sound")};
    player.keepReady(true);
    ASSERT_TRUE(waitUntil([&] { return player.health() == Health::Working; }, 5s));
    capture::Recording recording;
    ASSERT_TRUE(recording.begun());

    SixteenLanes run;
    const capture::Load load;
    const std::size_t count = alarmsWanted();
    std::vector<Clock::time_point> called;
    QObject::connect(&run.session(), &session::Session::called, &player, [&](const core::alarm::Call& call) {
        if (call.lead().kind != Kind::Due || called.size() == count)
            return;
        called.push_back(secondBefore(Clock::now()));
        player.sound(call);
    });
    ASSERT_TRUE(waitUntil([&] { return called.size() == count; }, std::chrono::seconds{300 + 2 * count}));
    capture::waitFor(2s);
    ASSERT_EQ(run.session().state().lanes.size(), lanes);
    // A second in which nothing was called was called for too late by more than a second.
    const auto lasted = std::chrono::round<std::chrono::seconds>(called.back() - called.front());
    const auto skipped = static_cast<std::size_t>(lasted.count()) + 1 - called.size();

    const auto heard = recording.end();
    std::vector<double> wanted;
    for (const auto moment : called)
        wanted.push_back(recording.at(moment));
    const Lateness late = latenessOf(wanted, heard);
    ASSERT_FALSE(late.milliseconds.empty());
    const auto at = [&](std::size_t of1000) {
        return late.milliseconds[(late.milliseconds.size() - 1) * of1000 / 1000];
    };
    std::printf("%zu alarms with %zu lanes and %d busy processes: %zu missing, %zu seconds without a call; "
                "late by, ms: median %.0f, 95 of 100 within %.0f, 99 of 100 within %.0f, most %.0f\n",
                called.size(), lanes, capture::Load::processes(), late.missing, skipped, at(500), at(950),
                at(990), at(1000));
    EXPECT_EQ(late.missing, 0U);
    EXPECT_EQ(skipped, 0U);
    EXPECT_LE(at(990), 150);
}

}  // namespace
}  // namespace app::sound
