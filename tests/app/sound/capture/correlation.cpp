#include "tests/app/sound/capture/correlation.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <complex>
#include <numbers>

namespace capture {
namespace {

using Wave = std::vector<std::complex<float>>;

/// The fast Fourier transform of J. W. Cooley and J. W. Tukey, Mathematics of Computation 19 (1965) 297-301,
/// in place; the size is a power of two.
void transform(Wave& wave, bool back)
{
    const std::size_t size = wave.size();
    for (std::size_t i = 1, j = 0; i < size; ++i) {
        std::size_t bit = size >> 1;
        for (; (j & bit) != 0; bit >>= 1)
            j ^= bit;
        j ^= bit;
        if (i < j)
            std::swap(wave[i], wave[j]);
    }
    for (std::size_t half = 1; half < size; half *= 2) {
        Wave turns(half);
        for (std::size_t k = 0; k < half; ++k)
            turns[k] = std::polar(1.0F,
                                  static_cast<float>((back ? 1 : -1) * std::numbers::pi
                                                     * static_cast<double>(k) / static_cast<double>(half)));
        for (std::size_t begin = 0; begin < size; begin += 2 * half)
            for (std::size_t k = 0; k < half; ++k) {
                const auto even = wave[begin + k];
                const auto odd = wave[begin + k + half] * turns[k];
                wave[begin + k] = even + odd;
                wave[begin + k + half] = even - odd;
            }
    }
}

Wave transformed(std::span<const float> samples, std::size_t size)
{
    Wave wave(size);
    std::ranges::copy(samples, wave.begin());
    transform(wave, false);
    return wave;
}

}  // namespace

/// Piece by piece, each piece as long as leaves the transform no larger than it must be.
std::vector<float> correlation(std::span<const float> signal, std::span<const float> shape)
{
    std::vector<float> all(signal.size());
    if (shape.empty())
        return all;
    const std::size_t size = std::bit_ceil(std::max<std::size_t>(2 * shape.size(), 1 << 12));
    const std::size_t hop = size - shape.size() + 1;
    const Wave shapeWave = transformed(shape, size);
    for (std::size_t from = 0; from < signal.size(); from += hop) {
        const auto piece = signal.subspan(from, std::min(size, signal.size() - from));
        if (std::ranges::all_of(piece, [](float sample) { return std::abs(sample) < 1e-3F; }))
            continue;
        Wave wave = transformed(piece, size);
        for (std::size_t i = 0; i < size; ++i)
            wave[i] *= std::conj(shapeWave[i]);
        transform(wave, true);
        for (std::size_t i = 0; i < hop && from + i < all.size(); ++i)
            all[from + i] = wave[i].real() / static_cast<float>(size);
    }
    return all;
}

}  // namespace capture
