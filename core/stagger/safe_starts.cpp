#include "core/stagger/safe_starts.h"

#include "core/stagger/planned_network.h"
#include "core/temporal/dispatch.h"

#include <algorithm>
#include <map>

namespace core::stagger {
namespace {

/// All that ended by now is known: what goes on still ends later.
void endLaterThanNow(const Question& question, const Draft& draft, temporal::UncertainNetwork& network)
{
    if (!question.now)
        return;
    const auto now = static_cast<Time>((*question.now - draft.zero).count());
    for (const Busy& busy : draft.busy) {
        const auto link = std::ranges::find(network.links, busy.end.point, &temporal::Uncertain::end);
        if (busy.state != TaskState::Running || busy.end.isFixed() || link == network.links.end())
            continue;
        link->least = std::max(link->least, now + 1 - busy.start.offset);
        link->most = std::max(link->most, link->least);
        link->usual = std::clamp(link->usual, link->least, link->most);
    }
}

/// The horizon is the search's, and sets no limit.
void forgetHorizon(const Draft& draft, temporal::UncertainNetwork& network)
{
    std::erase_if(network.lags, [&draft](const Lag& lag) {
        return lag.from == temporal::origin && lag.most == draft.horizon;
    });
}

/// Nobody knows more than what is usual.
void becomeUsual(temporal::UncertainNetwork& network)
{
    for (temporal::Uncertain& link : network.links)
        link.least = link.most = link.usual;
}

std::map<TaskId, Moment> openStarts(const Draft& draft)
{
    std::map<TaskId, Moment> starts;
    for (const Busy& busy : draft.busy) {
        if (busy.state == TaskState::Open)
            starts.emplace(busy.id, busy.start);
    }
    starts.insert(draft.drying.begin(), draft.drying.end());
    return starts;
}

}  // namespace

std::vector<SafeStart> safeStarts(const Question& question, const Plan& plan)
{
    std::optional<PlannedNetwork> planned = plannedNetwork(question, plan);
    if (!planned)
        return {};
    const Draft& draft = planned->draft;
    endLaterThanNow(question, draft, planned->network);
    forgetHorizon(draft, planned->network);
    const bool held = plan->give.value_or(0) > 0 || draft.links.empty();
    SafeFor safeFor = held ? SafeFor::LengthsHeld : SafeFor::UsualLengths;
    auto starts = temporal::usualStarts(planned->network);
    if (!starts && held) {
        becomeUsual(planned->network);
        safeFor = SafeFor::UsualLengths;
        starts = temporal::usualStarts(planned->network);
    }
    if (!starts)
        return {};
    std::vector<SafeStart> safe;
    const std::map<TaskId, Moment> points = openStarts(draft);
    for (const PlannedTask& task : plan->tasks) {
        const auto found = points.find(task.id);
        if (task.state != TaskState::Open || found == points.end())
            continue;
        const Moment& start = found->second;
        const auto& [earliest, latest, ifQuick] = (*starts)[static_cast<std::size_t>(start.point)];
        const auto at = [&](Time time) { return draft.zero + Seconds{time + start.offset}; };
        SafeStart known{.task = task.id, .earliest = at(earliest)};
        known.safeFor = safeFor;
        known.hangsOnLengths = ifQuick < latest;
        if (latest < temporal::farTime)
            known.latest = at(latest);
        safe.push_back(known);
    }
    return safe;
}

}  // namespace core::stagger
