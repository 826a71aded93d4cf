#pragma once

#include "app/view/lane_view.h"

#include "core/run/run.h"

#include <optional>
#include <string>
#include <vector>

namespace app::view {

/// Until when a step can be put off so that every limit can still be kept that the plan keeps.
struct LatestStart {
    Instant at;
    Seconds left{0};  ///< Until then; below zero once it is past.
    Urgency urgency = Urgency::Calm;
    bool onlyAsUsual = false;  ///< Safe only if all takes as long as usual.

    friend bool operator==(const LatestStart&, const LatestStart&) = default;
};

/// A zone that is looked at with others.
struct LookBeside {
    core::run::Prompt prompt;
    std::string zone;
    bool alone = false;       ///< It can be rinsed without wetting its neighbours.
    Seconds shortOfLeast{0};  ///< How much longer it has to develop to come to its least; 0 once it has.

    friend bool operator==(const LookBeside&, const LookBeside&) = default;
};

/// One step that somebody is asked for.
struct StepView {
    core::run::Prompt prompt;
    Seconds left{0};  ///< Until it is due; below zero once overdue.
    Urgency urgency = Urgency::Calm;
    std::optional<LatestStart> latest;  ///< Where a limit sets one; not for what already runs.
    bool waits = false;                 ///< Something that runs must end first.
    std::string head;                   ///< Whose, where there are several heads.
    std::string hands;                  ///< Who, where there is more than one pair of hands.
    std::vector<std::string> zones;     ///< What it touches: one zone, or all of a rinse group or a bowl.
    std::string name;                   ///< Of the bowl, the rinse group or the late job; else empty.
    bool alone = false;                 ///< For looks: the zone can be rinsed without wetting its neighbours.
    /// For applying, where the plan holds for more than the usual length: so long it may take in all.
    std::optional<Seconds> holdsUpTo;
    std::vector<LookBeside> together;  ///< For looks: the others that are to be made with it.
    Seconds development{0};            ///< For looks and rinses: of the first zone it touches, by now.
    /// For looks: how much longer the zone has to develop to come to its least; 0 once it has.
    Seconds shortOfLeast{0};

    friend bool operator==(const StepView&, const StepView&) = default;
};

/// The one thing to do now and what comes after it.
struct NowView {
    std::optional<StepView> main;
    std::vector<StepView> next;  ///< Answerable too, most pressing first.
    bool finished = false;
    bool allDeveloping = false;  ///< Hands are free and every lane takes care of itself.

    friend bool operator==(const NowView&, const NowView&) = default;
};

/// What is due comes first; while nothing is due, what the hands are busy with; else what comes next.
NowView nowView(const std::vector<core::service::Service>& services, const core::run::State& state);

/// The step that `prompt` asks for, at `state.now`.
StepView stepView(const std::vector<core::service::Service>& services, const core::run::State& state,
                  const core::run::Prompt& prompt);

}  // namespace app::view
