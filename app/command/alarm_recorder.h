#pragma once

#include "app/command/outside.h"
#include "core/alarm/alarm.h"

#include <memory>
#include <optional>

namespace app::command {

/// Writes the alarms of a run into a sound file, each at its time.
///
/// A run that is played fast has long silences that nobody would listen to: there a
/// gap of more than `longestGap` between the beginnings of two alarms becomes that
/// long. Shorter ones are kept to the second, so what sounds together in the run
/// sounds together in the file.
class AlarmRecorder {
public:
    enum class Silence { Kept, Shortened };
    AlarmRecorder(std::unique_ptr<SoundFile> file, Silence silence);

    /// The moment that the file begins with. Later calls change nothing.
    void beginAt(core::measure::Instant moment);

    /// Where in the file the alarm begins, in seconds.
    double record(const core::alarm::Alarm& alarm, core::measure::Instant moment);

    /// What went wrong, or nothing.
    std::string finish() { return m_file->finish(); }

    static constexpr core::measure::Seconds longestGap{3};

private:
    std::unique_ptr<SoundFile> m_file;
    std::optional<core::measure::Instant> m_last;
    double m_place = 0;
    Silence m_silence;
};

}  // namespace app::command
