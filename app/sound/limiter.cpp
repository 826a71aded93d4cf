#include "app/sound/limiter.h"

#include <algorithm>
#include <cmath>

namespace app::sound {
namespace {

constexpr float fullScale = 32767.0F;

}  // namespace

float softLimited(float sum)
{
    if (std::isnan(sum))
        return 0;
    const float size = std::abs(sum);
    if (size <= untouched)
        return sum;
    constexpr float room = 1.0F - untouched;
    return std::copysign(untouched + room * std::tanh((size - untouched) / room), sum);
}

std::int16_t toSixteenBits(float sample)
{
    if (std::isnan(sample))
        return 0;
    return static_cast<std::int16_t>(std::lround(std::clamp(sample, -1.0F, 1.0F) * fullScale));
}

float fromSixteenBits(std::int16_t sample)
{
    return static_cast<float>(sample) / fullScale;
}

}  // namespace app::sound
