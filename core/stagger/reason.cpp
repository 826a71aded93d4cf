#include "core/stagger/draft.h"
#include "core/stagger/plan_builder.h"
#include "core/stagger/trials.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace core::stagger {
namespace {

/// The order in which demands are tried for leaving out: what a person would
/// rather not hear about first, so that windows and hands stay in the reason.
std::vector<std::size_t> trialOrder(const std::vector<DraftedDemand>& demands)
{
    const auto rank = [&](std::size_t place) {
        const DraftedDemand& demand = demands[place];
        const bool crew = demand.kind >= DemandKind::Hands;
        const bool hands = demand.kind == DemandKind::Hands;
        return std::tuple{hands ? 2 : crew ? 0 : 1, demand.breachRate};
    };
    std::vector<std::size_t> order(demands.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
    return order;
}

Sentence textOf(const std::vector<Demand>& demands)
{
    if (demands.empty())
        return Sentence::worded(
            "Nothing fits, even with every limit left out: nobody here does what has to be done.");
    if (demands.size() == 1)
        return Sentence::worded("This cannot be kept: %1.", demands.front().what);
    std::vector<Sentence> all;
    all.reserve(demands.size());
    for (const Demand& demand : demands)
        all.push_back(demand.what);
    return Sentence::worded("These cannot all hold together: %1.", Sentence::joined(all, "; "));
}

}  // namespace

NoPlan reasonFor(const Question& question, const Budget& budget)
{
    Trials trials{budget};
    return reasonFor(question, trials);
}

NoPlan reasonFor(const Question& question, Trials& trials)
{
    const std::vector<DraftedDemand> demands = draftOf(question, Strictness::OnlyFits).demands;
    std::vector<bool> left(demands.size(), false);
    NoPlan answer;
    answer.minimal = true;
    for (const std::size_t place : trialOrder(demands)) {
        left[place] = true;
        const Fits fits = trials.fits(question, left);
        if (fits == Fits::No)
            continue;
        answer.minimal = answer.minimal && fits == Fits::Yes;
        left[place] = false;
    }
    for (std::size_t place = 0; place < demands.size(); ++place) {
        if (!left[place])
            answer.demands.push_back({.task = demands[place].task,
                                      .what = demands[place].what,
                                      .kind = demands[place].kind,
                                      .place = demands[place].place});
    }
    answer.text = textOf(answer.demands);
    return answer;
}

}  // namespace core::stagger
