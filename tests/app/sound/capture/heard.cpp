#include "tests/app/sound/capture/heard.h"

#include "core/alarm/pattern.h"
#include "tests/app/sound/capture/correlation.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <fstream>
#include <iterator>
#include <string>

namespace capture {
namespace {

using core::alarm::Kind;
using core::alarm::Signal;
using core::alarm::Subject;

/// Every second sample is enough for sounds below 6 kHz and makes the search four times cheaper.
constexpr int coarse = 2;
/// Two alarms of one loudness that overlap are each like the sum by 0.71, and explain half of it.
constexpr double leastLikeness = 0.64;
constexpr double leastExplained = 0.4;  ///< Of what is left there once louder alarms are taken away.
/// Where another was found already: what a stutter leaves of that one explains less.
constexpr double leastExplainedWithin = 0.8;
/// One pulse alone of a pattern of two explains half of it.
constexpr double leastExplainedAlone = 0.6;
constexpr double leastLevel = 0.2;  ///< Fainter than that is what is left of another alarm.

/// A pattern at no insistence; insistence changes nothing but how loud it is.
struct Shape {
    Signal signal;
    std::vector<float> samples;
    double energy;
    std::array<double, core::alarm::mostInsistence + 1> levels;  ///< Of each insistence; the first is 1.
};

struct Candidate {
    std::size_t at;
    const Shape* shape;
    double product;

