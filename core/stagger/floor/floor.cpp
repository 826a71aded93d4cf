#include "core/stagger/floor/floor.h"

#include "core/stagger/coat_by_coat.h"
#include "core/stagger/floor/first_plan.h"
#include "core/stagger/floor/holding.h"
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
        || std::ranges::any_of(service.coats, &service::Coat::namesTimes);
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
    reason.text = Sentence::worded("%1: %2", headName(question.services, head), reason.text);
    for (Demand& demand : reason.demands) {
        demand.what = Sentence::worded("%1, %2", headName(question.services, head), demand.what);
        if (demand.task)
            demand.task->service = head;
    }
    return reason;
}

/// Whether it is asked, and not known already, how far the plan holds.
bool asksForGive(const Question& question, const Plan& plan)
{
    const bool breaks =
        std::ranges::any_of(plan->broken, [](const BrokenLimit& limit) { return !limit.already; });
    return question.guarantee && !breaks && hasUncertainLengths(question);
}

/// The plan, saying how far its own order holds. That no other holds further is only known where it holds for
/// all lengths.
Plan withOwnGive(const Question& question, Plan plan)
{
    if (!asksForGive(question, plan))
        return plan;
    const int give = ownGive(question, plan).value_or(0);
    return PlanBuilder::withOwnGive(question, std::move(plan), give, give == wholeGive);
}

/// What a search begins with.
struct Beginning {
    Standing standing;
    std::optional<Plan> known;
    std::uint64_t conflicts = 0;  ///< What it cost.
};

tl::expected<Beginning, NoPlan> begin(const Question& question, const Budget& budget, Meter& meter,
                                      const std::optional<Plan>& known)
{
    if (known) {
        Heads all;
        for (std::size_t head = 0; head < question.services.size(); ++head)
            all.push_back(head);
        Beginning beginning{Standing(all.size()), known};
        put(*known, all, beginning.standing);
        return beginning;
    }
    const std::uint64_t left = meter.left();
    FirstPlan first{question, meter};
    if (std::optional<Standing> standing = first.make())
        return Beginning{*std::move(standing), {}, left - meter.left()};
    if (first.hopeless()) {
        if (std::optional<NoPlan> reason = reasonOfHead(question, *first.hopeless(), budget))
            return tl::unexpected{*std::move(reason)};
    }
    return tl::unexpected{NoPlan{.demands = {},
                                 .minimal = false,
                                 .stopped = true,
                                 .text = Sentence::worded("No place was found for everybody. It is not known "
                                                          "whether there is none.")}};
}

/// For an order that is to hold further there is some more time than for the first plan.
std::uint64_t forFurther(const Beginning& beginning)
{
    return 4 * beginning.conflicts + 1'000;
}

/// The plan that holds furthest of those that are found; nothing where none has any give.
std::optional<Plan> furthest(const Question& question, const Budget& budget, Meter& meter,
                             const Beginning& beginning, const Plan& usual)
{
    if (meter.isOver() || !asksForGive(question, usual))
        return std::nullopt;
    Holding holding{question, budget, meter};
    if (!holding.begin(beginning.standing, usual, forFurther(beginning)))
        return std::nullopt;
    holding.improve(beginning.known ? (*beginning.known)->provedBound : Worth{});
    return holding.best();
}

/// What was known stays where it is better; and what was proved of its give goes for another plan that has
/// the same.
Plan noWorse(Plan found, const std::optional<Plan>& known)
{
    if (!known)
        return found;
    if (isBetter(*known, found))
        return *known;
    const std::optional<int> give = found->give;
    if (!give || give != (*known)->give)
        return found;
    const bool proved = found->giveProved || (*known)->giveProved;
    return PlanBuilder::withGive(std::move(found), *give / 10, proved);
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
    auto beginning = begin(question, budget, meter, known);
    if (!beginning)
        return tl::unexpected{std::move(beginning).error()};
    Improver improver{question, budget, meter, beginning->standing};
    const Plan usual = known ? *known : improver.plan();
    if (budget.better)
        budget.better(usual);
    if (std::optional<Plan> held = furthest(question, budget, meter, *beginning, usual))
        return noWorse(*std::move(held), known);
    if (known)
        improver.raiseBound((*known)->provedBound);
    improver.run();
    return noWorse(withOwnGive(question, improver.plan()), known);
}

}  // namespace core::stagger::floor
