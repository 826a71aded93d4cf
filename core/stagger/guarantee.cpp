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

Plan greatestGive(Plan usual, const TryGive& tryGive, std::uint64_t conflicts)
{
    std::uint64_t rest = conflicts;
    const auto attempt = [&](int give, bool onlyFits) {
        Tried tried = tryGive(give, onlyFits, rest);
        rest -= std::min(rest, tried.conflicts);
        return tried;
    };
    Tried best = attempt(wholeGive, false);
    bool proved = best.plan || best.complete;
    // What holds for longer ranges of lengths holds for shorter ones: the greatest is found by halving.
    int least = best.plan ? wholeGive : 0;
    for (int refused = wholeGive; refused - least > 1;) {
        const int middle = (least + refused) / 2;
        Tried tried = attempt(middle, true);
        proved = proved && (tried.plan || tried.complete);
        if (tried.plan) {
            least = middle;
            best = std::move(tried);
        } else {
            refused = middle;
        }
    }
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
