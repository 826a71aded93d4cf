#include "core/stagger/trials.h"

#include "core/stagger/coat_by_coat.h"
#include "core/stagger/draft.h"

#include <algorithm>

namespace core::stagger {

Fits Trials::fits(const Question& question, const std::vector<bool>& left)
{
    ++m_count;
    Draft draft = draftOf(question, Strictness::OnlyFits, left);
    if (draft.impossible)
        return Fits::Unknown;
    const temporal::Outcome outcome = solve(draft, {.conflicts = m_conflicts, .stop = m_budget.stop});
    m_conflicts -= std::min(m_conflicts, outcome.conflicts);
    if (outcome.best)
        return Fits::Yes;
    m_over = m_over || !outcome.complete;
    return outcome.complete ? Fits::No : Fits::Unknown;
}

std::optional<Plan> Trials::planned(const Question& question)
{
    ++m_count;
    auto answer = plan(question, rest());
    if (answer)
        return *std::move(answer);
    m_over = m_over || answer.error().stopped;
    return std::nullopt;
}

}  // namespace core::stagger
