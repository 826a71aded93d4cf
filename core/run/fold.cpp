#include "core/run/amend/revisions.h"
#include "core/run/run.h"
#include "core/run/standing.h"
#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

using stagger::TaskProgress;

TaskProgress& entryFor(Progress& progress, const TaskId& id, Instant start)
{
    std::erase(progress.dropped, id);
    const auto found = std::ranges::find(progress.tasks, id, &TaskProgress::id);
    if (found != progress.tasks.end())
        return *found;
    return progress.tasks.emplace_back(TaskProgress{.id = id, .start = start, .end = {}, .plannedEnd = {}});
}

/// A start that was put right may lie past the end that goes with it; no task lasts less than nothing.
void start(Progress& progress, const Fact& fact)
{
    TaskProgress& entry = entryFor(progress, fact.task, fact.happened);
    entry.start = fact.happened;
    if (entry.end)
        entry.end = std::max(*entry.end, entry.start);
}

/// What ended must have begun: where nobody said when, its usual length before.
void finish(const std::vector<Service>& services, Progress& progress, const Fact& fact)
{
    const Seconds usual = stagger::usualLength(services[fact.task.service], fact.task);
    TaskProgress& entry = entryFor(progress, fact.task, fact.happened - usual);
    entry.end = std::max(fact.happened, entry.start);
}

/// A look is a moment. The first time counts for the plan; later ones were asked for beside it.
void look(Progress& progress, const Fact& fact)
{
    TaskProgress& entry = entryFor(progress, fact.task, fact.happened);
    if (!entry.end)
        entry.end = std::max(fact.happened, entry.start);
}

/// What has begun cannot be left out: what is on the hair stays watched.
void drop(Progress& progress, const Fact& fact)
{
    if (!progress.find(fact.task) && !progress.isDropped(fact.task))
        progress.dropped.push_back(fact.task);
}

void take(const std::vector<Service>& services, Progress& progress, const Fact& fact)
{
    switch (fact.kind) {
    case FactKind::Started: return start(progress, fact);
    case FactKind::Finished: return finish(services, progress, fact);
    case FactKind::Looked: return look(progress, fact);
    case FactKind::Dropped: return drop(progress, fact);
    case FactKind::Undone:
    case FactKind::Moved:
    case FactKind::Amended:
    case FactKind::TurnedOut:
    case FactKind::Noted:
    case FactKind::Ended: return;
    }
}

/// A bowl that is being applied has been mixed, whether or not somebody said so.
void settleBowls(const std::vector<Service>& services, Progress& progress)
{
    const std::vector<TaskProgress> told = progress.tasks;
    for (const TaskProgress& application : told) {
        if (application.id.kind != TaskKind::Apply)
            continue;
        TaskId mix = application.id;
        mix.kind = TaskKind::Mix;
        mix.item = zoneOf(services, application.id).bowl;
        if (!exists(services, mix))
            continue;
        const auto mixing = std::ranges::find(progress.tasks, mix, &TaskProgress::id);
        if (mixing == progress.tasks.end()) {
            if (!progress.isDropped(mix))
                progress.dropped.push_back(mix);
        } else if (!mixing->end) {
            mixing->end = std::max(mixing->start, application.start);
        }
    }
}

void expectEnds(const std::vector<Service>& services, Progress& progress)
{
    for (TaskProgress& task : progress.tasks) {
        if (!task.end)
            task.plannedEnd = task.start + stagger::usualLength(services[task.id.service], task.id);
    }
}

}  // namespace

stagger::Progress progressOf(const Setup& setup, std::span<const Fact> facts)
{
    const std::vector<Service>& services = servicesAt(setup, facts);
    Progress progress;
    for (const Fact& fact : standingFacts(facts)) {
        // Heat is nothing that the planner could plan around: see core/run/heat.h.
        if (exists(services, fact.task) && fact.task.kind != TaskKind::Heat)
            take(services, progress, fact);
    }
    settleBowls(services, progress);
    expectEnds(services, progress);
    std::ranges::sort(progress.tasks, {}, &TaskProgress::id);
    std::ranges::sort(progress.dropped);
    return progress;
}

}  // namespace core::run
