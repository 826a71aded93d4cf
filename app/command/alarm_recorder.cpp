#include "app/command/alarm_recorder.h"

#include "core/alarm/pattern.h"

#include <algorithm>

namespace app::command {

AlarmRecorder::AlarmRecorder(std::unique_ptr<SoundFile> file, Silence silence)
    : m_file{std::move(file)}
    , m_silence{silence}
{
}

void AlarmRecorder::beginAt(core::measure::Instant moment)
{
    if (!m_last)
        m_last = moment;
}

double AlarmRecorder::record(const core::alarm::Alarm& alarm, core::measure::Instant moment)
{
    beginAt(moment);
    core::measure::Seconds gap = std::max(core::measure::Seconds{0}, moment - *m_last);
    if (m_silence == Silence::Shortened)
        gap = std::min(gap, longestGap);
    m_place += static_cast<double>(gap.count());
    m_last = std::max(*m_last, moment);
    m_file->add(m_place,
                core::alarm::patternSamples(core::alarm::signalOf(alarm), alarm.insistence, m_file->rate()));
    return m_place;
}

}  // namespace app::command
