#include "app/sound/mixer.h"

#include "app/sound/limiter.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace app::sound {

void Mixer::add(std::uint64_t ticket, std::vector<float> samples)
{
    m_voices.push_back({ticket, std::move(samples), 0, false});
}

void Mixer::clear()
{
    for (Voice& voice : m_voices) {
        if (voice.ended)
            continue;
        const std::size_t left = std::min(fadeFrames, voice.samples.size() - voice.next);
        voice.samples.resize(voice.next + left);
        for (std::size_t i = 0; i < left; ++i)
            voice.samples[voice.next + i] *= 1.0F - static_cast<float>(i + 1) / static_cast<float>(left);
        voice.ended = true;
    }
}

void Mixer::setVolume(float volume)
{
    m_volume = std::isnan(volume) ? 1 : std::clamp(volume, 0.0F, 1.0F);
}

std::vector<std::uint64_t> Mixer::mixInto(std::span<float> out)
{
    std::ranges::fill(out, 0.0F);
    if (m_voices.empty())
        return {};
    std::vector<std::uint64_t> finished;
    for (Voice& voice : m_voices) {
        const std::size_t count = std::min(out.size(), voice.samples.size() - voice.next);
        for (std::size_t i = 0; i < count; ++i)
            out[i] += voice.samples[voice.next + i];
        voice.next += count;
        if (voice.next == voice.samples.size() && !voice.ended)
            finished.push_back(voice.ticket);
    }
    std::erase_if(m_voices, [](const Voice& voice) { return voice.next == voice.samples.size(); });
    for (float& sample : out)
        sample = softLimited(sample * m_volume);
    return finished;
}

}  // namespace app::sound
