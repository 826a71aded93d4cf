#pragma once

#include "core/stagger/floor/bound.h"
#include "core/stagger/floor/first_plan.h"
#include "core/stagger/floor/meter.h"
#include "core/stagger/floor/part.h"

#include <functional>
#include <random>
#include <set>

namespace core::stagger::floor {

/// Makes a plan of several heads better, round by round: a few heads, or a few
/// coats that are near one another in time, are set free and planned anew while
/// all others stand, by the exact search or by being put in again one after
/// another; it is kept if the whole is worth more (large neighbourhood search,
/// Shaw 1998). Between rounds the bound is raised.
/// The rounds are drawn with a fixed seed, so the same budget of conflicts gives
/// the same plan.
class Improver {
public:
    Improver(const Question& question, const Budget& budget, Meter& meter, Standing standing);

    /// Until nothing is better or the budget is over.
    void run();

    [[nodiscard]] Plan plan() const;

    /// What is worth more is kept only if `may` says so.
    void keepOnly(std::function<bool(const Plan&)> may) { m_may = std::move(may); }

    /// What is known about the whole from elsewhere.
    void raiseBound(const Worth& bound) { m_known = bound; }

private:
    using Coats = std::set<std::pair<std::size_t, std::size_t>>;  ///< Head, coat.

    [[nodiscard]] Worth total() const;
    [[nodiscard]] Worth bound() const;
    [[nodiscard]] Strictness strictness() const;
    void value(const Heads& heads);
    std::size_t draw(std::size_t count) { return m_engine() % count; }
    std::size_t drawHead();
    [[nodiscard]] Coats coatsOf(std::size_t head) const;
    [[nodiscard]] std::size_t tasksOf(const Coats& coats) const;
    [[nodiscard]] bool meet(const std::pair<std::size_t, std::size_t>& a,
                            const std::pair<std::size_t, std::size_t>& b) const;
    Coats someHeads();
    Coats someCoats();
    void setFree(const Coats& coats);
    void putAgain(const Coats& coats);
    void keepBetter(const Heads& heads, const Standing& before);
    void round();

    const Question& m_question;
    const Budget& m_budget;
    Meter& m_meter;
    Standing m_standing;
    Bound m_bound;
    FirstPlan m_places;
    Worth m_known;
    std::function<bool(const Plan&)> m_may;
    std::mt19937_64 m_engine{20'260'314};
    std::uint64_t m_conflicts = 0;  ///< For one round.
    std::size_t m_heads = 2;        ///< As many are set free at most.
    std::size_t m_quiet = 0;        ///< Rounds since something was better.
    std::size_t m_rounds = 0;
};

/// The plan of everybody as it stands.
Plan joined(const Question& question, const Standing& standing, const Worth& bound);

}  // namespace core::stagger::floor
