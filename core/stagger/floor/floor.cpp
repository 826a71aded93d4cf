#include "core/stagger/floor/floor.h"

#include "core/stagger/coat_by_coat.h"
#include "core/stagger/floor/first_plan.h"
#include "core/stagger/floor/improver.h"
#include "core/stagger/guarantee.h"
#include "core/stagger/head_name.h"
#include "core/stagger/plan_builder.h"
#include "core/stagger/planned_network.h"

#include <algorithm>

namespace core::stagger::floor {
namespace {

bool isTied(const service::Service& service)
{
    return service.notBefore || service.readyBy
        || std::ranges::any_of(service.coats, [](const service::Coat& coat) {
               return std::ranges::any_of(coat.groups, [](const service::RinseGroup& group) {
                   return group.waterEarliest || group.waterLatest;
               });
           });
}

/// Heads that may start whenever they like start from where the whole question counts,
/// also when they are looked at on their own.
Question anchored(const Question& question)
{
    Question copy = question;
    if (question.now || std::ranges::all_of(question.services, isTied))
        return copy;
    const Instant zero = draftOf(question, Strictness::OnlyFits).zero;
    for (service::Service& service : copy.services) {
        if (!isTied(service))
            service.notBefore = zero;
    }
    return copy;
}

/// Why one head does not fit, even on its own; nothing where that is not known.
std::optional<NoPlan> reasonOfHead(const Question& question, std::size_t head, const Budget& budget)
{
    const Question own = alone(question, head);
    Draft draft = draftOf(own, Strictness::OnlyFits);
    const temporal::Outcome outcome = solve(draft, {.conflicts = budget.conflicts, .stop = budget.stop});
    if (outcome.best || !outcome.complete)
        return std::nullopt;
    NoPlan reason = reasonFor(own, budget);
    reason.text = headName(question.services, head) + ": " + reason.text;
    for (Demand& demand : reason.demands) {
        demand.what = headName(question.services, head) + ", " + demand.what;
        if (demand.task)
            demand.task->service = head;
    }
    return reason;
}

/// The plan, saying how far its own order holds. That no other holds further is only known where it holds for
/// all lengths.
Plan withOwnGive(const Question& question, Plan plan)
{
    const bool breaks =
        std::ranges::any_of(plan->broken, [](const BrokenLimit& limit) { return !limit.already; });
    if (!question.guarantee || breaks || !hasUncertainLengths(question))
        return plan;
    const int give = ownGive(question, plan).value_or(0);
    return PlanBuilder::withOwnGive(question, std::move(plan), give, give == wholeGive);
}

}  // namespace

bool isLarge(const Question& question)
{
    std::size_t tasks = 0;
    for (std::size_t head = 0; head < question.services.size(); ++head)
        tasks += tasksOf(question.services[head], head).size();
    return question.services.size() > 1 && tasks > mostTasksTogether + question.progress.tasks.size();
}

tl::expected<Plan, NoPlan> planFloor(const Question& asked, const Budget& budget,
                                     const std::optional<Plan>& known)
{
    const Question question = anchored(asked);
    Meter meter{budget};
    Heads all(question.services.size());
    std::optional<Standing> standing;
    if (known) {
        for (std::size_t head = 0; head < all.size(); ++head)
            all[head] = head;
        standing.emplace(all.size());
        put(*known, all, *standing);
    } else {
        FirstPlan first{question, meter};
        standing = first.make();
        if (!standing && first.hopeless()) {
            if (std::optional<NoPlan> reason = reasonOfHead(question, *first.hopeless(), budget))
                return tl::unexpected{*std::move(reason)};
        }
    }
    if (!standing)
        return tl::unexpected{NoPlan{.demands = {},
                                     .minimal = false,
                                     .stopped = true,
                                     .text = "No place was found for everybody. It is not known whether "
                                             "there is none."}};
    Improver improver{question, budget, meter, *std::move(standing)};
    if (known)
        improver.raiseBound((*known)->provedBound);
    improver.run();
    Plan found = withOwnGive(question, improver.plan());
    // What was known may hold further, which comes before all else.
    if (known && found->give.value_or(0) < (*known)->give.value_or(0))
        return *known;
    return found;
}

}  // namespace core::stagger::floor