    [[nodiscard]] double explained() const { return product * product / shape->energy; }
    [[nodiscard]] double level() const { return product / shape->energy; }
};

double energyOf(std::span<const float> samples)
{
    double sum = 0;
    for (const float sample : samples)
        sum += static_cast<double>(sample) * static_cast<double>(sample);
    return sum;
}

std::vector<float> coarsened(std::span<const float> samples)
{
    std::vector<float> out;
    out.reserve(samples.size() / coarse);
    for (std::size_t i = 0; i + 1 < samples.size(); i += coarse)
        out.push_back((samples[i] + samples[i + 1]) / 2);
    return out;
}

Shape shapeOf(const Signal& signal)
{
    const auto pattern = [&](int insistence) {
        return coarsened(core::alarm::patternSamples(signal, insistence, rate));
    };
    auto samples = pattern(0);
    const double energy = energyOf(samples);
    Shape shape{signal, std::move(samples), energy, {}};
    for (std::size_t i = 0; i < shape.levels.size(); ++i)
        shape.levels[i] = std::sqrt(energyOf(pattern(static_cast<int>(i))) / energy);
    return shape;
}

std::vector<Shape> allShapes(int voices)
{
    std::vector<Shape> shapes;
    for (const Kind kind : {Kind::GetReady, Kind::Due, Kind::LimitNear, Kind::LimitPassed})
        for (const Subject subject : {Subject::Task, Subject::Look, Subject::Water})
            for (int voice = 0; voice < voices; ++voice)
                shapes.push_back(shapeOf({kind, subject, voice}));
    return shapes;
}

/// The energy of everything before each place, so that a window's is one subtraction.
std::vector<double> runningEnergy(std::span<const float> samples)
{
    std::vector<double> sums{0};
    sums.reserve(samples.size() + 1);
    for (const float sample : samples)
        sums.push_back(sums.back() + static_cast<double>(sample) * static_cast<double>(sample));
    return sums;
}

/// Where `shape` fits better than anywhere within 5 ms.
void addCandidates(std::span<const float> signal, const std::vector<double>& energy, const Shape& shape,
                   std::vector<Candidate>& candidates)
{
    constexpr std::size_t near = rate / coarse / 200;
    const auto products = correlation(signal, shape.samples);
    std::size_t best = 0;
    bool open = false;
    for (std::size_t i = 0; i < products.size(); ++i) {
        if (open && i > best + near) {
            candidates.push_back({best, &shape, static_cast<double>(products[best])});
            open = false;
        }
        const std::size_t end = std::min(i + shape.samples.size(), signal.size());
        const double here = energy[end] - energy[i];
        const auto product = static_cast<double>(products[i]);
        if (product <= 0 || product < leastLikeness * std::sqrt(here * shape.energy))
            continue;
        if (!open || products[i] > products[best])
            best = i;
        open = true;
    }
    if (open)
        candidates.push_back({best, &shape, static_cast<double>(products[best])});
}

double productAt(std::span<const float> signal, std::size_t at, std::span<const float> shape)
{
    double sum = 0;
    for (std::size_t i = 0; i < shape.size() && at + i < signal.size(); ++i)
        sum += static_cast<double>(signal[at + i]) * static_cast<double>(shape[i]);
    return sum;
}

/// How much of what is left there `candidate` explains; also sets its product anew.
double fit(std::span<const float> left, Candidate& candidate)
{
    candidate.product = productAt(left, candidate.at, candidate.shape->samples);
    const std::size_t length = std::min(candidate.shape->samples.size(), left.size() - candidate.at);
    const double there = energyOf(left.subspan(candidate.at, length));
    return candidate.product <= 0 || there <= 0 ? 0 : candidate.explained() / there;
}

bool overlap(const Candidate& one, const Candidate& other)
{
    return one.at < other.at + other.shape->samples.size() && other.at < one.at + one.shape->samples.size();
}

/// Takes `found` away from what is left, or lays it back with a `sign` of 1.
void lay(std::vector<float>& left, const Candidate& found, float sign)
{
    for (std::size_t i = 0; i < found.shape->samples.size() && found.at + i < left.size(); ++i)
        left[found.at + i] += sign * static_cast<float>(found.level()) * found.shape->samples[i];
}

/// The loudest first, each taken away before the next is looked for.
std::vector<Candidate> takenApart(std::vector<float>& left, const std::vector<Candidate>& candidates)
{
    std::vector<Candidate> found;
    for (Candidate candidate : candidates) {
        const bool within =
            std::ranges::any_of(found, [&](const Candidate& other) { return overlap(candidate, other); });
        const double share = fit(left, candidate);
        if (share < (within ? leastExplainedWithin : leastExplained) || candidate.level() < leastLevel)
            continue;
        lay(left, candidate, -1);
        found.push_back(candidate);
    }
    return found;
}

Heard heardAs(const Candidate& found, double share)
{
    const auto& levels = found.shape->levels;
    const auto nearest = std::ranges::min_element(
        levels, {}, [&](double level) { return std::abs(std::log(found.level() / level)); });
    const Signal& signal = found.shape->signal;
    return {.at = static_cast<double>(found.at) * coarse / rate,
            .kind = signal.kind,
            .subject = signal.subject,
            .voice = signal.voice,
            .insistence = static_cast<int>(nearest - levels.begin()),
            .likeness = std::sqrt(share),
            .level = found.level() / *nearest};
}

}  // namespace

std::vector<float> readRaw(const std::filesystem::path& path)
{
    std::ifstream file{path, std::ios::binary};
    const std::string bytes{std::istreambuf_iterator<char>{file}, {}};
    std::vector<float> samples(bytes.size() / 2);
    for (std::size_t i = 0; i < samples.size(); ++i) {
        std::int16_t sample = 0;
        std::memcpy(&sample, bytes.data() + 2 * i, sizeof sample);
        samples[i] = static_cast<float>(sample) / 32768.0F;
    }
    return samples;
}

std::vector<Heard> alarmsIn(std::span<const float> recording, int voices)
{
    const auto shapes = allShapes(voices);
    std::vector<float> left = coarsened(recording);
    const auto energy = runningEnergy(left);
    std::vector<Candidate> candidates;
    for (const Shape& shape : shapes)
        addCandidates(left, energy, shape, candidates);
    std::ranges::sort(candidates, std::greater{}, &Candidate::explained);

    std::vector<Heard> heard;
    for (Candidate found : takenApart(left, candidates)) {
        // Each alone, with all others away: a part of a pattern is not enough any more.
        lay(left, found, 1);
        const double share = fit(left, found);
        if (share < leastExplainedAlone)
            continue;
        lay(left, found, -1);
        heard.push_back(heardAs(found, share));
    }
    std::ranges::sort(heard, {}, &Heard::at);
    return heard;
}

}  // namespace capture
