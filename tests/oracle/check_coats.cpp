#include "tests/oracle/report.h"

#include <algorithm>

// Rules 8 and 9, and where the basin is booked.

namespace oracle {
namespace {

void checkBooking(const PlanView& view, const PlannedTask& task, Report& report)
{
    if (task.id.kind != TaskKind::Rinse || task.state != TaskState::Open)
        return;
    const service::RinseGroup& group = view.head(task.id.service).coats[task.id.coat].groups[task.id.item];
    if (group.waterEarliest && task.start < *group.waterEarliest)
        report.passedLimit("booking", {task.id}, view.nameOf(task.id) + " starts before the basin is booked");
    if (group.waterLatest && task.start > *group.waterLatest)
        report.passedLimit("booking", {task.id}, view.nameOf(task.id) + " starts after the basin is booked");
}

/// Within a coat: rinses, then drying, then assessing.
void checkFinish(const PlanView& view, const PlannedTask& task, Report& report)
{
    if (task.id.kind != TaskKind::Dry && task.id.kind != TaskKind::Assess)
        return;
    for (const PlannedTask* earlier : view.tasksOfCoat(task.id.service, task.id.coat)) {
        const bool rinse = earlier->id.kind == TaskKind::Rinse || earlier->id.kind == TaskKind::RinseAlone;
        const bool dried = earlier->id.kind == TaskKind::Dry && task.id.kind == TaskKind::Assess;
        if ((rinse || dried) && anyOpen({earlier, &task}) && task.start < view.fullEnd(*earlier))
            report.wrong("rule 8",
                         view.nameOf(task.id) + " starts before the end of " + view.nameOf(earlier->id));
    }
}

bool anyOpenIn(const std::vector<const PlannedTask*>& tasks)
{
    return std::ranges::any_of(tasks, [](const PlannedTask* task) { return anyOpen({task}); });
}

void checkGap(const PlanView& view, std::size_t head, std::size_t coat, Report& report)
{
    const service::Coat& data = view.head(head).coats[coat];
    const PlannedTask* first = firstApplied(view, head, coat + 1);
    if (first == nullptr || first->state != TaskState::Open)
        return;
    const Seconds gap = first->start - view.coatEnd(head, coat);
    if (data.gapLeast && gap < *data.gapLeast)
        report.passedLimit("rule 8", {first->id}, "too short a gap after coat " + std::to_string(coat));
    if (data.gapMost && gap > *data.gapMost)
        report.passedLimit("rule 8", {first->id}, "too long a gap after coat " + std::to_string(coat));
}

void checkCoatOrder(const PlanView& view, std::size_t head, std::size_t coat, Report& report)
{
    const auto earlier = view.tasksOfCoat(head, coat);
    if (earlier.empty())
        return;
    for (const PlannedTask* task : view.tasksOfCoat(head, coat + 1))
        if ((anyOpen({task}) || anyOpenIn(earlier)) && task->start < view.coatEnd(head, coat))
            report.wrong("rule 8", view.nameOf(task->id) + " starts before the coat before it is over");
    checkGap(view, head, coat, report);
}

/// A promise is listed as broken once, at a task that ends last.
bool isListedLater(const PlanView& view, const PlannedTask& task)
{
    return std::ranges::any_of(view.plan().broken, [&](const core::stagger::BrokenLimit& broken) {
        const PlannedTask* later = view.find(broken.task);
        return broken.task.service == task.id.service && later != nullptr
            && view.fullEnd(*later) >= view.fullEnd(task);
    });
}

void checkPromises(const PlanView& view, const PlannedTask& task, Report& report)
{
    if (task.state != TaskState::Open)
        return;
    const auto notBefore = view.notBefore(task.id.service);
    if (notBefore && task.start < *notBefore)
        report.wrong("rule 9", view.nameOf(task.id) + " starts before it may");
    const auto aimedEnd = view.aimedEnd(task.id.service);
    if (view.question().mayBreakLimits && isListedLater(view, task))
        return;
    if (aimedEnd && view.fullEnd(task) > *aimedEnd)
        report.passedLimit("rule 9", {task.id},
                           view.nameOf(task.id) + " ends after the promise less the buffer");
}

}  // namespace

void checkCoats(const PlanView& view, Report& report)
{
    for (std::size_t head = 0; head < view.question().services.size(); ++head) {
        for (const PlannedTask* task : view.tasksOfHead(head)) {
            if (!core::stagger::isTaskOf(view.head(head), task->id))
                continue;
            checkBooking(view, *task, report);
            checkFinish(view, *task, report);
            checkPromises(view, *task, report);
        }
        for (std::size_t coat = 0; coat + 1 < view.head(head).coats.size(); ++coat)
            checkCoatOrder(view, head, coat, report);
    }
}

}  // namespace oracle
