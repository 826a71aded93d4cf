#pragma once

#include "core/run/fact.h"
#include "core/stagger/plan.h"

#include <tl/expected.hpp>

#include <optional>
#include <span>
#include <string>
#include <vector>

/// What happens: from a service, its facts and a moment to a state, and from an
/// answer to the next facts. Pure: the same three give the same state, so a run
/// that was killed stands where it stood.
namespace core::run {

enum class Stage {
    Waiting,     ///< Nothing applied yet.
    Applying,
    Developing,
    Rinsing,
    Rinsed,
    Dropped,
};

/// One zone while it runs.
struct Lane {
    std::size_t service = 0;
    std::size_t coat = 0;
    std::size_t zone = 0;
    Stage stage = Stage::Waiting;
    Instant firstContact;                ///< What happened, else what is planned.
    Instant applicationEnd;
    Instant clockStart;
    Instant water;
    Seconds development{0};              ///< By now; 0 while the clock has not started.
    Instant leastAt;                     ///< When the window's three marks are reached.
    Instant targetAt;
    Instant mostAt;                      ///< The tighter of most and the first strand's limit.
    std::optional<Instant> nextLook;
    std::optional<TaskId> nextLookTask;

    friend bool operator==(const Lane&, const Lane&) = default;
};

/// One thing somebody has to do. The first of the list is the one to do now.
struct Prompt {
    enum class Asks {
        Start,   ///< Start this task.
        Finish,  ///< This task should be done: has it ended?
        Look,    ///< Make this look and say what came of it.
    };
    Asks asks = Asks::Start;
    TaskId task;
    Instant due;
    std::optional<std::size_t> hands;  ///< Who, a place in the crew.

    friend bool operator==(const Prompt&, const Prompt&) = default;
};

/// A limit that is near or passed, for a zone that is still developing.
struct LimitWatch {
    TaskId zone;  ///< The `Apply` of the zone.
    Instant at;   ///< When the limit is reached.
    std::string what;

    friend bool operator==(const LimitWatch&, const LimitWatch&) = default;
};

/// What is run: the service as it was when it started. The planner is handed
/// in so that a run can be followed with a stand-in, and stopped in time.
struct Setup {
    std::vector<service::Service> services;
    stagger::Preference preference = stagger::Preference::AsAsked;
    Instant began;  ///< When the run was begun; the first plan is made for this moment.
    stagger::Budget budget;
};

struct State {
    Instant now;
    stagger::Progress progress;
    std::optional<stagger::Plan> plan;        ///< For what is still open; absent when even breaking limits fits nothing.
    std::optional<stagger::NoPlan> reason;    ///< Why all limits can no longer hold.
    std::vector<Lane> lanes;                  ///< In the order of the service; coats not begun included.
    std::vector<Prompt> prompts;              ///< Most pressing first: due ones by due, then coming ones.
    std::vector<LimitWatch> limits;           ///< Of zones that develop, nearest first.
    std::vector<std::string> changes;         ///< What the last fact changed in the plan, a sentence each.
    bool finished = false;                    ///< Every task is done or dropped, or the run was ended.

    friend bool operator==(const State&, const State&) = default;
};

/// The fold. `facts` in the order of recording. Facts that contradict each other
/// are taken as they are; nothing throws.
State stateAt(const Setup& setup, std::span<const Fact> facts, Instant now);

/// What facts amount to, before any planning: undone ones gone, moved ones moved.
stagger::Progress progressOf(const Setup& setup, std::span<const Fact> facts);

/// Something somebody says: "started", "two minutes ago", "undo".
struct Answer {
    enum class Kind {
        Start,
        Finish,
        Leave,
        LookAgain,
        RinseZoneNow,   ///< `task` is the zone's Apply, or its Look.
        Drop,
        UndoLast,
        MoveLast,       ///< The last answer really happened `ago` before now.
        End,
    };
    Kind kind = Kind::Start;
    TaskId task;
    Seconds ago{0};       ///< It happened that long before now.
    Seconds again{0};     ///< For LookAgain.
    std::optional<FactNumber> about;  ///< For UndoLast and MoveLast: another than the last.
};

/// Why an answer was not taken, in a sentence.
struct Refusal {
    std::string what;
};

/// Turns an answer into the facts to append (numbers still 0), or says why not:
/// finishing what never started, a time before the task began, a time to come.
tl::expected<std::vector<Fact>, Refusal> decide(const Setup& setup, std::span<const Fact> facts,
                                                const Answer& answer, Instant now);

}  // namespace core::run
