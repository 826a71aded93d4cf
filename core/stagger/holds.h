#pragma once

#include "core/stagger/plan.h"

#include <vector>

namespace core::stagger {

/// A demand without which every zone could be nearer its target.
struct Hold {
    Demand demand;
    measure::Harm deviation;  ///< The least there is without it, all others being kept.

    friend bool operator==(const Hold&, const Hold&) = default;
};

/// What keeps a plan from being nearer the targets.
struct Holding {
    measure::Harm deviation;  ///< The least there is with every demand kept.
    std::vector<Hold> holds;  ///< Those that make most difference first.
    bool complete = false;    ///< Every demand was looked at; otherwise the budget ran out.
};

/// Leaves out one demand after another and plans anew. Empty `holds` with a deviation above
/// 0: no single demand is to blame. Nothing where nothing fits.
std::optional<Holding> holdsOf(const Question& question, const Budget& budget = {});

}  // namespace core::stagger
