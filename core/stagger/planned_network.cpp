#include "core/stagger/planned_network.h"

#include "core/stagger/coat_by_coat.h"
#include "core/stagger/guarantee.h"
#include "core/stagger/hands_placing.h"
#include "core/stagger/order_network.h"
#include "core/stagger/planned_times.h"

#include <algorithm>

namespace core::stagger {
namespace {

/// The plan's question written down once more, with every start as planned and every
/// length that is uncertain as a link over its whole range.
Draft plannedDraft(const Question& question, const Plan& plan)
{
    Pins pins = pinsOf(plan);
    pins.keepPoints = true;
    const bool breaks =
        std::ranges::any_of(plan->broken, [](const BrokenLimit& limit) { return !limit.already; });
    Draft draft = draftOf(question, breaks ? Strictness::Break : Strictness::Keep, {}, pins, wholeGive);
    // All that could be decided is: what it is worth need not be proved again.
    draft.problem.softLags.clear();
    draft.problem.levels.clear();
    draft.problem.ranking.clear();
    const auto stands = [&draft](Point point, std::size_t number) {
        const auto time = static_cast<Time>(number);
        draft.problem.lags.push_back({*draft.numberZero, point, time});
        draft.problem.lags.push_back({point, *draft.numberZero, -time});
    };
    for (const Busy& busy : draft.busy) {
        const PlannedTask* task = plan.find(busy.id);
        if (task == nullptr)
            continue;
        if (busy.hands && task->hands)
            stands(*busy.hands, *task->hands);
        if (busy.basin && task->basin)
            stands(*busy.basin, *task->basin);
    }
    return draft;
}

/// Not all is in the plan: not where looks lie that are not due, nor some moments between coats.
std::optional<std::vector<Time>> searchedTimes(Draft& draft)
{
    draft.problem.lazyClauses = [&draft](const std::vector<Time>& times) {
        return brokenByCrew(draft, times);
    };
    draft.problem.place = handsPlacing(draft);
    temporal::Outcome outcome = temporal::search(draft.problem, {});
    draft.problem.lazyClauses = {};
    draft.problem.place = {};
    return outcome.best ? std::optional{std::move(outcome.best->times)} : std::nullopt;
}

/// The network of the plan's order, its links as wide as can be.
temporal::UncertainNetwork wholeNetwork(const Draft& draft, const std::vector<Time>& times)
{
    temporal::UncertainNetwork network = OrderNetwork{draft, times}.network();
    for (const BreakableLag& limit : draft.breakable) {
        const auto time = [&times](const Moment& moment) {
            return times[static_cast<std::size_t>(moment.point)] + moment.offset;
        };
        const Time planned = time(limit.later) - time(limit.earlier);
        network.lags.push_back(lagBetween(limit.earlier, limit.later, std::max(limit.most, planned)));
    }
    return network;
}

/// With links as wide as can be.
std::optional<PlannedNetwork> wholePlannedNetwork(const Question& question, const Plan& plan)
{
    PlannedNetwork planned{plannedDraft(question, plan), {}, {}};
    std::optional<std::vector<Time>> times = plannedTimes(planned.draft);
    if (!times && !planned.draft.impossible)
        times = searchedTimes(planned.draft);
    if (!times)
        return std::nullopt;
    planned.times = *std::move(times);
    planned.network = wholeNetwork(planned.draft, planned.times);
    return planned;
}

}  // namespace

std::vector<temporal::Uncertain> linksAt(const Draft& draft, int give)
{
    std::vector<temporal::Uncertain> links = draft.links;
    for (temporal::Uncertain& link : links) {
        const service::Application held =
            covered({Seconds{link.least}, Seconds{link.usual}, Seconds{link.most}}, give);
        link.least = static_cast<Time>(held.quickest.count());
        link.most = static_cast<Time>(held.slowest.count());
    }
    return links;
}

std::optional<PlannedNetwork> plannedNetwork(const Question& question, const Plan& plan)
{
    std::optional<PlannedNetwork> planned = wholePlannedNetwork(question, plan);
    if (planned)
        planned->network.links = linksAt(planned->draft, plan->give.value_or(0) / 10);
    return planned;
}

std::optional<int> ownGive(const Question& question, const Plan& plan)
{
    const std::optional<PlannedNetwork> planned = wholePlannedNetwork(question, plan);
    if (!planned || !planned->draft.breakable.empty())
        return std::nullopt;
    const auto holds = [&planned](int give) {
        temporal::UncertainNetwork network = planned->network;
        network.links = linksAt(planned->draft, give);
        return temporal::objectionsTo(network, planned->times, 1).empty();
    };
    return greatestHeld(0, holds);
}

}  // namespace core::stagger
