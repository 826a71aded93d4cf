#include "tests/app/sound/capture/heard.h"

#include "core/alarm/pattern.h"
#include "tests/app/sound/capture/correlation.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

// The finder of alarms is itself checked: on recordings made here, whose alarms are known.

namespace capture {
namespace {

using core::alarm::Kind;
using core::alarm::Subject;

std::vector<float> noise(double seconds, float level)
{
    std::mt19937 random{3};
    std::normal_distribution<float> sample{0, level};
    std::vector<float> samples(static_cast<std::size_t>(seconds * rate));
    for (float& one : samples)
        one = sample(random);
    return samples;
}

void lay(std::vector<float>& recording, double at, const core::alarm::Signal& signal, int insistence,
         float level = 1)
{
    const auto pattern = core::alarm::patternSamples(signal, insistence, rate);
    const auto begin = static_cast<std::size_t>(std::lround(at * rate));
    for (std::size_t i = 0; i < pattern.size() && begin + i < recording.size(); ++i)
        recording[begin + i] += level * pattern[i];
}

// By hand: 1,2 laid on 0 1 2 3 gives 0*1+1*2, 1*1+2*2, 2*1+3*2, and 3*1 past the end.
TEST(Correlation, SumsTheProductsAtEachPlace)
{
    const auto sums = correlation(std::vector<float>{0, 1, 2, 3}, std::vector<float>{1, 2});
    ASSERT_EQ(sums.size(), 4U);
    const float wanted[] = {2, 5, 8, 3};
    for (std::size_t i = 0; i < 4; ++i)
        EXPECT_NEAR(sums[i], wanted[i], 1e-4);
}

TEST(Correlation, IsTheSameAcrossItsPieces)
{
    const auto signal = noise(0.5, 0.5F);
    const std::vector<float> shape(signal.begin() + 100, signal.begin() + 1100);
    const auto sums = correlation(signal, shape);
    for (const std::size_t at : {0U, 100U, 3096U, 3097U, 3098U, 6193U, 6194U, 23'500U}) {
        double direct = 0;
        for (std::size_t i = 0; i < shape.size() && at + i < signal.size(); ++i)
            direct += static_cast<double>(signal[at + i]) * static_cast<double>(shape[i]);
        EXPECT_NEAR(sums[at], direct, 0.05) << at;
    }
}

TEST(AlarmsIn, FindsNoneInSilenceOrNoise)
{
    EXPECT_TRUE(alarmsIn(std::vector<float>(rate)).empty());
    EXPECT_TRUE(alarmsIn(noise(3, 0.1F)).empty());
}

TEST(AlarmsIn, FindsEachAtItsTimeInNoise)
{
    for (const Kind kind : {Kind::GetReady, Kind::Due, Kind::LimitNear, Kind::LimitPassed})
        for (const Subject subject : {Subject::Task, Subject::Look, Subject::Water}) {
            auto recording = noise(6, 0.01F);
            lay(recording, 0.5123, {kind, subject}, 2);
            const auto heard = alarmsIn(recording);
            ASSERT_EQ(heard.size(), 1U);
            EXPECT_EQ(heard[0].kind, kind);
            EXPECT_EQ(heard[0].subject, subject);
            EXPECT_EQ(heard[0].insistence, 2);
            EXPECT_NEAR(heard[0].at, 0.5123, 0.001);
            EXPECT_GT(heard[0].likeness, 0.95);
        }
}

TEST(AlarmsIn, FindsTwoThatOverlap)
{
    std::vector<float> recording(8 * rate);
    lay(recording, 1.0, {Kind::LimitPassed, Subject::Look}, 1);
    lay(recording, 1.35, {Kind::Due, Subject::Water}, 1);
    const auto heard = alarmsIn(recording);
    ASSERT_EQ(heard.size(), 2U);
    EXPECT_EQ(heard[0].kind, Kind::LimitPassed);
    EXPECT_EQ(heard[1].kind, Kind::Due);
    EXPECT_EQ(heard[1].subject, Subject::Water);
    EXPECT_NEAR(heard[1].at, 1.35, 0.001);
}

// A finder that took anything that sounds for an alarm would let every test of sound pass.
TEST(AlarmsIn, IsNotTakenInByTheWrongPitchOrAHalfPattern)
{
    std::vector<float> wrong(3 * rate);
    auto pattern =
        core::alarm::patternSamples({Kind::Due, Subject::Look}, 0, rate * 95 / 100);  // 5 % too high.
    std::copy(pattern.begin(), pattern.end(), wrong.begin() + rate);
    EXPECT_TRUE(alarmsIn(wrong).empty());

    std::vector<float> half(3 * rate);
    pattern = core::alarm::patternSamples({Kind::GetReady, Subject::Task}, 0, rate);
    std::copy(pattern.begin(), pattern.begin() + static_cast<std::ptrdiff_t>(pattern.size() / 4),
              half.begin() + rate);
    EXPECT_TRUE(alarmsIn(half).empty());
}

TEST(Heard, TellsVoicesApart)
{
    std::vector<float> recording = noise(12, 0.02F);
    for (int voice = 0; voice < core::alarm::voices; ++voice)
        lay(recording, 1.0 + 1.5 * voice, {Kind::Due, Subject::Look, voice}, 0);
    const auto heard = alarmsIn(recording, core::alarm::voices);
    ASSERT_EQ(heard.size(), static_cast<std::size_t>(core::alarm::voices));
    for (int voice = 0; voice < core::alarm::voices; ++voice)
        EXPECT_EQ(heard[static_cast<std::size_t>(voice)].voice, voice);
}

}  // namespace
}  // namespace capture
