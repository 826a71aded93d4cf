#pragma once

#include "core/stagger/plan.h"

#include <cstdint>

namespace oracle {

/// How often the two sides had something to say, so that a test can see that it tests something.
struct Opinions {
    int planned = 0;
    int refused = 0;
    int open = 0;  ///< Gecode gave up before it could prove its answer.

    Opinions& operator+=(const Opinions& other);
};

/// Plans `question` with the planner and with Gecode and expects, as GoogleTest does, that they agree:
/// whether anything fits, and on harm, waste and staleness; and that the planner's plan passes the checker.
Opinions expectSameOpinion(const core::stagger::Question& question);

/// The same for the questions of seeds `first` to `last`: most of them in seconds, every fifth in half
/// minutes and without looks. Every start is compared where no coat has more than two zones.
Opinions expectSameOpinions(std::uint64_t first, std::uint64_t last, std::size_t mostZones);

}  // namespace oracle
