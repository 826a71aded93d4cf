#pragma once

#include "core/alarm/pattern.h"

#include <filesystem>
#include <span>
#include <vector>

/// Finds alarms in a recording by what they sound like: each pattern is slid
/// along it, and where the recording has that very shape, the alarm was heard.
/// Pitch, rhythm, length and order all have to fit for that.
namespace capture {

constexpr int rate = 48000;

struct Heard {
    double at = 0;  ///< Seconds from the beginning of the recording.
    core::alarm::Kind kind = core::alarm::Kind::GetReady;
    core::alarm::Subject subject = core::alarm::Subject::Task;
    int voice = 0;
    int insistence = 0;
    double likeness = 0;  ///< 1 is the very shape.
    double level = 0;     ///< 1 is as loud as the pattern was made.
};

/// Raw samples of 16 bits, one channel, 48 kHz.
std::vector<float> readRaw(const std::filesystem::path& path);

/// All that is heard, by time. Also finds alarms that overlap. Listens for the first voice, and so many more
/// as are asked for: each takes as long again.
std::vector<Heard> alarmsIn(std::span<const float> recording, int voices = 1);

}  // namespace capture
