#include "app/sound/mixer.h"

#include "app/sound/limiter.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace app::sound {
namespace {

using Tickets = std::vector<std::uint64_t>;

std::vector<float> tone(double hertz, std::size_t frames, float level)
{
    std::vector<float> samples(frames);
    for (std::size_t i = 0; i < frames; ++i)
        samples[i] = level
            * static_cast<float>(std::sin(2 * std::numbers::pi * hertz * static_cast<double>(i) / 48000));
    return samples;
}

std::vector<float> taken(Mixer& mixer, std::size_t frames)
{
    std::vector<float> out(frames, 9.0F);
    mixer.mixInto(out);
    return out;
}

TEST(Mixer, GivesSilenceWhenNothingPlays)
{
    Mixer mixer;
    EXPECT_EQ(taken(mixer, 4), std::vector<float>(4, 0.0F));
    EXPECT_TRUE(mixer.silent());
}

TEST(Mixer, GivesOneSoundExactlyWhateverThePieces)
{
    const auto wanted = tone(880, 1000, 0.7F);
    for (const std::size_t piece : {1U, 7U, 480U, 999U, 1000U, 4096U}) {
        Mixer mixer;
        mixer.add(1, wanted);
        std::vector<float> heard;
        while (heard.size() < wanted.size())
            std::ranges::copy(taken(mixer, piece), std::back_inserter(heard));
        heard.resize(wanted.size());
        EXPECT_EQ(heard, wanted) << "in pieces of " << piece;
    }
}

TEST(Mixer, GivesTheTicketWithTheLastSampleAndNotBefore)
{
    Mixer mixer;
    mixer.add(7, std::vector<float>(100, 0.1F));
    std::vector<float> out(99);
    EXPECT_EQ(mixer.mixInto(out), Tickets{});
    out.resize(1);
    EXPECT_EQ(mixer.mixInto(out), Tickets{7});
    EXPECT_EQ(mixer.mixInto(out), Tickets{});
    EXPECT_TRUE(mixer.silent());
}

TEST(Mixer, GivesTheTicketOfASoundWithoutSamples)
{
    Mixer mixer;
    mixer.add(3, {});
    std::vector<float> out(1);
    EXPECT_EQ(mixer.mixInto(out), Tickets{3});
}

TEST(Mixer, SumsWhatOverlaps)
{
    Mixer mixer;
    mixer.add(1, std::vector<float>(6, 0.2F));
    taken(mixer, 2);
    mixer.add(2, std::vector<float>(6, 0.3F));
    EXPECT_EQ(taken(mixer, 4), std::vector<float>(4, 0.2F + 0.3F));
    EXPECT_EQ(taken(mixer, 2), std::vector<float>(2, 0.3F));
}

// Twelve loud sounds at once sum to 10.8; all must stay within full scale, and the fundamental must still
// lead.
TEST(Mixer, NeverClipsHoweverManyOverlap)
{
    Mixer mixer;
    for (std::uint64_t ticket = 0; ticket < 12; ++ticket)
        mixer.add(ticket, tone(880, 4800, 0.9F));
    const auto heard = taken(mixer, 4800);
    const auto loudest = std::ranges::max_element(heard, {}, [](float s) { return std::abs(s); });
    EXPECT_LE(std::abs(*loudest), 1.0F);
    EXPECT_GT(std::abs(*loudest), untouched);
    const auto wanted = tone(880, 4800, 1.0F);
    double same = 0;
    double size = 0;
    for (std::size_t i = 0; i < heard.size(); ++i) {
        same += static_cast<double>(heard[i]) * static_cast<double>(wanted[i]);
        size += static_cast<double>(heard[i]) * static_cast<double>(heard[i]);
    }
    EXPECT_GT(same / std::sqrt(size * 2400), 0.85);  // A square wave has 0.90.
}

TEST(Mixer, EndsEverythingWithoutAClick)
{
    Mixer mixer;
    mixer.add(1, std::vector<float>(48000, 0.5F));
    taken(mixer, 100);
    mixer.clear();
    const auto heard = taken(mixer, Mixer::fadeFrames + 10);
    float before = 0.5F;
    for (const float sample : heard) {
        EXPECT_LE(sample, before);
        EXPECT_LT(before - sample, 0.01F);
        before = sample;
    }
    EXPECT_EQ(heard.back(), 0.0F);
    EXPECT_TRUE(mixer.silent());
}

TEST(Mixer, GivesNoTicketForWhatWasEnded)
{
    Mixer mixer;
    mixer.add(1, std::vector<float>(100, 0.5F));
    mixer.clear();
    mixer.clear();
    mixer.add(2, std::vector<float>(50, 0.5F));
    std::vector<float> out(1000);
    EXPECT_EQ(mixer.mixInto(out), Tickets{2});
}

TEST(Mixer, TurnsTheWholeDownAndNeverUp)
{
    Mixer mixer;
    mixer.add(1, std::vector<float>(10, 0.4F));
    mixer.setVolume(0.5F);
    EXPECT_EQ(taken(mixer, 1).front(), 0.2F);
    mixer.setVolume(7);
    EXPECT_EQ(taken(mixer, 1).front(), 0.4F);
    mixer.setVolume(-1);
    EXPECT_EQ(taken(mixer, 1).front(), 0.0F);
    mixer.setVolume(std::nanf(""));
    EXPECT_EQ(taken(mixer, 1).front(), 0.4F);
}

}  // namespace
}  // namespace app::sound
