#include "app/session/sounding.h"

#include <utility>

namespace app::session {

using core::alarm::Alarm;
using core::alarm::Call;
using core::measure::Instant;

namespace {

std::int64_t repeatsBy(Instant now, const Alarm& alarm)
{
    return alarm.every.count() > 0 ? (now - alarm.since) / alarm.every : 0;
}

}  // namespace

Sounding::Key Sounding::keyOf(const Alarm& alarm)
{
    return {alarm.kind, alarm.subject, alarm.task, alarm.asks};
}

std::vector<Call> Sounding::heardAt(Instant now, const std::vector<Call>& standing)
{
    std::map<Key, Heard> heard;
    std::vector<Call> sounding;
    for (const Call& call : standing) {
        const bool isHeard = sounds(call, now);
        const Alarm lead = call.lead();
        for (const Alarm& alarm : call.alarms)
            heard[keyOf(alarm)] =
                isHeard ? Heard{lead.since, now, repeatsBy(now, lead)} : m_heard.at(keyOf(alarm));
        if (isHeard)
            sounding.push_back(call);
    }
    m_heard = std::move(heard);
    return sounding;
}

bool Sounding::sounds(const Call& call, Instant now) const
{
    const Heard* latest = nullptr;
    for (const Alarm& alarm : call.alarms) {
        const auto before = m_heard.find(keyOf(alarm));
        if (before == m_heard.end())
            return true;
        if (!latest || before->second.last > latest->last)
            latest = &before->second;
    }
    return isDueAgain(call.lead(), now, *latest);
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
