#pragma once

#include "app/session/clock.h"
#include "app/session/journal.h"
#include "app/session/past_run.h"
#include "app/session/planning_apart.h"
#include "app/session/sounding.h"
#include "core/alarm/call.h"
#include "core/alarm/mutes.h"
#include "core/run/run.h"
#include "core/stagger/choices.h"

#include <QObject>
#include <QString>
#include <QTimer>

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace app::session {

/// The one writer. It takes answers, asks core what they amount to, has the
/// journal keep the facts, and only then lets the state change. It owns the
/// clock, and wakes at whole seconds while a run is under way, else not at all.
///
/// In real time plans are worked out apart, and nothing waits for them but the beginning of a run: an answer
/// counts at once, and `state()` goes by the plan before until the new one is found (`State::beingPlanned`).
/// In simulated time the clock waits for each plan, so that a run that is played is the same at any speed.
///
/// If the journal fails, the run goes on in memory: `warningRaised` says so in
/// plain words, and what is not yet kept is offered to the journal again with
/// every further answer.
class Session : public QObject {
    Q_OBJECT

public:
    /// While lanes run somebody waits for the plan, so there is about a second for it: what is not proved by
    /// then is the best found so far, and says so.
    static constexpr std::uint64_t liveConflicts = 20'000;

    struct Parts {
        std::unique_ptr<Journal> journal;
        std::shared_ptr<const Clock> clock;
        std::shared_ptr<const core::measure::TimeZones> zones;
        core::alarm::Manners manners = {};
        core::stagger::Budget budget = {.conflicts = liveConflicts, .stop = {}};
        core::run::Planner planner = core::stagger::plan;  ///< May be called in another thread.
        std::optional<bool> plansApart = {};  ///< Absent: in real time apart, in simulated time at once.
    };

    explicit Session(Parts parts, QObject* parent = nullptr);
    ~Session() override;

    /// Begins a run now, by the clock. The services must have passed
    /// `checkService`. A run that is under way is left as it is, to be resumed.
    /// `prepared` is kept with it.
    RunId begin(std::vector<core::service::Service> services, core::stagger::Preference preference,
                std::vector<core::run::Prepared> prepared = {});

    /// Runs that were not ended, the latest first. Without the one that is under way.
    [[nodiscard]] std::vector<StoredRun> resumable();

    /// All runs of the journal, the latest first, without the one that is under way.
    [[nodiscard]] std::vector<StoredRun> past();
    /// One of them, to be looked back on; why not, in words, where it cannot be.
    [[nodiscard]] tl::expected<PastRun, std::string> lookBack(const StoredRun& run);
    /// Says how a past run turned out, now; see `tellOfPastRun`.
    std::optional<std::string> tellOf(PastRun& run, const core::run::Answer& answer);

    /// Takes up a run where its facts left it. A simulated run goes on from the
    /// moment of its last fact, in simulated time. An error in words, or nothing.
    std::optional<std::string> resume(RunId run);

    /// What is under way; nothing before `begin` or `resume`, and after `leave`.
    [[nodiscard]] std::optional<RunId> current() const { return m_run; }
    [[nodiscard]] const core::run::Setup& setup() const { return m_setup; }
    /// The services as amendments left them; those of `setup` are as begun.
    [[nodiscard]] const std::vector<core::service::Service>& services() const;
    [[nodiscard]] const core::run::State& state() const { return m_state; }
    [[nodiscard]] const std::vector<Fact>& facts() const { return m_facts; }

    /// What stands now, most urgent first; muted or not.
    [[nodiscard]] const std::vector<core::alarm::Alarm>& alarms() const { return m_alarms; }
    /// The same as the calls that are to be shown: those of what sounds, and those of what is muted.
    [[nodiscard]] std::vector<core::alarm::Call> calls() const;

    /// Silences each alarm of the call for a while: by itself, and only its sound. Not kept in the journal:
    /// whoever takes the run up hears all that stands. Whether any was muted.
    bool mute(const core::alarm::Call& call);
    void unmute(const core::alarm::Call& call);
    /// When the alarm sounds again; nothing where it is not muted.
    [[nodiscard]] std::optional<Instant> mutedUntil(const core::alarm::Alarm& alarm) const;
    /// Those of `alarms` that are not muted.
    [[nodiscard]] std::vector<core::alarm::Alarm> audible() const;

    /// Facts of this run that the journal could not keep so far.
    [[nodiscard]] std::size_t notKept() const { return m_facts.size() - m_kept; }

    /// Whether plans of this run are worked out apart, as in real time.
    [[nodiscard]] bool plansApart() const { return m_apart != nullptr; }

    /// Whether a plan is being worked out: the one in force, or an earlier one that is needed to tell what
    /// changed and since when something is due.
    [[nodiscard]] bool isPlanning() const { return m_apart && m_apart->isBusy(); }
    /// The plan in force has been worked out for so long that it should be said.
    [[nodiscard]] bool isPlanningLong() const { return m_planningLong; }

    /// Tells what happened. Nothing when it was taken, else why it was not.
    std::optional<core::run::Refusal> answer(const core::run::Answer& answer);

    /// What can be chosen where the limits can no longer all hold, each solved, the least harm first. Nothing
    /// goes on while they are worked out, so in real time ask `ChoiceSearch`.
    [[nodiscard]] std::vector<core::stagger::Choice> choices() const;
    /// What `choices` asks `core::stagger::choicesFor`, for whoever has it worked out apart from the window;
    /// nothing where the limits can all hold.
    [[nodiscard]] std::optional<core::stagger::Question> choiceQuestion() const;

    /// Ends the run for good: nothing sounds any more and it cannot be resumed.
    std::optional<core::run::Refusal> end();

    /// Lets go of the run without ending it; it stays resumable unless it is finished.
    void leave();

    /// Looks at the clock now and not only when the next second is due: for when the
    /// machine woke, or a clock was moved.
    void wake() { tick(); }

    /// For a clock of another kind. While no run is under way.
    void useClock(std::shared_ptr<const Clock> clock);
    [[nodiscard]] const Clock& clock() const { return *m_clock; }

Q_SIGNALS:
    /// After every answer, every second of a run and every plan that was found: `state()` is another. Or
    /// `isPlanningLong()` is.
    void stateChanged();
    /// `alarms()` is another set, or an insistence rose, or one was muted or may sound again.
    void alarmsChanged();
    /// Each time one first sounds, grows or sounds again. `state().now` is the moment.
    void called(const core::alarm::Call& call);
    /// Last for each moment and each answer, once all the others were told of it.
    void settled();
    /// No run is under way any more.
    void left();
    /// Something the person must know, in plain words.
    void warningRaised(const QString& warning);

private:
    void enter(RunId run, core::run::Setup setup, Instant from);
    void keep();
    void notKeptBecause(const JournalError& error);
    void tick();
    bool catchUp(Instant now);
    void moveTo(Instant moment);
    void sound();
    void schedule();
    void preparePatience();
    void choosePlanner();
    [[nodiscard]] core::run::State stateAt(Instant moment);
    void followPlanning();
    Q_INVOKABLE void takePlan();
    void stopWaiting();
    void stopPlanning();
    void warn(const std::string& warning);
    void chooseClock(const StoredRun& stored, Instant latest);
    void putClockRight();
    void goOnBy(const StoredRun& stored);
    void noticeSetClock();

    std::unique_ptr<Journal> m_journal;
    std::shared_ptr<const Clock> m_ownClock;  ///< As it was handed in.
    std::shared_ptr<const Clock> m_clock;     ///< What the run goes by.
    core::measure::Seconds m_toldAhead{0};    ///< How far the time of day was said to be off.
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    core::alarm::Manners m_manners;
    core::stagger::Budget m_budget;
    core::run::Planner m_planner;  ///< As it was handed in.
    std::optional<bool> m_plansApart;
    core::run::Planner m_runPlanner;         ///< The same with a memory, apart or not.
    std::unique_ptr<PlanningApart> m_apart;  ///< Where the run is planned apart.
    core::run::SafeStarts m_safeStarts;

    std::optional<RunId> m_run;
    NewRun m_newRun;                ///< As it is, or is to be, in the journal.
    std::optional<RunId> m_keptAs;  ///< Once the journal has it.
    std::size_t m_kept = 0;         ///< So many of `m_facts` are in the journal.
    std::size_t m_keptRevisions = 0;
    bool m_failing = false;
    Instant m_lastTry;

    core::run::Setup m_setup;
    std::vector<Fact> m_facts;
    core::run::State m_state;
    std::vector<core::alarm::Alarm> m_alarms;
    core::alarm::Mutes m_mutes;
    Sounding m_sounding;
    bool m_moving = false;
    bool m_entering = false;  ///< There is no plan to go by yet.
    bool m_planningLong = false;
    QTimer m_timer;
    QTimer m_patience;
};

}  // namespace app::session

Q_DECLARE_METATYPE(core::alarm::Call)
