#include "core/stagger/plan.h"

#include "core/stagger/coat_by_coat.h"
#include "core/stagger/draft.h"
#include "core/stagger/floor/floor.h"
#include "core/stagger/guarantee.h"
#include "core/stagger/hands_placing.h"
#include "core/stagger/plan_builder.h"

#include <algorithm>

namespace core::stagger {
temporal::Outcome solve(Draft& draft, const temporal::Limits& limits)
{
    draft.problem.lazyClauses = [&draft](const std::vector<Time>& times) {
        std::vector<temporal::Clause> broken = brokenByCrew(draft, times);
        return broken.empty() ? brokenByLengths(draft, times) : broken;
    };
    draft.problem.place = handsPlacing(draft);
    return temporal::search(draft.problem, limits);
}

namespace {

Tried attempt(const Question& question, int give, bool onlyFits, const temporal::Limits& limits)
{
    CoatByCoat coats = planCoatByCoat(question, limits, give);
    if (coats.plan || coats.nothingFits)
        return {.plan = std::move(coats.plan), .complete = true, .conflicts = 0};
    Draft draft = draftOf(question, onlyFits ? Strictness::OnlyFits : Strictness::Keep, {}, {}, give);
    const temporal::Outcome outcome = solve(draft, limits);
    Tried tried{.plan = {}, .complete = outcome.complete, .conflicts = outcome.conflicts};
    if (outcome.best)
        tried.plan = PlanBuilder::build(draft, outcome);
    return tried;
}

/// The best of the plans with the greatest give, where something is uncertain.
Plan withGreatestGive(const Question& question, Plan usual, const Budget& budget)
{
    if (!question.guarantee || !hasUncertainLengths(question))
        return usual;
    // Where the best plan of all holds for all lengths, no other need be looked for.
    if (usual->proved) {
        const temporal::Limits limits{.conflicts = budget.conflicts, .stop = budget.stop};
        if (std::optional<Plan> whole = settled(question, pinsOf(usual), limits, wholeGive))
            return PlanBuilder::withGive(*std::move(whole), wholeGive, true);
    }
    return greatestGive(
        std::move(usual),
        [&](int give, bool onlyFits, std::uint64_t conflicts) {
            return attempt(question, give, onlyFits, {.conflicts = conflicts, .stop = budget.stop});
        },
        budget.conflicts);
}

/// All heads at once, exactly.
tl::expected<Plan, NoPlan> planTogether(const Question& question, const Budget& budget)
{
    const temporal::Limits limits{.conflicts = budget.conflicts, .stop = budget.stop};
    if (std::optional<Plan> plan = planCoatByCoat(question, limits).plan)
        return withGreatestGive(question, *std::move(plan), budget);
    for (const Strictness strictness : {Strictness::Keep, Strictness::Break}) {
        Draft draft = draftOf(question, strictness);
        if (draft.impossible)
            return tl::unexpected{
                NoPlan{.demands = {}, .minimal = false, .stopped = false, .text = *draft.impossible}};
        const temporal::Outcome outcome = solve(draft, limits);
        if (outcome.best) {
            Plan plan = PlanBuilder::build(draft, outcome);
            return strictness == Strictness::Keep ? withGreatestGive(question, std::move(plan), budget)
                                                  : std::move(plan);
        }
        if (!outcome.complete) {
            return tl::unexpected{
                NoPlan{.demands = {},
                       .minimal = false,
                       .stopped = true,
                       .text = Sentence::worded("The search was stopped before anything was found.")}};
        }
        if (!question.mayBreakLimits)
            break;
    }
    return tl::unexpected{reasonFor(question, budget)};
}

/// Several heads that are not proved within this are better made better one after the other.
constexpr std::uint64_t forSeveralHeads = 5'000;

bool isSettled(const tl::expected<Plan, NoPlan>& answer)
{
    return answer ? (*answer)->proved : !answer.error().stopped;
}

}  // namespace

tl::expected<Plan, NoPlan> plan(const Question& question, const Budget& budget)
{
    if (question.services.size() < 2)
        return planTogether(question, budget);
    if (floor::isLarge(question))
        return floor::planFloor(question, budget);
    Budget rest = budget;
    rest.conflicts = std::min(budget.conflicts, forSeveralHeads);
    auto together = planTogether(question, rest);
    if (isSettled(together) || budget.conflicts <= forSeveralHeads || (budget.stop && budget.stop()))
        return together;
    rest.conflicts = budget.conflicts - forSeveralHeads;
    auto better = floor::planFloor(question, rest, together ? std::optional{*together} : std::nullopt);
    if (!better && better.error().stopped)
        return planTogether(question, rest);
    return better;
}

}  // namespace core::stagger
