#pragma once

#include "core/alarm/alarm.h"

#include <vector>

/// How each alarm sounds, made from sines. Modelled on what IEC 60601-1-8 says of
/// pulses, bursts and harmonics and ISO 7731 of where a signal's energy lies, which
/// are for other trades: nothing here claims to conform. docs/sources.md has more.
///
/// The rhythm tells the kind, the melody the subject, how each note is sung the lane:
///
///     GetReady     * *                   Task   stays on one note     voice 0  full, plain
///     Due          * * *                 Look   rises                 voice 1  full, slid into from below
///     LimitNear    * * *   * *           Water  falls                 voice 2  full, sliding off downwards
///     LimitPassed  * * *   * *     * * *   * *                        voices 3 to 5 likewise, hollow
namespace core::alarm {

/// What tells one pattern from another.
struct Signal {
    Kind kind = Kind::GetReady;
    Subject subject = Subject::Task;
    int voice = 0;  ///< From 0; `voices` on begins again with the first.

    friend bool operator==(const Signal&, const Signal&) = default;
};

/// The pattern an alarm is sounded with.
Signal signalOf(const Alarm& alarm);

/// One tone of a burst.
struct Pulse {
    double start = 0.0;      ///< Seconds from the beginning of the burst.
    double length = 0.0;     ///< Seconds, with rise and fall.
    double frequency = 0.0;  ///< Hz, of the fundamental.
};

/// The pulses of one burst, in order.
std::vector<Pulse> pulsesOf(const Signal& signal);

/// One burst as mono samples within [-1, 1]. Every signal is equally loud (by
/// the A-curve of IEC 61672-1, while it sounds) at one insistence; each step of insistence
/// adds 2 dB. `insistence` is clamped to 0 .. `mostInsistence`. Empty where `sampleRate` is
/// below 8000, which cannot carry the harmonics.
std::vector<float> patternSamples(const Signal& signal, int insistence, int sampleRate);

/// The A-weighting of IEC 61672-1 as a factor on amplitude, 1 at 1 kHz.
double aWeight(double frequency);

}  // namespace core::alarm
