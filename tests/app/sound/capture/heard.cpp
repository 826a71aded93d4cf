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
using core::alarm::Subject;

/// Every second sample is enough for sounds below 6 kHz and makes the search four times cheaper.
constexpr int coarse = 2;
/// Two alarms of one loudness that overlap are each like the sum by 0.71, and explain half of it.
constexpr double leastLikeness = 0.64;
constexpr double leastExplained = 0.4;  ///< Of what is left there once louder alarms are taken away.
/// Where another was found already: what a stutter leaves of that one explains less.
constexpr double leastExplainedWithin = 0.8;
constexpr double leastLevel = 0.2;  ///< Fainter than that is what is left of another alarm.

struct Shape {
    Kind kind;
    Subject subject;
    int insistence;
    std::vector<float> samples;
    double energy;
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

std::vector<Shape> allShapes()
{
    std::vector<Shape> shapes;
    for (const Kind kind : {Kind::GetReady, Kind::Due, Kind::LimitNear, Kind::LimitPassed})
        for (const Subject subject : {Subject::Task, Subject::Look, Subject::Water})
            for (int insistence = 0; insistence <= core::alarm::mostInsistence; ++insistence) {
                auto samples = coarsened(core::alarm::patternSamples(kind, subject, insistence, rate));
                while (!samples.empty() && std::abs(samples.back()) < 1e-4F)
                    samples.pop_back();
                const double energy = energyOf(samples);
                shapes.push_back({kind, subject, insistence, std::move(samples), energy});
            }
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

/// Shapes that differ in loudness alone fit alike: the one that was as loud as it was made is meant.
Candidate asLoudAsMade(const std::vector<Candidate>& candidates, std::span<const float> left, Candidate best)
{
    constexpr std::size_t same = rate / coarse / 500;
    const double wanted = 0.97 * best.explained();
    for (Candidate other : candidates) {
        if (other.at + same < best.at || other.at > best.at + same || fit(left, other) < leastExplained)
            continue;
        if (other.explained() >= wanted
            && std::abs(std::log(other.level())) < std::abs(std::log(best.level())))
            best = other;
    }
    return best;
}

bool overlap(const Candidate& one, const Candidate& other)
{
    return one.at < other.at + other.shape->samples.size() && other.at < one.at + one.shape->samples.size();
}

void takeAway(std::vector<float>& left, const Candidate& found)
{
    for (std::size_t i = 0; i < found.shape->samples.size() && found.at + i < left.size(); ++i)
        left[found.at + i] -= static_cast<float>(found.level()) * found.shape->samples[i];
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

std::vector<Heard> alarmsIn(std::span<const float> recording)
{
    const auto shapes = allShapes();
    std::vector<float> left = coarsened(recording);
    const auto energy = runningEnergy(left);
    std::vector<Candidate> candidates;
    for (const Shape& shape : shapes)
        addCandidates(left, energy, shape, candidates);
    std::ranges::sort(candidates, std::greater{}, &Candidate::explained);

    std::vector<Heard> heard;
    std::vector<Candidate> taken;
    for (Candidate candidate : candidates) {
        const bool within =
            std::ranges::any_of(taken, [&](const Candidate& other) { return overlap(candidate, other); });
        const double share = fit(left, candidate);
        if (share < (within ? leastExplainedWithin : leastExplained) || candidate.level() < leastLevel)
            continue;
        const Candidate found = asLoudAsMade(candidates, left, candidate);
        takeAway(left, found);
        taken.push_back(found);
        heard.push_back({static_cast<double>(found.at) * coarse / rate, found.shape->kind,
                         found.shape->subject, found.shape->insistence, std::sqrt(share), found.level()});
    }
    std::ranges::sort(heard, {}, &Heard::at);
    return heard;
}

}  // namespace capture
