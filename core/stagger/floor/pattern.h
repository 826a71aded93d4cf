#pragma once

#include "core/stagger/floor/meter.h"
#include "core/stagger/floor/part.h"

#include <optional>
#include <vector>

namespace core::stagger::floor {

/// A coat as it would be done by a crew that has nothing else to do: it can be
/// moved in time as a whole.
struct Pattern {
    std::vector<PlannedTask> tasks;  ///< From the beginning of time on.
    Seconds length{0};               ///< Drying unattended included.
    Seconds firstContact{0};
};

/// Whether nothing but its neighbours ties a coat of `head` to the clock or to another coat.
bool canBeMoved(const Question& question, std::size_t head);

/// The pattern of each coat of a head; none where one was not found.
std::vector<Pattern> patternsOf(const Question& question, std::size_t head, Meter& meter);

/// Where a head's coats may lie, as wholes.
struct Bounds {
    std::optional<Instant> from;
    std::optional<Instant> until;
    bool late = false;  ///< As late as can be, else as early.
};

/// The tasks of a head, its coats put one by one where the crew has time beside
/// `others`, in steps of a minute; nothing where there is no room.
std::optional<std::vector<PlannedTask>> placed(const Question& question, const std::vector<Pattern>& patterns,
                                               std::size_t head, const Bounds& bounds,
                                               const Standing& others);

}  // namespace core::stagger::floor
