#include "core/stagger/guarantee.h"

#include "core/stagger/order_network.h"
#include "core/stagger/plan_builder.h"

#include <algorithm>

namespace core::stagger {
namespace {

using temporal::Clause;

/// Not all of these hold, or the lag does.
Clause clauseOf(const temporal::Objection& objection, const OrderNetwork& network)
{
    Clause clause;
    const auto append = [&clause](const Lag& lag) {
        if (std::ranges::find(clause, lag) == clause.end())
            clause.push_back(lag);
    };
    if (objection.lag)
        append(*objection.lag);
    for (const int lag : objection.lags) {
        for (const Lag& premise : network.premisesOf(lag))
            append(negation(premise));
    }
    return clause;
}

}  // namespace

std::vector<Clause> brokenByLengths(const Draft& draft, const std::vector<Time>& times)
{
    if (draft.links.empty())
        return {};
    const OrderNetwork network{draft, times};
    std::vector<Clause> clauses;
    for (const temporal::Objection& objection : temporal::objectionsTo(network.network(), times))
        clauses.push_back(clauseOf(objection, network));
    return clauses;
}

int greatestHeld(int least, const std::function<bool(int give)>& holds)
{
    for (int refused = wholeGive + 1; refused - least > 1;) {
        const int next = refused > wholeGive ? wholeGive : (least + refused) / 2;
        (holds(next) ? least : refused) = next;
    }
    return least;
}

Plan greatestGive(Plan usual, const TryGive& tryGive, std::uint64_t conflicts)
{
    std::uint64_t rest = conflicts;
    const auto attempt = [&](int give, bool onlyFits) {
        Tried tried = tryGive(give, onlyFits, rest);
        rest -= std::min(rest, tried.conflicts);
        return tried;
    };
    Tried best;
    bool proved = true;
    const int least = greatestHeld(0, [&](int give) {
        Tried tried = attempt(give, give < wholeGive);
        proved = proved && (tried.plan || tried.complete);
        const bool holds = tried.plan.has_value();
        if (holds)
            best = std::move(tried);
        return holds;
    });
    if (least == 0)
        return PlanBuilder::withGive(std::move(usual), 0, proved);
    if (least < wholeGive) {
        Tried cheapest = attempt(least, false);
        if (cheapest.plan)
            best = std::move(cheapest);
    }
    return PlanBuilder::withGive(*std::move(best.plan), least, proved);
}

}  // namespace core::stagger
