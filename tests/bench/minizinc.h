#pragma once

#include "core/stagger/plan.h"

#include <chrono>
#include <cstdint>
#include <optional>

namespace bench {

/// Whether the programs that `planWithMiniZinc` starts are there: Debian's packages minizinc and flatzinc.
bool miniZincIsThere();

struct MiniZincAnswer {
    bool proved = false;
    std::optional<core::stagger::Worth> worth;  ///< Of the best plan found.
    std::chrono::duration<double> solving{0};   ///< Setting up and searching, over all levels.
    std::chrono::duration<double> flattening{0};
    std::uint64_t failures = 0;
};

/// Searched as coat.mzn suggests, or as the solver does when nothing is suggested.
enum class Search { Guided, Own };

/// Plans a question of the measured kinds in whole minutes with MiniZinc's model `coat.mzn` and Gecode: one
/// level of what is best after the other, each given up after `longest` of the processor's time, as is
/// anything that MiniZinc itself cannot lay out. For heads with one coat and one rinse whose bowls serve one
/// zone each, or need no mixing.
///
/// How long solving took is what the solver says by the clock, or what its process had of the processor
/// where that is less, as on a busy machine. Of several repetitions of a short one the shortest counts.
MiniZincAnswer planWithMiniZinc(const core::stagger::Question& question, Search search,
                                std::chrono::seconds longest);

}  // namespace bench
