#pragma once

#include "core/stagger/trials.h"

#include <optional>

namespace core::stagger {

/// How long somebody who is there for a while only is away before and after. Nobody waits
/// for the end of such an absence.
inline constexpr Seconds awayForGood{180 * 24 * 3600};

/// Finds a short time for which the last pair of hands of the crew, who is there all the
/// time and without whom nothing fits, is needed, in whole minutes, and lets them be away
/// before and after. The shortest that was found: at neither end can it be a minute
/// shorter. Nothing, and they stay, where nothing ties the question to the clock.
std::optional<Interval> keepNeededHands(Question& question, Trials& trials);

}  // namespace core::stagger
