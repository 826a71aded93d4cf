#pragma once

#include "core/stagger/plan.h"

#include <string>
#include <vector>

/// What would make it fit: changes of the services, each solved before it is
/// offered. What may be changed, how the least change is found and how changes
/// are ranked is in docs/method.md.
namespace core::stagger {

enum class CureKind {
    UseBuffer,     ///< Less time to spare before the promise, which stands.
    LaterPromise,  ///< What there was to spare is used up first.
    StartEarlier,  ///< Earlier than `not_before`, not before now.
    EarlierApply,  ///< Earlier than is wanted for a zone, not before now.
    ShorterLeast,
    LongerMost,
    LongerFirstStrand,
    ShorterLastStrand,
    LooserLooks,
    LooserLateJob,
    LongerPotLife,
    SecondBowl,
    RinseAlone,
    LetGoOrder,
    LongerBlendGap,
    ShorterCoatGap,
    LongerCoatGap,
    EarlierWater,  ///< Earlier than the basin is booked.
    LaterWater,
    LeaveLater,
    ReturnEarlier,
    AnotherHands,
    AnotherBasin,
};

/// One change of one service.
struct CureStep {
    CureKind kind = CureKind::UseBuffer;
    std::size_t service = 0;
    std::optional<TaskId> task{};    ///< The zone, group, bowl or coat it is about, where it has one.
    Sentence what{};                 ///< "Let Ends develop up to 22 min (now 20 min)"
    Sentence note{};                 ///< What to mind, a sentence, or nothing.
    Seconds by{0};                   ///< How far a length or a moment is moved; 0 where nothing is.
    std::optional<Interval> when{};  ///< For AnotherHands: when they are needed.

    friend bool operator==(const CureStep&, const CureStep&) = default;
};

/// Changes that, made together, let everything fit.
struct Cure {
    std::vector<CureStep> steps;  ///< One; two only where no single one does.
    std::vector<service::Service>
        services;          ///< As asked for, with the changes made. They pass `checkService`.
    Plan plan;             ///< Of those services.
    measure::Harm change;  ///< How much is changed; the least comes first.

    /// All steps in one sentence without a full stop.
    [[nodiscard]] Sentence what() const;
};

/// Cures for a question that has no plan, the least change first. `reason` is what
/// `plan` answered. Empty where none was found: nothing that is known helps, or the
/// budget ran out. The facts of the question stand as they are.
std::vector<Cure> curesFor(const Question& question, const NoPlan& reason, const Budget& budget = {});

}  // namespace core::stagger
