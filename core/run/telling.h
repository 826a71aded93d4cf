#pragma once

#include "core/run/run.h"

#include <functional>

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
    [[nodiscard]] Sentence nameOf(const TaskId& task) const;
};

/// For whatever is told.
tl::unexpected<Refusal> refuse(Sentence what);

/// Start, Finish and Drop. The task exists.
Told tellTask(const Telling& telling);

/// Start and Finish of heat. The coat exists.
Told tellHeat(const Telling& telling);

/// Leave, LookAgain and RinseZoneNow. The task exists.
Told tellLook(const Telling& telling);

/// Amend, Interrupt and Abandon, and what becomes of the services. Where a task is named it exists.
tl::expected<Decision, Refusal> tellAmendment(const Telling& telling);

/// TurnOut and Note. The task exists.
Told tellOutcome(const Telling& telling);

/// Why what somebody says cannot be kept, or nothing: it has to go into one line of so many bytes.
std::optional<Sentence> whyNoWords(const std::string& words, std::size_t most);

/// UndoLast and MoveLast.
Told tellCorrection(const Telling& telling);

/// OtherZone. The task exists.
Told tellOtherZone(const Telling& telling);

/// The place of the fact that is meant: the one that was named, else the last that stands and is of a kind
/// that can be meant.
std::optional<std::size_t> placeMeant(const Telling& telling,
                                      const std::function<bool(const Fact&)>& canBeMeant);

/// What takes back the answer that the fact at `place` came of, with the end of what it started.
std::vector<Fact> undoing(const Telling& telling, std::size_t place);

}  // namespace core::run
