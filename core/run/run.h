#pragma once

#include "core/run/fact.h"
#include "core/run/prepared.h"
#include "core/stagger/plan.h"
#include "core/stagger/safe_starts.h"

#include <tl/expected.hpp>

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// What happens: from a service, its facts and a moment to a state, and from an
/// answer to the next facts. Pure: the same three give the same state, so a run
/// that was killed stands where it stood.
namespace core::run {

enum class Stage {
    Waiting,  ///< Nothing applied yet.
    Applying,
    Developing,
    Rinsing,
    Rinsed,
    Dropped,
};

/// Whether there is mixture on the hair.
bool carriesMixture(Stage stage);

/// The tone of a zone as somebody saw it at a look.
struct SeenTone {
    std::string what{};  ///< In words, never empty.
    Instant at{};

    friend bool operator==(const SeenTone&, const SeenTone&) = default;
};

/// One zone while it runs.
struct Lane {
    std::size_t service = 0;
    std::size_t coat = 0;
    std::size_t zone = 0;
    Stage stage = Stage::Waiting;
    Instant firstContact{};  ///< What happened, else what is planned.
    Instant applicationEnd{};
    Instant clockStart{};
    Instant water{};
    Seconds development{0};  ///< By now; 0 while the clock has not started.
    Instant leastAt{};       ///< When the window's three marks are reached.
    Instant targetAt{};
    Instant mostAt{};                ///< The tighter of most and the first strand's limit.
    std::optional<SeenTone> tone{};  ///< What was seen last.
    std::optional<Instant> nextLook{};
    std::optional<TaskId> nextLookTask{};

    friend bool operator==(const Lane&, const Lane&) = default;
};

/// A look that somebody asked for with "look again in a while", beside those of
/// the service. Its answer goes to the same look once more. What was said last
/// about a zone counts: a later look at it takes the place of this one.
struct ExtraLook {
    TaskId look{};  ///< The look that was answered with `Again`.
    Instant due{};

    friend bool operator==(const ExtraLook&, const ExtraLook&) = default;
};

/// Heat that is over a head, such as a lamp or a warm cap. Nothing is worked out from it: what it does to a
/// mixture is for the product's leaflet to say. Water on the head ends it.
struct Heat {
    TaskId task{};  ///< Of the coat that it was put on for.
    Instant since{};
    std::optional<Instant> offDue{};  ///< When it is to be taken off, where somebody said how long it stays.

    friend bool operator==(const Heat&, const Heat&) = default;
};

/// One thing somebody has to do. The first of the list is the one to do now.
struct Prompt {
    enum class Asks {
        Start,   ///< Start this task.
        Finish,  ///< This task should be done: has it ended?
        Look,    ///< Make this look and say what came of it.
    };
    Asks asks = Asks::Start;
    TaskId task{};
    /// When it was to be done as first asked for. It stands while it is overdue, though
    /// the plan moves on, so that insistence grows and "3 min late" is the truth.
    Instant due{};
    std::optional<std::size_t> hands{};  ///< Who, a place in the crew.
    /// From then on it is late in earnest: `due`, but for an application that runs its slowest end.
    Instant pressing{};
    /// What runs and must end first; until then nobody can do it, and it makes no sound.
    std::optional<TaskId> waitsFor{};
    /// How long a task of the plan can be put off, and against what that is safe; as of the
    /// moment of the plan in force.
    std::optional<stagger::SafeStart> safe{};

    friend bool operator==(const Prompt&, const Prompt&) = default;
};

/// A limit that is near or passed, for a zone that is still developing.
struct LimitWatch {
    TaskId zone{};                      ///< The `Apply` of the zone.
    Instant at{};                       ///< When the limit is reached.
    Sentence what{};                    ///< "at most 45 min development"
    std::optional<Instant> expected{};  ///< When water is to reach it, as first asked for, if that is known.

    friend bool operator==(const LimitWatch&, const LimitWatch&) = default;
};

/// What differs between two plans for one task that is still open.
struct Change {
    TaskId task{};
    std::optional<Instant> from{};  ///< Its start before; absent where it was not planned.
    std::optional<Instant> to{};    ///< Its start now; absent where it is no longer planned.

