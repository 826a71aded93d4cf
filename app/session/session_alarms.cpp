#include "app/session/session.h"

#include <algorithm>

// What of the session is about alarms: which sound, and which are muted.

namespace app::session {

using core::alarm::Alarm;
using core::alarm::Call;

void Session::sound()
{
    const auto stands = [this](const Alarm& alarm) {
        return std::find(m_alarms.begin(), m_alarms.end(), alarm) != m_alarms.end();
    };
    for (Call call : m_sounding.heardAt(m_state.now, core::alarm::callsOf(audible(), m_manners))) {
        // A slot may have answered what the next one is about.
        std::erase_if(call.alarms, [&](const Alarm& alarm) { return !stands(alarm); });
        if (!call.alarms.empty())
            Q_EMIT called(call);
    }
}

std::vector<Alarm> Session::audible() const
{
    return m_mutes.audible(m_alarms, m_state.now);
}

std::vector<Call> Session::calls() const
{
    std::vector<Call> calls = core::alarm::callsOf(audible(), m_manners);
    std::vector<Alarm> muted;
    for (const Alarm& alarm : m_alarms)
        if (mutedUntil(alarm))
            muted.push_back(alarm);
    const std::vector<Call> silent = core::alarm::callsOf(muted, m_manners);
    calls.insert(calls.end(), silent.begin(), silent.end());
    return calls;
}

bool Session::mute(const Call& call)
{
    if (!m_run)
        return false;
    bool any = false;
    for (const Alarm& alarm : call.alarms)
        any = m_mutes.mute(alarm, m_state.now) || any;
    if (any) {
        Q_EMIT alarmsChanged();
        sound();  // So that what is muted sounds at once when it is let.
    }
    return any;
}

void Session::unmute(const Call& call)
{
    for (const Alarm& alarm : call.alarms)
        m_mutes.unmute(alarm);
    Q_EMIT alarmsChanged();
    if (m_run)
        sound();
}

std::optional<Instant> Session::mutedUntil(const Alarm& alarm) const
{
    return m_mutes.until(alarm, m_state.now);
}

}  // namespace app::session
