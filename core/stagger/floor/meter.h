#pragma once

#include "core/stagger/plan.h"
#include "core/temporal/search.h"

#include <algorithm>

namespace core::stagger::floor {

/// What is left of a budget that many searches share.
class Meter {
public:
    explicit Meter(const Budget& budget)
        : m_budget{budget}
        , m_left{budget.conflicts}
    {
    }

    /// For one search, of at most `most` dead ends.
    [[nodiscard]] temporal::Limits limits(std::uint64_t most) const
    {
        return {.conflicts = std::min(most, m_left), .stop = m_budget.stop};
    }

    /// A search costs something even where it met no dead end, so that every budget ends.
    void spend(std::uint64_t conflicts) { m_left -= std::min(m_left, conflicts + 1); }

    [[nodiscard]] std::uint64_t left() const { return m_left; }
    [[nodiscard]] bool isOver() const { return m_left == 0 || (m_budget.stop && m_budget.stop()); }

private:
    const Budget& m_budget;
    std::uint64_t m_left;
};

}  // namespace core::stagger::floor
