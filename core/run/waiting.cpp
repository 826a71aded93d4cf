#include "core/run/waiting.h"

#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

bool isAfter(const service::Zone& zone, const TaskId& other)
{
    return other.kind == TaskKind::Apply && std::ranges::any_of(zone.after, [&](const service::After& after) {
               return after.zone == other.item;
           });
}

/// What must be over before the water: applying to the zones that go under it, and their late jobs.
bool holdsUpWater(const std::vector<Service>& services, const Progress& progress, const TaskId& rinse,
                  const TaskId& running)
{
    if (running.kind != TaskKind::Apply && running.kind != TaskKind::Late)
        return false;
    const std::vector<TaskId> zones = zonesUnder(services, progress, rinse);
    return std::ranges::find(zones, applyOf(running)) != zones.end();
}

/// Whether `id` builds on `running`, both tasks of one coat.
bool buildsOn(const std::vector<Service>& services, const Progress& progress, const TaskId& id,
              const TaskId& running)
{
    switch (id.kind) {
    case TaskKind::Apply: {
        const service::Zone& zone = zoneOf(services, id);
        return isAfter(zone, running) || (running.kind == TaskKind::Mix && running.item == zone.bowl);
    }
    case TaskKind::Look:
    case TaskKind::Late: return running == applyOf(id);
    case TaskKind::Rinse:
    case TaskKind::RinseAlone: return holdsUpWater(services, progress, id, running);
    case TaskKind::Dry: return isWater(running);
    case TaskKind::Assess: return isWater(running) || running.kind == TaskKind::Dry;
    case TaskKind::Mix:
    case TaskKind::Heat: return false;
    }
    return false;
}

bool keepsItsHands(const stagger::Plan* plan, const TaskId& id, const TaskId& running)
{
    const bool canLeave = id.kind == TaskKind::Look || isWater(id);
    const auto* planned = plan && !canLeave ? plan->find(id) : nullptr;
    const auto* busy = planned ? plan->find(running) : nullptr;
    return busy && busy->hands && busy->hands == planned->hands;
}

}  // namespace

std::optional<TaskId> whatItWaitsFor(const std::vector<Service>& services, const Progress& progress,
                                     const stagger::Plan* plan, const TaskId& id)
{
    for (const stagger::TaskProgress& task : progress.tasks) {
        if (task.end)
            continue;
        const bool sameHead = task.id.service == id.service;
        const bool earlierCoat = sameHead && task.id.coat < id.coat;
        const bool sameCoat = sameHead && task.id.coat == id.coat;
        if (earlierCoat || (sameCoat && buildsOn(services, progress, id, task.id))
            || keepsItsHands(plan, id, task.id))
            return task.id;
    }
    return {};
}

}  // namespace core::run
