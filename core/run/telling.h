#pragma once

#include "core/run/run.h"

/// What `decide` is made of: one answer beside what is known when it is given.
namespace core::run {

using Told = tl::expected<std::vector<Fact>, Refusal>;

struct Telling {
    const Setup& setup;
    const std::vector<service::Service>& services;  ///< Those in force.
    std::span<const Fact> facts;
    const stagger::Progress& progress;
    const Answer& answer;
    Instant now;

    [[nodiscard]] Instant happened() const { return now - answer.ago; }

    /// A new fact about `task`, as of `happened`.
    [[nodiscard]] Fact fact(FactKind kind, const TaskId& task) const;

    /// The trade's name for a task of the services, such as "Apply Root".
    [[nodiscard]] std::string nameOf(const TaskId& task) const;
};

Told refuse(const std::string& what);

/// Start, Finish and Drop. The task exists.
Told tellTask(const Telling& telling);

/// Leave, LookAgain and RinseZoneNow. The task exists.
Told tellLook(const Telling& telling);

/// Amend, Interrupt and Abandon. Where a task is named it exists.
Told tellAmendment(const Telling& telling);

/// UndoLast and MoveLast.
Told tellCorrection(const Telling& telling);

}  // namespace core::run
