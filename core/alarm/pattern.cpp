#include "core/alarm/pattern.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace core::alarm {
namespace {

/// How the pulses of a kind follow each other; seconds.
struct Rhythm {
    std::vector<int> phrases;  ///< Pulses of each phrase.
    double length;             ///< Of a pulse.
    double gap;                ///< Between pulses of a phrase.
    double afterThree;         ///< Between the three and the two of a five.
    double afterFive;
};

// Pulse lengths and gaps for low and medium (125 to 250 ms both) and high priority (75 to 200 and 50 to
// 125 ms, two fives 0.35 to 1.3 s apart) as IEC 60601-1-8 is quoted; that within a five the longer gap is
// two gaps and a pulse is from memory.
Rhythm rhythmOf(Kind kind)
{
    switch (kind) {
    case Kind::GetReady:
        return {.phrases = {2}, .length = 0.24, .gap = 0.20, .afterThree = 0.0, .afterFive = 0.0};
    case Kind::Due: return {.phrases = {3}, .length = 0.20, .gap = 0.18, .afterThree = 0.0, .afterFive = 0.0};
    case Kind::LimitNear:
        return {.phrases = {3, 2}, .length = 0.16, .gap = 0.07, .afterThree = 0.30, .afterFive = 0.0};
    case Kind::LimitPassed:
        return {.phrases = {3, 2, 3, 2}, .length = 0.13, .gap = 0.08, .afterThree = 0.29, .afterFive = 0.60};
    }
    return {};
}

// Between 500 Hz, where ISO 7731's band begins, and 800 Hz, so that the fifth harmonic stays below 4 kHz:
// C, E and G of the fifth octave, equal temperament from A at 440 Hz.
constexpr double lowNote = 523.25;
constexpr double middleNote = 659.26;
constexpr double highNote = 783.99;

double noteOf(Subject subject, int place, int phrase)
{
    const std::array<double, 3> rising{lowNote, phrase == 2 ? highNote : middleNote, highNote};
    const std::array<double, 3> falling{highNote, phrase == 2 ? lowNote : middleNote, lowNote};
    const auto step = static_cast<std::size_t>(place);
    if (subject == Subject::Task)
        return middleNote;
    return subject == Subject::Look ? rising.at(step) : falling.at(step);
}

/// Amplitudes of the fundamental and its harmonics: four of them within 15 dB of it.
using Harmonics = std::array<double, 5>;
constexpr Harmonics full{1.0, 0.71, 0.56, 0.40, 0.32};
constexpr Harmonics hollow{1.0, 0.20, 0.75, 0.20, 0.45};

/// How a note is sung. A slide covers two semitones at its far end.
enum class Slide { None, Into, Off };
constexpr int slides = 3;
constexpr double slideShare = 0.25;  ///< Of the pulse, so that its middle is steady.
constexpr double slideDepth = 0.11;

struct Singing {
    const Harmonics& harmonics;
    Slide slide;
};

Singing singingOf(int voice)
{
    const int place = ((voice % voices) + voices) % voices;
    return {.harmonics = place < slides ? full : hollow, .slide = static_cast<Slide>(place % slides)};
}

/// A-weighted root mean square of a steady note at the most insistence, of a full scale of 1. Low enough
/// that no sum of the harmonics reaches full scale.
constexpr double loudest = 0.31;
constexpr double stepInDecibels = 2.0;

/// The share of a pulse in which it rises, and as much again in which it falls. From 10 to 90 % of its
/// height that is 12 % of the pulse: within 10 to 40 %, and without a click.
constexpr double ramp = 0.2;

double levelOf(const Harmonics& harmonics, double frequency, int insistence)
{
    double power = 0.0;
    for (std::size_t place = 0; place < harmonics.size(); ++place) {
        const double weighted = harmonics[place] * aWeight(frequency * static_cast<double>(place + 1));
        power += weighted * weighted / 2.0;
    }
    const int steps = std::clamp(insistence, 0, mostInsistence) - mostInsistence;
    return loudest * std::pow(10.0, stepInDecibels * steps / 20.0) / std::sqrt(power);
}

/// A raised cosine up and down with level ground between.
double envelope(double share)
{
    const double edge = std::min(share, 1.0 - share) / ramp;
    return edge >= 1.0 ? 1.0 : 0.5 - 0.5 * std::cos(std::numbers::pi * std::max(edge, 0.0));
}

/// How many periods of the fundamental have gone by: the integral of the frequency, which on a slide grows to
/// the note, or falls from it, with the square of the time.
double periodsAt(const Pulse& pulse, Slide slide, double time)
{
    const double length = slideShare * pulse.length;
    const double third = slideDepth * length / 3.0;
    double slid = 0.0;
    if (slide == Slide::Into)
        slid = third * (1.0 - std::pow(1.0 - std::min(time / length, 1.0), 3.0));
    if (slide == Slide::Off)
        slid = third * std::pow(std::max(time - (pulse.length - length), 0.0) / length, 3.0);
    return pulse.frequency * (time - slid);
}

double tone(const Harmonics& harmonics, double periods)
{
    double sum = 0.0;
    for (std::size_t place = 0; place < harmonics.size(); ++place) {
        const double number = static_cast<double>(place + 1);
        // Phases that grow with the square of the number keep the peak low (M. Schroeder 1970, from memory).
        const double phase = std::numbers::pi * number * number / static_cast<double>(harmonics.size());
        sum += harmonics[place] * std::sin(2.0 * std::numbers::pi * number * periods + phase);
    }
    return sum;
}

void addPulse(const Pulse& pulse, const Singing& singing, int insistence, int sampleRate,
              std::vector<float>& samples)
{
    const double level = levelOf(singing.harmonics, pulse.frequency, insistence);
    const double rate = sampleRate;
    const auto first = static_cast<std::size_t>(std::ceil(pulse.start * rate));
    for (std::size_t place = first; place < samples.size(); ++place) {
        const double time = static_cast<double>(place) / rate - pulse.start;
        if (time >= pulse.length)
            return;
        samples[place] = static_cast<float>(level * envelope(time / pulse.length)
                                            * tone(singing.harmonics, periodsAt(pulse, singing.slide, time)));
    }
}

}  // namespace

