#include "app/sound/limiter.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace app::sound {
namespace {

TEST(Limiter, LeavesOneSoundAloneAsItIs)
{
    for (float sample = -untouched; sample <= untouched; sample += 0.01F)
        EXPECT_EQ(softLimited(sample), sample);
}

TEST(Limiter, KeepsAnySumWithinFullScale)
{
    for (float sum = -50; sum <= 50; sum += 0.25F)
        EXPECT_LE(std::abs(softLimited(sum)), 1.0F) << sum;
}

// Were a louder sum to come out quieter, or the curve to have a corner, an alarm on top of another would
// rattle.
TEST(Limiter, RisesWithoutAStepOrACorner)
{
    const float step = 0.001F;
    float slopeBefore = 1;
    for (float sum = 0; sum < 2; sum += step) {
        const float slope = (softLimited(sum + step) - softLimited(sum)) / step;
        EXPECT_GE(slope, 0) << sum;
        EXPECT_LE(slope, 1.001F) << sum;
        EXPECT_NEAR(slope, slopeBefore, 0.02F) << sum;
        slopeBefore = slope;
    }
}

TEST(Limiter, IsTheSameAboveAndBelowZero)
{
    for (float sum = 0; sum < 4; sum += 0.1F)
        EXPECT_EQ(softLimited(-sum), -softLimited(sum));
}

TEST(Limiter, MakesSilenceOfWhatIsNoNumber)
{
    EXPECT_EQ(softLimited(std::numeric_limits<float>::quiet_NaN()), 0.0F);
    EXPECT_EQ(toSixteenBits(std::numeric_limits<float>::quiet_NaN()), 0);
}

TEST(SixteenBits, ReachFullScaleAndNeverWrapRound)
{
    EXPECT_EQ(toSixteenBits(1), 32767);
    EXPECT_EQ(toSixteenBits(-1), -32767);
    EXPECT_EQ(toSixteenBits(9), 32767);
    EXPECT_EQ(toSixteenBits(-9), -32767);
    EXPECT_EQ(toSixteenBits(0), 0);
}

TEST(SixteenBits, ComeBackAsTheyWent)
{
    for (int sample = -32767; sample <= 32767; sample += 7)
        EXPECT_EQ(toSixteenBits(fromSixteenBits(static_cast<std::int16_t>(sample))), sample);
}

}  // namespace
}  // namespace app::sound
