#pragma once

#include "core/stagger/plan.h"

#include <string>
#include <vector>

/// For a run in which the limits can no longer all hold: what can be chosen.
namespace core::stagger {

enum class ChoiceKind {
    CarryOn,     ///< Break whatever is least harm altogether. What a plan that may break limits does.
    PassLimit,   ///< Go past one limit; all others hold.
    RinseAlone,  ///< Take one zone out of its group.
    SkipLooks,
    SkipJob,
    CallHands,
};

/// One thing that can be done, with what comes of it. The facts of the question stand.
struct Choice {
    ChoiceKind kind = ChoiceKind::CarryOn;
    std::optional<TaskId> task{};  ///< The zone, look or job it is about, where it has one.
    Sentence what{};               ///< "Go 3 min past: Root: development of at most 45 min"
    std::vector<TaskId> drop{};    ///< Tasks that are not done then, for `Progress::dropped`.
    /// The services, changed where that is the choice: a zone in a group of its own, one more pair of hands,
    /// a limit that leaves just the room to pass it. With these, and without `drop`, all limits can hold
    /// again, unless the plan still breaks some.
    std::vector<service::Service> services{};
    std::optional<Interval> when{};  ///< For CallHands: when they are needed.
    Plan plan;                       ///< With what it still breaks in `broken`.
    measure::Harm under{};           ///< Short of the targets, over all zones.
    measure::Harm over{};            ///< Past them.
};

/// The choices that `question`, with its facts, still leaves: each solved exactly, the
/// least harm first: past limits, then the fewest of them, then off targets, and carrying on last among
/// equals. `CarryOn` is always there; others are if they break less than that, or one limit alone. Empty
/// where all limits can hold, where nothing can be done, or where the budget ran out before that was known.
std::vector<Choice> choicesFor(const Question& question, const Budget& budget = {});

}  // namespace core::stagger
