#include "core/alarm/mutes.h"

#include <algorithm>
#include <iterator>

namespace core::alarm {

Seconds Mutes::lengthFor(Kind kind)
{
    return kind == Kind::LimitPassed ? length / 2 : length;
}

Mutes::Key Mutes::keyOf(const Alarm& alarm)
{
    return {alarm.kind, alarm.subject, alarm.task, alarm.asks};
}

bool Mutes::mute(const Alarm& alarm, Instant now)
{
    std::erase_if(m_until, [now](const auto& mute) { return mute.second <= now; });
    return m_until.emplace(keyOf(alarm), now + lengthFor(alarm.kind)).second;
}

void Mutes::unmute(const Alarm& alarm)
{
    m_until.erase(keyOf(alarm));
}

std::optional<Instant> Mutes::until(const Alarm& alarm, Instant now) const
{
    const auto mute = m_until.find(keyOf(alarm));
    if (mute == m_until.end() || mute->second <= now)
        return {};
    return mute->second;
}

std::vector<Alarm> Mutes::audible(const std::vector<Alarm>& alarms, Instant now) const
{
    std::vector<Alarm> audible;
    std::ranges::copy_if(alarms, std::back_inserter(audible),
                         [&](const Alarm& alarm) { return !until(alarm, now); });
    return audible;
}

}  // namespace core::alarm
