#pragma once

#include "core/stagger/choices.h"

#include <cstddef>
#include <string>
#include <vector>

namespace app::view {

/// One thing that can be chosen where not every limit can hold, and what it comes to.
struct ChoiceView {
    core::measure::Sentence what;
    bool carriesOn = false;              ///< What the plan does if nobody chooses.
    std::size_t limitsPassed = 0;        ///< How many the plan for it still passes.
    core::measure::Seconds passedBy{0};  ///< By how much in all.
    double minutesShort = 0;             ///< Of the targets, in zone-minutes; for showing only.
    double minutesPast = 0;

    friend bool operator==(const ChoiceView&, const ChoiceView&) = default;
};

struct ChoicesView {
    std::vector<ChoiceView> choices;  ///< The least harm first.
    core::measure::Instant asOf;      ///< What they come to was worked out for then.
    core::measure::Seconds age{0};    ///< Since then.
    bool old = false;                 ///< By now they may come to something else.

    friend bool operator==(const ChoicesView&, const ChoicesView&) = default;
};

/// So long what was worked out is taken for now; a plan is not made again more often either.
constexpr core::measure::Seconds choicesHold{30};

ChoicesView choicesView(const std::vector<core::stagger::Choice>& choices, core::measure::Instant asOf,
                        core::measure::Instant now);

}  // namespace app::view