double aWeight(double frequency)
{
    // IEC 61672-1, the analytical curve: poles at 20.6, 107.7, 737.9 and 12194 Hz, 2 dB added for 1 kHz.
    const double square = frequency * frequency;
    const auto pole = [&](double at) { return square + at * at; };
    const double response = 12194.217 * 12194.217 * square * square
        / (pole(20.598997) * std::sqrt(pole(107.65265) * pole(737.86223)) * pole(12194.217));
    return response * std::pow(10.0, 2.0 / 20.0);
}

Signal signalOf(const Alarm& alarm)
{
    return {.kind = alarm.kind, .subject = alarm.subject, .voice = alarm.voice};
}

std::vector<Pulse> pulsesOf(const Signal& signal)
{
    const Rhythm rhythm = rhythmOf(signal.kind);
    std::vector<Pulse> pulses;
    double start = 0.0;
    for (const int phrase : rhythm.phrases) {
        for (int place = 0; place < phrase; ++place) {
            pulses.push_back({.start = start,
                              .length = rhythm.length,
                              .frequency = noteOf(signal.subject, place, phrase)});
            start += rhythm.length + rhythm.gap;
        }
        start += (phrase == 3 ? rhythm.afterThree : rhythm.afterFive) - rhythm.gap;
    }
    return pulses;
}

std::vector<float> patternSamples(const Signal& signal, int insistence, int sampleRate)
{
    constexpr int leastRate = 8000;
    if (sampleRate < leastRate)
        return {};
    const std::vector<Pulse> pulses = pulsesOf(signal);
    const double length = pulses.back().start + pulses.back().length;
    std::vector<float> samples(static_cast<std::size_t>(std::ceil(length * sampleRate)));
    for (const Pulse& pulse : pulses)
        addPulse(pulse, singingOf(signal.voice), insistence, sampleRate, samples);
    return samples;
}

}  // namespace core::alarm
