#pragma once

#include "core/stagger/plan.h"

#include <optional>

/// How far the start of one application can be put off: what there is to want of it.
namespace core::stagger {

struct StartRange {
    /// Where the best plan has it that nobody wants to be otherwise. To want no earlier than that changes
    /// nothing.
    Instant earliest{};
    /// No later than this can it be wanted: a second more, and nothing fits. Absent where nothing sets a
    /// limit, as far as a day past all that is planned and every clock time that is named.
    std::optional<Instant> latest{};
    /// With a `latest`: what cannot hold together any more a second past it, what was wanted left out.
    NoPlan beyond{};
    /// Otherwise the search was stopped, and it may be that `latest` could be later.
    bool proved = true;

    friend bool operator==(const StartRange&, const StartRange&) = default;
};

/// The question as if somebody wanted `apply`, an application, not to start before `moment`; nothing: as if
/// nobody wanted anything of it.
Question wanting(Question question, const TaskId& apply, std::optional<Instant> moment);

/// Of an open application of the question; what is wanted of it there is left aside, of others it counts.
/// Nothing where `apply` has begun or is left out, or where nothing fits. Every moment is whole seconds.
/// Plans once, and tries some twenty times what fits.
std::optional<StartRange> startRangeOf(const Question& question, const TaskId& apply,
                                       const Budget& budget = {});

}  // namespace core::stagger
