#include "app/command/alarm_recorder.h"

#include "core/alarm/pattern.h"

#include <gtest/gtest.h>

namespace app::command {
namespace {

using core::alarm::Alarm;
using core::measure::Instant;
using core::measure::Seconds;
using Silence = AlarmRecorder::Silence;

struct Added {
    double at;
    std::size_t samples;
};

class NotedSoundFile final : public SoundFile {
public:
    explicit NotedSoundFile(std::vector<Added>& added)
        : m_added{added}
    {
    }
    [[nodiscard]] int rate() const override { return 8000; }
    void add(double at, std::span<const float> samples) override { m_added.push_back({at, samples.size()}); }
    std::string finish() override { return "the disk was full"; }

private:
    std::vector<Added>& m_added;
};

const Instant start{std::chrono::sys_days{std::chrono::year{2026} / 3 / 14}};

std::vector<double> places(Silence silence, const std::vector<int>& seconds)
{
    std::vector<Added> added;
    AlarmRecorder recorder{std::make_unique<NotedSoundFile>(added), silence};
    recorder.beginAt(start);
    std::vector<double> places;
    for (const int second : seconds)
        places.push_back(recorder.record(Alarm{}, start + Seconds{second}));
    for (std::size_t place = 0; place < added.size(); ++place)
        EXPECT_EQ(added[place].at, places[place]);
    return places;
}

TEST(AlarmRecorder, KeepsTimeWhenItIsReal)
{
    EXPECT_EQ(places(Silence::Kept, {10, 12, 12, 900}), (std::vector{10.0, 12.0, 12.0, 900.0}));
}

TEST(AlarmRecorder, ShortensLongSilencesAndKeepsShortGaps)
{
    EXPECT_EQ(places(Silence::Shortened, {180, 182, 182, 900, 901, 5000}),
              (std::vector{3.0, 5.0, 5.0, 8.0, 9.0, 12.0}));
}

TEST(AlarmRecorder, WritesThePatternOfTheAlarm)
{
    std::vector<Added> added;
    AlarmRecorder recorder{std::make_unique<NotedSoundFile>(added), Silence::Kept};
    Alarm alarm;
    alarm.kind = core::alarm::Kind::LimitPassed;

    recorder.record(alarm, start);

    ASSERT_EQ(added.size(), 1u);
    EXPECT_EQ(added[0].samples, core::alarm::patternSamples(core::alarm::signalOf(alarm), 0, 8000).size());
    EXPECT_EQ(recorder.finish(), "the disk was full");
}

}  // namespace
}  // namespace app::command
