#include "app/session/sounding.h"

#include <utility>

namespace app::session {

using core::alarm::Alarm;
using core::measure::Instant;

namespace {

std::int64_t repeatsBy(Instant now, const Alarm& alarm)
{
    return alarm.every.count() > 0 ? (now - alarm.since) / alarm.every : 0;
}

}  // namespace

std::vector<Alarm> Sounding::heardAt(Instant now, const std::vector<Alarm>& standing)
{
    std::map<Key, Heard> heard;
    std::vector<Alarm> sounds;
    for (const Alarm& alarm : standing) {
        const Key key{alarm.kind, alarm.subject, alarm.task, alarm.asks};
        const auto before = m_heard.find(key);
        if (before == m_heard.end() || isDueAgain(alarm, now, before->second)) {
            sounds.push_back(alarm);
            heard[key] = {alarm.since, now, repeatsBy(now, alarm)};
        } else {
            heard[key] = before->second;
        }
    }
    m_heard = std::move(heard);
    return sounds;
}

/// A plan that is made again may move the moment that a standing alarm counts from;
/// that alone must not make it sound each second.
bool Sounding::isDueAgain(const Alarm& alarm, Instant now, const Heard& before)
{
    if (alarm.every.count() <= 0)
        return false;
    if (alarm.since == before.since)
        return repeatsBy(now, alarm) > before.repeats;
    return now - before.last >= alarm.every;
}

}  // namespace app::session
