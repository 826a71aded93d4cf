#include "tests/oracle/checker.h"

#include "tests/oracle/report.h"

#include <algorithm>

namespace oracle {

void Report::passedLimit(const std::string& rule, std::initializer_list<TaskId> about,
                         const std::string& what)
{
    const auto listed = [&](const core::stagger::BrokenLimit& broken) {
        return !broken.already && std::ranges::find(about, broken.task) != about.end();
    };
    if (m_view.question().mayBreakLimits && std::ranges::any_of(m_view.plan().broken, listed))
        return;
    wrong(rule, what);
}

bool anyOpen(std::initializer_list<const PlannedTask*> tasks)
{
    return std::ranges::any_of(tasks, [](const PlannedTask* task) { return task->state == TaskState::Open; });
}

bool overlap(const PlannedTask& a, const PlannedTask& b)
{
    return a.start < b.end && b.start < a.end;
}

namespace {

/// The other rules can only be read on tasks that exist.
bool onlyTasksOf(const Question& question, const PlanData& plan)
{
    return std::ranges::all_of(plan.tasks, [&](const PlannedTask& task) {
        return task.id.service < question.services.size()
            && core::stagger::isTaskOf(question.services[task.id.service], task.id);
    });
}

}  // namespace

std::vector<std::string> violations(const Question& question, const PlanData& plan)
{
    const PlanView view{question, plan};
    Report report{view};
    checkTasks(view, report);
    if (!onlyTasksOf(question, plan))
        return std::move(report).lines();
    checkZones(view, report);
    checkLooks(view, report);
    checkHands(view, report);
    checkBasins(view, report);
    checkCoats(view, report);
    checkFigures(view, report);
    checkGive(view, report);
    return std::move(report).lines();
}

}  // namespace oracle
