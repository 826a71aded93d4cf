#pragma once

#include "core/stagger/task.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What happened. A run is the list of its facts and nothing else: they are
/// appended, durable before they count, and never changed. Putting something
/// right is a fact too. Facts hold ids and times, never a name; the one thing in
/// words is what somebody saw, or says for next time, which a journal keeps apart, so
/// that a person can be erased without rewriting it.
namespace core::run {

using measure::Instant;
using measure::Seconds;
using measure::Sentence;
using stagger::TaskId;

/// Counts from 1 in the order of recording.
enum class FactNumber : std::int64_t {};

enum class FactKind {
    Started,   ///< `task` began at `happened`. For `Heat`: it was put on.
    Finished,  ///< `task` ended at `happened`. For `Dry`: the hands-on part. For `Heat`: it was taken off.
    Looked,    ///< The look `task` was made at `happened`; `verdict` says what came of it.
    Dropped,   ///< `task` will not be done.
    Undone,    ///< The fact `about` never happened.
    Moved,     ///< The fact `about` happened at `happened`, not when it says.
    Ended,     ///< The run is over; nothing sounds any more.
    /// From then on the services are those of `revision`: who is there, which zones there are, what is
    /// rinsed with what. The facts that were told with it have the same revision.
    Amended,
    TurnedOut,  ///< The zone of `task`, its Apply, turned out as `outcome` and `tone` say. The last word
                ///< counts.
    Noted,  ///< `tone` is to be thought of next time; `task` is the Apply of a zone of the coat it is about.
};

/// How a zone turned out.
enum class Outcome {
    AsWanted,
    TooLight,
    TooDark,
    TooWarm,
    TooCool,
    Uneven,
};

/// What came of a look.
enum class Verdict {
    Leave,     ///< Leave it as planned.
    Again,     ///< Look again after `again`.
    RinseNow,  ///< Rinse this zone now, on its own.
};

struct Fact {
    FactNumber number{0};  ///< 0 until the journal has given it one.
    FactKind kind = FactKind::Started;
    TaskId task{};  ///< Not used by Undone, Moved, Ended, Amended.
    /// For Undone and Moved; else what was said of the wrong zone before.
    std::optional<FactNumber> about{};
    Instant happened{};
    Instant recorded{};
    Verdict verdict = Verdict::Leave;  ///< For Looked.
    /// For Looked with Again. For `Heat` that Started: how long it is to stay; 0 if nobody said.
    Seconds again{0};
    std::size_t revision = 0;  ///< Of `Setup::revisions`, from 1; 0 for what amends nothing.
    std::string tone{};        ///< For Looked, TurnedOut and Noted: in words; empty where nobody said.
    std::optional<Outcome> outcome{};  ///< For TurnedOut, where one of them was said.

    friend bool operator==(const Fact&, const Fact&) = default;
};

}  // namespace core::run
