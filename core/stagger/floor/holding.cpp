#include "core/stagger/floor/holding.h"

#include "core/stagger/floor/first_plan.h"
#include "core/stagger/floor/improver.h"
#include "core/stagger/guarantee.h"
#include "core/stagger/plan_builder.h"
#include "core/stagger/planned_network.h"
#include "core/temporal/dispatch.h"
#include "core/temporal/timing.h"

#include <algorithm>
#include <array>

namespace core::stagger::floor {
namespace {

/// How much slower than usual, in tenths of the room there is, orders are made for; the most first, as that
/// mostly holds the furthest.
constexpr std::array<int, 4> slownesses{10, 8, 5, 3};

/// Finding the times of an order takes about as long as so many dead ends.
constexpr std::uint64_t forOneOrder = 20;

/// Whether points and tasks of the two are the same.
bool areAlike(const Draft& a, const Draft& b)
{
    return !a.impossible && !b.impossible && a.problem.points == b.problem.points && a.zero == b.zero
        && a.links.size() == b.links.size()
        && std::ranges::equal(a.busy, b.busy, [](const Busy& one, const Busy& other) {
               return one.id == other.id && one.start.point == other.start.point
                   && one.end.point == other.end.point;
           });
}

/// The cheapest times that keep `lags`.
std::vector<Time> cheapest(const Draft& draft, const std::vector<Lag>& lags)
{
    temporal::Timing timing{draft.numberZero.value_or(draft.problem.points)};
    for (const Lag& lag : lags)
        timing.add(lag, temporal::noLiteral);
    for (const temporal::SoftLag& soft : draft.problem.softLags)
        timing.addSoft(soft);
    return timing.earliest();
}

/// The lags that an order asks for so that it holds, and how far that is, in tenths.
struct Held {
    int give = 0;
    std::vector<Lag> lags;
};

/// With the greatest give there is, if that is not below `least`.
std::optional<Held> heldFurthest(const Draft& draft, temporal::UncertainNetwork network, int least)
{
    std::optional<Held> held;
    const auto holds = [&](int give) {
        network.links = linksAt(draft, give);
        std::optional<std::vector<Lag>> lags = temporal::usualLags(network);
        if (!lags)
            return false;
        held = Held{give, *std::move(lags)};
        return true;
    };
    if (holds(least))
        greatestHeld(least, holds);
    return held;
}

bool keeps(const Draft& draft, const std::vector<Time>& times)
{
    const auto holds = [&times](const Lag& lag) { return temporal::holds(lag, times); };
    const auto oneHolds = [&holds](const temporal::Clause& clause) {
        return std::ranges::any_of(clause, holds);
    };
    return std::ranges::all_of(draft.problem.lags, holds)
        && std::ranges::all_of(draft.problem.clauses, oneHolds) && brokenByCrew(draft, times).empty();
}

}  // namespace

Question slowed(const Question& question, int tenths)
{
    Question slow = question;
    slow.guarantee = false;
    slow.mayBreakLimits = false;
    for (std::size_t head = 0; head < slow.services.size(); ++head) {
        for (std::size_t coat = 0; coat < slow.services[head].coats.size(); ++coat) {
            std::vector<service::Zone>& zones = slow.services[head].coats[coat].zones;
            for (std::size_t item = 0; item < zones.size(); ++item) {
                if (question.progress.find({.service = head, .coat = coat, .item = item}) == nullptr)
                    zones[item].apply.usual = covered(zones[item].apply, tenths).slowest;
            }
        }
    }
    return slow;
}

bool isBetter(const Plan& plan, const Plan& other)
{
    const int give = plan->give.value_or(0);
    const int otherGive = other->give.value_or(0);
    return give != otherGive ? give > otherGive : plan->worth < other->worth;
}

std::optional<Plan> heldInOrder(const Question& question, const Question& slow, const Plan& ordered,
                                int least)
{
    const std::optional<PlannedNetwork> planned = plannedNetwork(slow, ordered);
    Pins points;
    points.keepPoints = true;
    Draft draft = draftOf(question, Strictness::Keep, {}, points, wholeGive);
    if (!planned || !planned->draft.breakable.empty() || !areAlike(draft, planned->draft))
        return std::nullopt;
    const std::optional<Held> held = heldFurthest(draft, planned->network, least);
    if (!held)
        return std::nullopt;
    temporal::Outcome outcome;
    outcome.best.emplace();
    std::vector<Time>& times = outcome.best->times;
    times = cheapest(draft, held->lags);
    times.insert(times.end(), planned->times.begin() + static_cast<std::ptrdiff_t>(times.size()),
                 planned->times.end());
    if (!keeps(draft, times))
        return std::nullopt;
    // Who does what is part of the order.
    draft.numberZero.reset();
    Plan plan = PlanBuilder::withCrewOf(ordered, PlanBuilder::build(draft, outcome));
    return PlanBuilder::withOwnGive(question, std::move(plan), held->give, held->give == wholeGive);
}

/// Whether the order of `ordered` makes a plan that is no worse than the best so far.
bool Holding::take(const Question& slow, const Plan& ordered)
{
    m_meter.spend(forOneOrder);
    const int least = m_best ? std::max(1, *(*m_best)->give / 10) : 1;
    std::optional<Plan> held = heldInOrder(m_question, slow, ordered, least);
    if (!held || (m_best && isBetter(*m_best, *held)))
        return false;
    const bool better = !m_best || isBetter(*held, *m_best);
    m_best = std::move(held);
    if (better && m_budget.better)
        m_budget.better(*m_best);
    return true;
}

void Holding::lookAt(int tenths, std::uint64_t conflicts)
{
    Question slow = slowed(m_question, tenths);
    const Budget share{.conflicts = std::min(conflicts, m_meter.left()), .stop = m_budget.stop, .better = {}};
    Meter meter{share};
    std::optional<Standing> standing = FirstPlan{slow, meter}.make();
    m_meter.spend(share.conflicts - meter.left());
    if (!standing || !take(slow, joined(slow, *standing, {})))
        return;
    m_slow = std::move(slow);
    m_standing = *std::move(standing);
}

bool Holding::begin(const Standing& standing, const Plan& usual, std::uint64_t conflicts)
{
    m_slow = slowed(m_question, 0);
    m_standing = standing;
    take(m_slow, usual);
    for (const int tenths : slownesses) {
        if (m_meter.isOver() || (m_best && (*m_best)->giveProved))
            break;
        lookAt(tenths, conflicts);
    }
    return m_best.has_value();
}

void Holding::improve(const Worth& known)
{
    const Budget quiet{.conflicts = m_budget.conflicts, .stop = m_budget.stop, .better = {}};
    Bound bound{m_question};
    bound.begin(m_meter);
    Improver improver{m_slow, quiet, m_meter, m_standing};
    improver.keepOnly([this](const Plan& ordered) { return take(m_slow, ordered); });
    improver.run();
    m_best = PlanBuilder::withBound(*std::move(m_best), std::max(known, bound.total()));
}

}  // namespace core::stagger::floor
