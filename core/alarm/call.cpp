#include "core/alarm/call.h"

#include "core/run/prompts.h"

#include <algorithm>
#include <tuple>

namespace core::alarm {
namespace {

bool isLimit(const Alarm& alarm)
{
    return alarm.kind == Kind::LimitNear || alarm.kind == Kind::LimitPassed;
}

/// Of limits the one that was reached first.
auto byHarm(const Alarm& alarm)
{
    const int harm = isLimit(alarm) ? 0 : run::harmOfWaiting(alarm.asks, alarm.task.kind);
    return std::tuple{harm, alarm.since, alarm.task};
}

}  // namespace

Alarm Call::lead() const
{
    Alarm lead = alarms.front();
    for (const Alarm& alarm : alarms) {
        lead.since = std::min(lead.since, alarm.since);
        lead.insistence = std::max(lead.insistence, alarm.insistence);
    }
    return lead;
}

std::vector<Call> callsOf(const std::vector<Alarm>& alarms, const Manners& manners)
{
    std::vector<Alarm> inOrder = alarms;
    std::ranges::stable_sort(inOrder, [](const Alarm& one, const Alarm& other) {
        return std::tuple{other.kind, one.since} < std::tuple{one.kind, other.since};
    });
    std::vector<Call> calls;
    std::optional<Instant> until;
    for (const Alarm& alarm : inOrder) {
        const bool same = !calls.empty() && calls.back().alarms.front().kind == alarm.kind;
        if (!same || alarm.since > *until) {
            calls.emplace_back();
            until = alarm.since + manners.together;
        }
        calls.back().alarms.push_back(alarm);
    }
    for (Call& call : calls)
        std::ranges::sort(call.alarms, {}, byHarm);
    return calls;
}

}  // namespace core::alarm
