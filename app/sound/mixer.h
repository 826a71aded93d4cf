#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace app::sound {

/// Sums the sounds that play at a moment into one stream of samples. Pure: it
/// knows neither clock nor device, time passes as samples are taken from it.
class Mixer {
public:
    /// Starts `samples` (one channel, each from -1 to 1) with the next sample that is
    /// taken. `ticket` comes back from `mixInto` when the last of them was taken.
    void add(std::uint64_t ticket, std::vector<float> samples);

    /// Ends everything that plays, within `fadeFrames` so that nothing clicks.
    /// The tickets of what was ended don't come back.
    void clear();

    /// Ends everything at once, for when nobody listens.
    void forget() { m_voices.clear(); }

    /// 0 is silent, 1 as the patterns were made; anything outside is brought inside.
    void setVolume(float volume);

    /// Fills `out` with the next samples and gives the tickets of sounds that ended in it.
    std::vector<std::uint64_t> mixInto(std::span<float> out);

    [[nodiscard]] bool silent() const { return m_voices.empty(); }

    static constexpr std::size_t fadeFrames = 240;  ///< 5 ms at 48 kHz.

private:
    struct Voice {
        std::uint64_t ticket = 0;
        std::vector<float> samples;
        std::size_t next = 0;
        bool ended = false;  ///< Fading out, its ticket won't come back.
    };

    std::vector<Voice> m_voices;
    float m_volume = 1;
};

}  // namespace app::sound
