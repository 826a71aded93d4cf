#include "core/stagger/holds.h"

#include "core/stagger/coat_by_coat.h"
#include "core/stagger/draft.h"

#include <algorithm>

namespace core::stagger {
namespace {

/// The least deviation of a question without some demands, within one budget for all.
class Deviations {
public:
    Deviations(const Question& question, const Budget& budget)
        : m_question{question}
        , m_budget{budget}
        , m_conflicts{budget.conflicts}
    {
    }

    /// Nothing where it was not found out.
    std::optional<measure::Harm> without(const std::vector<bool>& left)
    {
        Draft draft = draftOf(m_question, Strictness::Keep, left);
        if (draft.impossible)
            return std::nullopt;
        // What comes below deviation does not matter here, and would have to be proved too.
        draft.problem.ranking.clear();
        std::erase_if(draft.problem.softLags,
                      [&](const temporal::SoftLag& soft) { return soft.price < draft.scale.deviation; });
        const temporal::Outcome outcome = solve(draft, {.conflicts = m_conflicts, .stop = m_budget.stop});
        m_conflicts -= std::min(m_conflicts, outcome.conflicts);
        if (!outcome.best || !outcome.complete)
            return std::nullopt;
        return measure::Harm{static_cast<std::int64_t>(outcome.best->price / draft.scale.deviation)};
    }

private:
    const Question& m_question;
    const Budget& m_budget;
    std::uint64_t m_conflicts;
};

}  // namespace

std::optional<Holding> holdsOf(const Question& question, const Budget& budget)
{
    Question asked = question;
    asked.mayBreakLimits = false;
    Deviations deviations{asked, budget};
    const auto least = deviations.without({});
    if (!least)
        return std::nullopt;
    Holding holding{.deviation = *least, .holds = {}, .complete = true};
    if (least->hundredthSeconds == 0)
        return holding;
    const std::vector<DraftedDemand> demands = draftOf(asked, Strictness::OnlyFits).demands;
    for (std::size_t place = 0; place < demands.size(); ++place) {
        std::vector<bool> left(demands.size(), false);
        left[place] = true;
        const auto without = deviations.without(left);
        holding.complete = holding.complete && without;
        if (without && *without < *least) {
            const DraftedDemand& demand = demands[place];
            holding.holds.push_back(
                {{.task = demand.task, .what = demand.what, .kind = demand.kind, .place = demand.place},
                 *without});
        }
    }
    std::ranges::stable_sort(holding.holds, {}, &Hold::deviation);
    return holding;
}

}  // namespace core::stagger