    /// By what a wall clock shows without seconds, in the zones of the world today.
    [[nodiscard]] bool stays() const;
    friend bool operator==(const Change&, const Change&) = default;
};

/// All of them in one sentence, water first: "Rinse All together stays at 14:52, Apply Ends moves to 14:36
/// (from 14:31).", each with its head where there are several. Of more than `most` only so many are named.
/// Empty where nothing changed. Every task must be one of `services`, and `zones` must know the time zones of
/// these.
Sentence changesText(const std::vector<service::Service>& services, const std::vector<Change>& changes,
                     const measure::TimeZones& zones, std::size_t most = 3);

/// Makes plans: `stagger::plan`, or a stand-in with the same promises. Nothing means "not yet": it is being
/// worked out apart, and the answer will be known when the same is asked again later.
using Planner = std::function<std::optional<tl::expected<stagger::Plan, stagger::NoPlan>>(
    const stagger::Question&, const stagger::Budget&)>;

/// Says when the tasks of a plan can be started: `stagger::safeStarts`, or a stand-in.
using SafeStarts =
    std::function<std::vector<stagger::SafeStart>(const stagger::Question&, const stagger::Plan&)>;

/// What is run: the service as it was when it started. The planner is handed
/// in so that a run can be followed with a stand-in, and stopped in time.
struct Setup {
    std::vector<service::Service> services{};
    stagger::Preference preference = stagger::Preference::AsAsked;
    Instant began{};  ///< When the run was begun; the first plan is made for this moment.
    stagger::Budget budget{};
    Planner planner = stagger::plan;  ///< `remembering` (core/run/remember.h) spares planning the same again.
    SafeStarts safeStarts = stagger::safeStarts;  ///< Likewise.
    /// What facts of the kind Amended made of `services`, in the order of recording; see core/run/amend.
    std::vector<std::vector<service::Service>> revisions{};
    std::vector<Prepared> prepared{};  ///< What was said before; empty where nobody was asked.
};

struct State {
    Instant now{};
    stagger::Progress progress{};
    std::optional<stagger::Plan> plan{};      ///< Absent when nothing fits, even with limits broken.
    std::optional<stagger::NoPlan> reason{};  ///< Why all limits can no longer hold.
    std::vector<Lane> lanes{};                ///< In the order of the service; coats not begun included.
    std::vector<Prompt> prompts{};  ///< Most pressing first: due ones by due, then coming and waiting ones.
    std::vector<LimitWatch> limits{};     ///< Of zones that develop, nearest first.
    std::vector<ExtraLook> extraLooks{};  ///< Asked for and still to be made, in the order of the service.
    std::vector<Heat> heats{};            ///< On now, at most one a head, in the order of the services.
    /// What the last fact, and the time that has gone by since, changed in the plan. Empty where
    /// no start moved by the clock's minutes; else water that stays is named too.
    std::vector<Change> changes{};
    /// The plan for the last fact is still being worked out. Until it is there `plan` is the one before,
    /// carried on in its order with what has happened since, and `changes` is empty.
    bool beingPlanned = false;
    bool finished = false;  ///< Every task is done or dropped, or the run was ended.

    friend bool operator==(const State&, const State&) = default;
};

/// The fold. `facts` in the order of recording. Facts that contradict each other
/// are taken as they are; nothing throws.
///
/// The plan is the one made for the moment the last fact was recorded at. Once a
/// start of it is overdue by 30 s, it is the one made for the last whole 30 s
/// since then, so that a plan never lies in the past and moves only now and then.
/// A planner that says "not yet" holds up nothing: stages, development and limits come from the facts alone,
/// and what is asked for goes by the plan before until the new one is known.
State stateAt(const Setup& setup, std::span<const Fact> facts, Instant now);

/// What facts amount to, before any planning: undone ones gone, moved ones moved.
stagger::Progress progressOf(const Setup& setup, std::span<const Fact> facts);

/// Something somebody says: "started", "two minutes ago", "undo".
struct Answer {
    enum class Kind {
        Start,   ///< For `Heat`, `again` is how long it stays, if somebody says so; its `part` is not looked
                 ///< at.
        Finish,  ///< For `Heat`, whichever is on that head.
        Leave,
        LookAgain,
        RinseZoneNow,  ///< `task` is the zone's Apply, or its Look.
        Drop,
        UndoLast,  ///< The last answer that stands; all its facts.
        MoveLast,  ///< The last answer really happened `ago` before now.
        End,
        Amend,      ///< `services` from now on, without the tasks of `drop`; see core/run/amend/amend.h.
        Interrupt,  ///< Applying `task` stops before it is done; the rest becomes a zone of its own.
        Abandon,    ///< Nothing more is begun of the coat of `task`; what is on the hair is rinsed.
        TurnOut,    ///< The zone of `task`, its Apply, turned out as `outcome` and `tone` say.
        Note,       ///< `tone` is to be thought of next time, of the coat of `task`, a zone's Apply.
        OtherZone,  ///< The answer `about`, or the last about a zone, was really about the zone of `task`,
                    ///< its Apply.
    };
    Kind kind = Kind::Start;
    TaskId task{};
    Seconds ago{0};    ///< It happened that long before now.
    Seconds again{0};  ///< For LookAgain, and for Start of `Heat`.
    /// For Leave, LookAgain, and RinseZoneNow of a look: what was seen, in words. For TurnOut and Note: what
    /// is said.
    std::string tone{};
    std::optional<Outcome> outcome{};  ///< For TurnOut.
    std::vector<TaskId> also{};        ///< For Leave: further looks that are left too.
    std::optional<FactNumber>
        about{};  ///< For UndoLast, MoveLast and OtherZone: another than the last. Undoing an undo redoes.
    std::vector<service::Service> services{};  ///< For Amend.
    std::vector<TaskId> drop{};                ///< For Amend.
};

/// Why an answer was not taken, in a sentence.
struct Refusal {
    Sentence what{};
};

/// Turns an answer into the facts to append (numbers still 0), or says why not:
/// finishing what never started, a time before the task began, a time to come.
tl::expected<std::vector<Fact>, Refusal> decide(const Setup& setup, std::span<const Fact> facts,
                                                const Answer& answer, Instant now);

/// What an answer amounts to in full: its facts, and what it makes of the services where it amends them,
/// which is the next of `Setup::revisions`, to be put there with the facts.
struct Decision {
    std::vector<Fact> facts{};
    std::optional<std::vector<service::Service>> revision{};
};

/// As `decide`, with the revision that it worked out on the way.
tl::expected<Decision, Refusal> decideInFull(const Setup& setup, std::span<const Fact> facts,
                                             const Answer& answer, Instant now);

}  // namespace core::run
