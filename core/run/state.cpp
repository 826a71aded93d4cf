#include "core/run/amend/revisions.h"
#include "core/run/changes.h"
#include "core/run/extra_looks.h"
#include "core/run/heat.h"
#include "core/run/lanes.h"
#include "core/run/limits.h"
#include "core/run/planning.h"
#include "core/run/prompts.h"
#include "core/run/standing.h"
#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

bool wasEnded(std::span<const Fact> facts)
{
    const std::vector<Fact> standing = standingFacts(facts);
    return std::ranges::find(standing, FactKind::Ended, &Fact::kind) != standing.end();
}

/// Done, left out or without an object. Drying is done when it is dry, not when hands leave it.
bool isOver(const std::vector<Service>& services, const Progress& progress, const TaskId& id, Instant now)
{
    const auto* task = progress.find(id);
    if (!task)
        return isPointless(services, progress, id);
    const bool dries = id.kind == TaskKind::Dry;
    const Seconds unattended = dries ? services[id.service].coats[id.coat].dryUnattended : Seconds{0};
    return task->end && *task->end + unattended <= now;
}

bool allIsOver(const std::vector<Service>& services, const Progress& progress, Instant now)
{
    const auto over = [&](const TaskId& id) { return isOver(services, progress, id, now); };
    for (std::size_t index = 0; index < services.size(); ++index) {
        if (!std::ranges::all_of(stagger::tasksOf(services[index], index), over))
            return false;
    }
    // A zone that is rinsed alone is not among the tasks of its service.
    return std::ranges::all_of(progress.tasks,
                               [](const stagger::TaskProgress& task) { return task.end.has_value(); });
}

/// Against the plan that stood when the last fact was told, before any time went by on it.
std::vector<Change> changesAt(PlanHistory& history, std::size_t count, Instant now)
{
    const Planning& after = history.inForce(now);
    const Planning& before = history.afterFacts(count == 0 ? 0 : count - 1);
    if (!before.plan || !after.plan || after.pending)
        return {};
    std::vector<Change> changes = changesBetween(*before.plan, *after.plan, after.progress);
    // What came with a change that was taken back has no name any more.
    std::erase_if(changes, [&](const Change& change) { return !exists(history.services(), change.task); });
    return changes;
}

}  // namespace

State stateAt(const Setup& setup, std::span<const Fact> facts, Instant now)
{
    PlanHistory history{setup, facts};
    const std::vector<Service>& services = history.services();
    // Without a revision they are the same, and need not be copied each second.
    const std::vector<Service> limited =
        setup.revisions.empty() ? std::vector<Service>{} : withFirstLimits(setup, services);
    const std::vector<Service>& watched = setup.revisions.empty() ? services : limited;
    const Planning& planning = history.inForce(now);
    State state{.now = now, .progress = planning.progress, .plan = planning.plan, .reason = planning.reason};
    state.beingPlanned = planning.pending;
    state.finished = wasEnded(facts) || allIsOver(services, planning.progress, now);
    state.changes = changesAt(history, facts.size(), now);
    state.lanes = lanesAt(watched, planning.progress, planning.plan ? &*planning.plan : nullptr, now);
    nameTones(state.lanes, facts);
    if (wasEnded(facts))
        return state;
    state.extraLooks = extraLooksOf(setup, facts);
    state.heats = heatsOf(services, planning.progress, facts);
    state.prompts = promptsAt(history, state.extraLooks, state.heats, now);
    state.limits = limitsAt(watched, planning.progress, state.prompts, now);
    nameNextLooks(state.lanes, state.prompts);
    return state;
}

}  // namespace core::run
