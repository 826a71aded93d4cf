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

std::string briefly(const std::vector<service::Service>& services, const Change& change,
                    const measure::TimeZones& zones)
{
    const service::Service& service = services.at(change.task.service);
    std::string text =
        services.size() > 1 ? stagger::headName(services, change.task.service) + ": " : std::string{};
    text += stagger::taskName(service, change.task);
    if (!change.to)
        return text + " is no longer planned";
    const std::string to = clockTime(service, *change.to, zones);
    if (!change.from)
        return text + " is planned at " + to;
    if (change.stays())
        return text + " stays at " + to;
    return text + " moves to " + to + " (from " + clockTime(service, *change.from, zones) + ")";
}

}  // namespace

std::string clockTime(const service::Service& service, Instant moment, const measure::TimeZones& zones)
{
    return measure::clockText(zones.localAt(moment, service.timeZone));
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

std::string changesText(const std::vector<service::Service>& services, const std::vector<Change>& changes,
                        const measure::TimeZones& zones, std::size_t most)
{
    std::vector<Change> ordered = changes;
    // Water is what everything else waits for.
    std::ranges::stable_partition(ordered, [](const Change& change) { return isWater(change.task); });
    const std::size_t named = ordered.size() > most ? most : ordered.size();
    std::string text;
    for (std::size_t place = 0; place < named; ++place)
        text += (place == 0 ? "" : ", ") + briefly(services, ordered[place], zones);
    if (const std::size_t more = ordered.size() - named; more > 0)
        text += " and " + std::to_string(more) + " more";
    return text.empty() ? text : text + ".";
}

}  // namespace core::run
