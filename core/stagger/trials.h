#pragma once

#include "core/stagger/plan.h"

#include <cstdint>
#include <vector>

namespace core::stagger {

enum class Fits { Yes, No, Unknown };

/// Asks whether questions fit, whatever the plan would be worth; all of them
/// within one budget. Keeps a reference to it.
class Trials {
public:
    explicit Trials(const Budget& budget)
        : m_budget{budget}
        , m_conflicts{budget.conflicts}
    {
    }

    /// Without the demands in `left`, by their place in the draft.
    Fits fits(const Question& question, const std::vector<bool>& left = {});

    /// The best plan, or nothing.
    std::optional<Plan> planned(const Question& question);

    [[nodiscard]] Budget rest() const { return {.conflicts = m_conflicts, .stop = m_budget.stop}; }
    [[nodiscard]] bool isOver() const { return m_over; }
    [[nodiscard]] std::size_t count() const { return m_count; }

private:
    const Budget& m_budget;
    std::uint64_t m_conflicts;
    std::size_t m_count = 0;
    bool m_over = false;
};

/// As in plan_builder.h, within the budget of `trials`.
NoPlan reasonFor(const Question& question, Trials& trials);

}  // namespace core::stagger
