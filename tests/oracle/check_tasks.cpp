#include "tests/oracle/facts.h"
#include "tests/oracle/report.h"

#include <algorithm>
#include <set>

// That the plan holds the tasks of the service, each once, as long as it takes, and what has happened as it
// happened.

namespace oracle {
namespace {

/// Looks are checked with rule 3; a group that everybody has left needs no rinse.
bool mustBeThere(const PlanView& view, const TaskId& id)
{
    const service::Coat& coat = view.head(id.service).coats[id.coat];
    if (view.question().progress.isDropped(id) || id.kind == TaskKind::Look)
        return false;
    const auto leftOrGivenUp = [&](std::size_t zone) {
        const TaskId alone{
            .service = id.service, .coat = id.coat, .kind = TaskKind::RinseAlone, .item = zone};
        return view.isGivenUp(id.service, id.coat, zone) || view.find(alone) != nullptr;
    };
    if (id.kind == TaskKind::Apply)
        return !view.isGivenUp(id.service, id.coat, id.item);
    const auto isUsed = [&](auto&& uses) {
        for (std::size_t zone = 0; zone < coat.zones.size(); ++zone)
            if (uses(coat.zones[zone]) && !leftOrGivenUp(zone))
                return true;
        return false;
    };
    if (id.kind == TaskKind::Rinse)
        return isUsed([&](const service::Zone& zone) { return zone.group == id.item; });
    if (id.kind == TaskKind::Mix)
        return isUsed([&](const service::Zone& zone) { return zone.bowl == id.item; });
    if (id.kind == TaskKind::Late)
        return stands(view.question(), id);
    return true;
}

void checkPresence(const PlanView& view, Report& report)
{
    for (std::size_t head = 0; head < view.question().services.size(); ++head)
        for (const TaskId& id : core::stagger::tasksOf(view.head(head), head))
            if (mustBeThere(view, id) && view.find(id) == nullptr)
                report.wrong("tasks", view.nameOf(id) + " is missing");
    std::set<TaskId> seen;
    for (const PlannedTask& task : view.plan().tasks) {
        const bool exists = task.id.service < view.question().services.size()
            && core::stagger::isTaskOf(view.head(task.id.service), task.id);
        if (!exists)
            report.wrong("tasks", view.nameOf(task.id) + " is no task of the service");
        if (!seen.insert(task.id).second)
            report.wrong("tasks", view.nameOf(task.id) + " is there twice");
        if (view.question().progress.isDropped(task.id))
            report.wrong("tasks", view.nameOf(task.id) + " was dropped");
    }
    for (const core::stagger::TaskProgress& fact : view.question().progress.tasks)
        if (view.find(fact.id) == nullptr)
            report.wrong("facts", view.nameOf(fact.id) + " has happened but is missing");
}

void checkFact(const PlanView& view, const PlannedTask& task, Report& report)
{
    const core::stagger::TaskProgress* fact = view.question().progress.find(task.id);
    const TaskState state = fact->end ? TaskState::Done : TaskState::Running;
    if (task.state != state)
        report.wrong("facts", view.nameOf(task.id) + " has the wrong state");
    if (task.start != fact->start)
        report.wrong("facts", view.nameOf(task.id) + " did not start then");
    if (task.end != endOfFact(view.question(), *fact))
        report.wrong("facts", view.nameOf(task.id) + " does not end then");
    if (state == TaskState::Done && (task.hands || task.basin))
        report.wrong("facts", view.nameOf(task.id) + " is past and takes hands or a basin");
}

void checkOpen(const PlanView& view, const PlannedTask& task, Report& report)
{
    if (task.state != TaskState::Open)
        report.wrong("facts", view.nameOf(task.id) + " has not started yet");
    if (task.id.kind == TaskKind::RinseAlone)
        report.wrong("tasks", view.nameOf(task.id) + " was chosen by nobody");
    if (task.end - task.start != core::stagger::usualLength(view.head(task.id.service), task.id))
        report.wrong("lengths", view.nameOf(task.id) + " has not its usual length");
}

}  // namespace

void checkTasks(const PlanView& view, Report& report)
{
    checkPresence(view, report);
    for (const PlannedTask& task : view.plan().tasks) {
        if (task.id.service >= view.question().services.size()
            || !core::stagger::isTaskOf(view.head(task.id.service), task.id))
            continue;
        if (view.question().progress.find(task.id) != nullptr)
            checkFact(view, task, report);
        else
            checkOpen(view, task, report);
    }
}

}  // namespace oracle
