#include "tests/oracle/plan_from_starts.h"

#include "tests/oracle/figures.h"
#include "tests/oracle/numbering.h"

namespace oracle {
namespace {

/// In the order of the service.
PlanData unnumbered(const Question& question, const Starts& starts)
{
    PlanData plan;
    for (std::size_t head = 0; head < question.services.size(); ++head)
        for (const TaskId& id : core::stagger::tasksOf(question.services[head], head)) {
            const auto found = starts.find(id);
            if (found == starts.end()) {
                if (id.kind == TaskKind::Look)
                    plan.looksNotDue.push_back(id);
                continue;
            }
            PlannedTask task;
            task.id = id;
            task.start = found->second;
            task.end = task.start + core::stagger::usualLength(question.services[head], id);
            plan.tasks.push_back(task);
        }
    return plan;
}

}  // namespace

std::optional<PlanData> planFromStarts(const Question& question, const Starts& starts)
{
    PlanData plan = unnumbered(question, starts);
    if (!number(question, plan))
        return std::nullopt;
    const PlanView view{question, plan};
    plan.zones = zoneFigures(view);
    plan.worth = worthOf(view);
    plan.start = startOf(view);
    plan.end = endOf(view);
    plan.proved = true;
    plan.provedBound = plan.worth;
    return plan;
}

}  // namespace oracle
