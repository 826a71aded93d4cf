#pragma once

#include <cstdint>

namespace app::sound {

/// Brings a sum of sounds back between -1 and 1 without the crackle of cutting
/// it off. Up to `untouched` nothing changes, so one alarm alone is exact; above
/// it the curve bends smoothly and never reaches 1.
float softLimited(float sum);

constexpr float untouched = 0.75F;

/// The number that stands for `sample` (-1 to 1) in sound of 16 bits, and back.
std::int16_t toSixteenBits(float sample);
float fromSixteenBits(std::int16_t sample);

}  // namespace app::sound
