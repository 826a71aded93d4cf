#pragma once

#include "core/run/outcomes.h"

#include <optional>
#include <span>
#include <vector>

/// What is left of a run once its services were erased: kinds of tasks, numbers of zones and bowls, times,
/// and which of a few words a zone turned out as. It names nobody and nothing.
namespace app::view {

/// Something that was done, by the numbers of its task.
struct LeftTask {
    core::stagger::TaskId task;
    core::measure::Instant from;
    std::optional<core::measure::Instant> until;  ///< Nothing for a look, and where no end was told.

    friend bool operator==(const LeftTask&, const LeftTask&) = default;
};

struct ErasedRun {
    std::vector<LeftTask> tasks;                   ///< In the order in which they began.
    std::vector<core::run::ZoneOutcome> outcomes;  ///< Without words.
};

ErasedRun erasedRun(std::span<const core::run::Fact> facts);

}  // namespace app::view
