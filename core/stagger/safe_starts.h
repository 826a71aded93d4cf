#pragma once

#include "core/stagger/plan.h"

#include <vector>

/// How long each step can be put off: the dispatch rule of a plan, as of the moment it was made for.
namespace core::stagger {

/// What a safe start is safe against.
enum class SafeFor {
    /// Whatever applying takes within what the plan holds for (`PlannedZone::quickestHeld` to
    /// `slowestHeld`): some way to go on from there keeps every limit.
    LengthsHeld,
    /// Lengths as usual, no more: the plan has no give, none was asked for, or limits are broken.
    UsualLengths,
};

/// When a task that has not started can be started, the order being kept: who does what after
/// what, which looks are made, and which of them while applying.
struct SafeStart {
    TaskId task{};
    /// Never after the planned start, but where an application that runs has reached its usual
    /// length: it is taken to end a second later than now.
    Instant earliest{};
    /// The latest start with which every limit can still be kept. Of a task further ahead:
    /// applications until then taking as long as usual, and tasks before it being put
    /// off in time for it, but none of them further than it may be. Absent where nothing sets a limit.
    std::optional<Instant> latest{};
    SafeFor safeFor = SafeFor::LengthsHeld;
    /// An application that ends early may make `latest` earlier: it hangs on one that is
    /// still to end.
    bool hangsOnLengths = false;

    friend bool operator==(const SafeStart&, const SafeStart&) = default;
};

/// Of every open task of the plan, in the order of its starts. The rule: start a task
/// between the two, and ask again, with the plan for it, when something has happened.
/// Following it keeps every limit that the plan keeps, within the lengths named by `safeFor`;
/// a limit that the plan breaks is broken no further. `plan` must be one of this `question`;
/// empty where it keeps no rules. Takes about as long as a few conflicts of the search.
std::vector<SafeStart> safeStarts(const Question& question, const Plan& plan);

}  // namespace core::stagger
