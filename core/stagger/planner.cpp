#include "core/stagger/plan.h"

#include "core/stagger/coat_by_coat.h"
#include "core/stagger/draft.h"
#include "core/stagger/plan_builder.h"

namespace core::stagger {
temporal::Outcome solve(Draft& draft, const temporal::Limits& limits)
{
    draft.problem.lazyClauses = [&draft](const std::vector<Time>& times) {
        return brokenByCrew(draft, times);
    };
    return temporal::search(draft.problem, limits);
}

tl::expected<Plan, NoPlan> plan(const Question& question, const Budget& budget)
{
    const temporal::Limits limits{.conflicts = budget.conflicts, .stop = budget.stop};
    if (std::optional<Plan> plan = planCoatByCoat(question, limits))
        return *std::move(plan);
    for (const Strictness strictness : {Strictness::Keep, Strictness::Break}) {
        Draft draft = draftOf(question, strictness);
        if (draft.impossible)
            return tl::unexpected{
                NoPlan{.demands = {}, .minimal = false, .stopped = false, .text = *draft.impossible}};
        const temporal::Outcome outcome = solve(draft, limits);
        if (outcome.best)
            return PlanBuilder::build(draft, outcome);
        if (!outcome.complete) {
            return tl::unexpected{NoPlan{.demands = {},
                                         .minimal = false,
                                         .stopped = true,
                                         .text = "The search was stopped before anything was found."}};
        }
        if (!question.mayBreakLimits)
            break;
    }
    return tl::unexpected{reasonFor(question, budget)};
}

}  // namespace core::stagger
