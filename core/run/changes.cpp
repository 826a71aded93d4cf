#include "core/run/changes.h"

#include "core/stagger/head_name.h"

#include <algorithm>

namespace core::run {
namespace {

std::optional<Instant> openStart(const stagger::Plan& plan, const TaskId& id)
{
    const auto* task = plan.find(id);
    if (!task || task->state != stagger::TaskState::Open)
        return {};
    return task->start;
}

/// Those that moved, came or went; and the water that stays where something else did not.
std::vector<Change> worthSaying(const std::vector<Change>& all)
{
    std::vector<Change> said;
    const bool anyMoved = std::ranges::any_of(all, [](const Change& change) { return !change.stays(); });
    std::ranges::copy_if(all, std::back_inserter(said), [&](const Change& change) {
        return anyMoved && (!change.stays() || isWater(change.task));
    });
    return said;
}

Sentence briefly(const std::vector<service::Service>& services, const Change& change,
                 const measure::TimeZones& zones)
{
    const service::Service& service = services.at(change.task.service);
    Sentence task = stagger::taskName(service, change.task);
    if (services.size() > 1)
        task = Sentence::worded("%1: %2", stagger::headName(services, change.task.service), task);
    if (!change.to)
        return Sentence::worded("%1 is no longer planned", task);
    const measure::LocalTime to = clockTime(service, *change.to, zones);
    if (!change.from)
        return Sentence::worded("%1 is planned at %2", task, to);
    if (change.stays())
        return Sentence::worded("%1 stays at %2", task, to);
    return Sentence::worded("%1 moves to %2 (from %3)", task, to, clockTime(service, *change.from, zones));
}

}  // namespace

measure::LocalTime clockTime(const service::Service& service, Instant moment, const measure::TimeZones& zones)
{
    return zones.localAt(moment, service.timeZone);
}

bool Change::stays() const
{
    if (!from || !to)
        return from == to;
    using std::chrono::minutes;
    return std::chrono::floor<minutes>(*from) == std::chrono::floor<minutes>(*to);
}

std::vector<Change> changesBetween(const stagger::Plan& before, const stagger::Plan& after,
                                   const stagger::Progress& progress)
{
    std::vector<TaskId> tasks;
    for (const stagger::Plan* plan : {&after, &before}) {
        for (const stagger::PlannedTask& task : (*plan)->tasks)
            tasks.push_back(task.id);
    }
    std::vector<Change> all;
    for (const TaskId& id : tasks) {
        const bool known = std::ranges::find(all, id, &Change::task) != all.end();
        const Change change{.task = id, .from = openStart(before, id), .to = openStart(after, id)};
        const bool isOpen = (change.from || change.to) && !progress.find(id);
        if (isOpen && !known && id.kind != stagger::TaskKind::Look)
            all.push_back(change);
    }
    return worthSaying(all);
}

Sentence changesText(const std::vector<service::Service>& services, const std::vector<Change>& changes,
                     const measure::TimeZones& zones, std::size_t most)
{
    std::vector<Change> ordered = changes;
    // Water is what everything else waits for.
    std::ranges::stable_partition(ordered, [](const Change& change) { return isWater(change.task); });
    const std::size_t named = ordered.size() > most ? most : ordered.size();
    if (ordered.empty())
        return {};
    std::vector<Sentence> said;
    for (std::size_t place = 0; place < named; ++place)
        said.push_back(briefly(services, ordered[place], zones));
    const Sentence all = Sentence::joined(said, ", ");
    if (const std::size_t more = ordered.size() - named; more > 0)
        return Sentence::worded("%1 and %2 more.", all, more);
    return Sentence::worded("%1.", all);
}

}  // namespace core::run
