#include "app/session/session.h"

#include "app/session/moments.h"
#include "app/session/stored_services.h"
#include "app/session/text.h"
#include "app/session/time_zones.h"
#include "core/run/amend/amend.h"
#include "core/run/amend/revisions.h"
#include "core/run/remember.h"
#include "core/run/standing.h"

#include <QCoreApplication>

#include <algorithm>
#include <utility>

namespace app::session {

using core::alarm::Alarm;
using core::run::Answer;
using core::run::Refusal;
using core::service::Service;

namespace {

/// While a run is played fast, the screen need not be newer than this.
constexpr std::chrono::milliseconds shortestSleep{20};

/// So many moments are gone through before whatever else waits has its turn.
constexpr int mostMomentsAtOnce = 64;

/// How often a journal that failed is tried again while nobody answers.
constexpr core::measure::Seconds retryEvery{15};

Session::Parts withDefaults(Session::Parts parts)
{
    if (!parts.journal)
        parts.journal = std::make_unique<MemoryJournal>();
    if (!parts.clock)
        parts.clock = std::make_shared<SystemClock>();
    if (!parts.zones)
        parts.zones = std::make_shared<QtTimeZones>();
    return parts;
}

bool isSameButForTime(const Alarm& a, const Alarm& b)
{
    return a.kind == b.kind && a.subject == b.subject && a.task == b.task && a.asks == b.asks
        && a.insistence == b.insistence;
}

bool hasEnded(const std::vector<Fact>& facts)
{
    const std::vector<Fact> standing = core::run::standingFacts(facts);
    return std::ranges::find(standing, core::run::FactKind::Ended, &Fact::kind) != standing.end();
}

Instant latestMoment(Instant began, const std::vector<Fact>& facts)
{
    return facts.empty() ? began : std::max(began, facts.back().recorded);
}

}  // namespace

Session::Session(Parts given, QObject* parent)
    : QObject{parent}
{
    Parts parts = withDefaults(std::move(given));
    m_journal = std::move(parts.journal);
    m_ownClock = std::move(parts.clock);
    m_clock = m_ownClock;
    m_zones = std::move(parts.zones);
    m_manners = parts.manners;
    m_budget = std::move(parts.budget);
    m_planner = std::move(parts.planner);
    m_plansApart = parts.plansApart;
    m_safeStarts = core::run::remembering(core::run::SafeStarts{core::stagger::safeStarts});
    m_timer.setSingleShot(true);
    m_timer.setTimerType(Qt::PreciseTimer);
    connect(&m_timer, &QTimer::timeout, this, &Session::tick);
    preparePatience();
}

Session::~Session()
{
    leave();
}

void Session::useClock(std::shared_ptr<const Clock> clock)
{
    m_ownClock = std::move(clock);
    m_clock = m_ownClock;
}

RunId Session::begin(std::vector<Service> services, core::stagger::Preference preference,
                     std::vector<core::run::Prepared> prepared)
{
    leave();
    m_setup = {};
    putClockRight();
    choosePlanner();
    m_newRun = NewRun{textsOf(services, *m_zones), preference,      m_clock->now(),
                      m_clock->isSimulated(),      m_clock->base(), prepared};
    m_keptAs.reset();
    m_kept = 0;
    m_keptRevisions = 0;
    core::run::Setup setup{.services = std::move(services),
                           .preference = preference,
                           .began = m_newRun.began,
                           .budget = m_budget,
                           .planner = m_runPlanner,
                           .safeStarts = m_safeStarts,
                           .revisions = {},
                           .prepared = std::move(prepared)};
    m_facts.clear();
    keep();
    enter(m_keptAs.value_or(RunId{0}), std::move(setup), m_newRun.began);
    return *m_run;
}

std::vector<StoredRun> Session::resumable()
{
    auto runs = m_journal->unfinished();
    if (!runs) {
        warn(runs.error().what);
        return {};
    }
    std::erase_if(*runs, [&](const StoredRun& stored) { return m_run && stored.id == m_keptAs; });
    return std::move(*runs);
}

std::optional<std::string> Session::resume(RunId run)
{
    auto stored = m_journal->run(run);
    if (!stored)
        return stored.error().what;
    if (stored->damaged)
        return Text::tr("This run is damaged in the journal: its service was changed there. It cannot be "
                        "taken up again; the journal has been left as it is.")
            .toStdString();
    if (!stored->run.simulated && m_clock->isSimulated())
        return Text::tr("This run goes by the time of day and cannot be played at another speed.")
            .toStdString();
    auto services = servicesOf(stored->run.services, stored->run.began, *m_zones);
    if (!services)
        return services.error();
    auto revisions = revisionsOf(*stored, *m_zones);
    if (!revisions)
        return revisions.error();
    auto facts = m_journal->facts(run);
    if (!facts)
        return facts.error().what;

    leave();
    const Instant latest = latestMoment(stored->run.began, *facts);
    chooseClock(*stored, latest);
    choosePlanner();
    m_newRun = stored->run;
    m_keptAs = run;
    m_facts = std::move(*facts);
    m_kept = m_facts.size();
    m_keptRevisions = revisions->size();
    const Instant from = stored->run.simulated ? latest : m_clock->now();
    enter(run,
          {.services = std::move(*services),
           .preference = stored->run.preference,
           .began = stored->run.began,
           .budget = m_budget,
           .planner = m_runPlanner,
           .safeStarts = m_safeStarts,
           .revisions = std::move(*revisions),
           .prepared = stored->run.prepared},
          from);
    return std::nullopt;
}

/// Real time goes on by elapsed time, whatever was done to the clock meanwhile, as long as the machine was
/// not started anew.
void Session::chooseClock(const StoredRun& stored, Instant latest)
{
    if (stored.run.simulated) {
        m_clock = std::make_shared<FastClock>(m_clock->speed(), latest);
        return;
    }
    putClockRight();
    goOnBy(stored);
    if (m_clock->now() < latest)
        warn(Text::tr("The clock of this machine shows an earlier time than when this run was last answered. "
                      "Put the clock right and start again, or every time that is shown will be wrong.")
                 .toStdString());
    noticeSetClock();
}

/// The time of day as it is now: the program may have been started before somebody put the clock right.
void Session::putClockRight()
{
    const auto fresh = m_ownClock->afresh();
    m_clock = fresh ? fresh : m_ownClock;
    m_toldAhead = core::measure::Seconds{0};
}

void Session::goOnBy(const StoredRun& stored)
{
    if (!stored.run.base)
        return;
    if (auto same = m_ownClock->by(*stored.run.base)) {
        m_clock = std::move(same);
        return;
    }
    const auto base = m_clock->base();
    if (!base)
        return;
    warn(Text::tr("This machine was started anew since this run was last led, so the run goes by the "
                  "machine's clock again. If that clock is wrong, so is every time that is shown.")
             .toStdString());
    if (const auto kept = m_journal->rebase(stored.id, *base); !kept)
        warn(kept.error().what);
}

/// Somebody set the clock: what is under way is not touched by that, but it has to be said why times differ.
void Session::noticeSetClock()
{
    const core::measure::Seconds ahead = m_clock->wallAhead();
    if (const auto text = setClockText(ahead, m_toldAhead)) {
        m_toldAhead = ahead;
        warn(*text);
    }
}

/// Stands at `from` first: keeping the run took a while, and a clock that is played fast is far by now.
void Session::enter(RunId run, core::run::Setup setup, Instant from)
{
    m_run = run;
    m_setup = std::move(setup);
    m_sounding.forget();
    m_mutes.forget();
    m_alarms.clear();
    m_lastTry = from;
    m_entering = true;
    moveTo(from);
    schedule();
}

std::optional<Refusal> Session::answer(const Answer& answer)
{
    if (!m_run)
        return Refusal{core::measure::Sentence::worded("No run is under way.")};
    // An answer given in a slot, while the session is catching up, is for the moment that the slot was told
    // of.
    for (const Instant now = m_clock->now(); !m_moving && catchUp(now);) { }
    auto decision = core::run::decideInFull(m_setup, m_facts, answer, m_state.now);
    if (!decision)
        return decision.error();
    if (decision->revision)
        m_setup.revisions.push_back(std::move(*decision->revision));
    for (Fact& fact : decision->facts) {
        fact.number = FactNumber{static_cast<std::int64_t>(m_facts.size()) + 1};
        m_facts.push_back(fact);
    }
    keep();
    moveTo(m_state.now);
    schedule();
    return std::nullopt;
}

const std::vector<Service>& Session::services() const
{
    return core::run::servicesAt(m_setup, m_facts);
}

std::optional<Refusal> Session::end()
{
    Answer over;
    over.kind = Answer::Kind::End;
    return answer(over);
}

void Session::leave()
{
    if (!m_run)
        return;
    m_timer.stop();
    // As long as the run is open its last answer can be undone; now that is past.
    if (m_state.finished && !hasEnded(m_facts))
        end();
    keep();
    if (m_run && notKept() > 0)
        warn(Text::tr("Leaving this run loses its last %n answers: the journal could not be written.",
                      nullptr, static_cast<int>(notKept()))
                 .toStdString());
    m_run.reset();
    m_timer.stop();
    stopPlanning();
    Q_EMIT left();
}

/// Offers the journal what it does not have yet. The run itself comes first: facts belong to one.
void Session::keep()
{
    if (!m_keptAs) {
        const auto run = m_journal->begin(m_newRun);
        if (!run)
            return notKeptBecause(run.error());
        m_keptAs = *run;
        if (m_run)
            m_run = m_keptAs;
    }
    for (; m_keptRevisions < m_setup.revisions.size(); ++m_keptRevisions) {
        const auto kept = m_journal->amend(*m_keptAs, m_keptRevisions + 1,
                                           textsOf(m_setup.revisions[m_keptRevisions], *m_zones));
        if (!kept)
            return notKeptBecause(kept.error());
    }
    if (notKept() > 0) {
        const auto numbers = m_journal->append(*m_keptAs, std::span<const Fact>{m_facts}.subspan(m_kept));
        if (!numbers)
            return notKeptBecause(numbers.error());
        m_kept = m_facts.size();
    }
    if (std::exchange(m_failing, false))
        warn(
            Text::tr("The journal can be written again, and everything of this run is in it.").toStdString());
}

void Session::notKeptBecause(const JournalError& error)
{
    m_lastTry = m_state.now;
    if (!std::exchange(m_failing, true))
        warn(error.what + ' '
             + Text::tr("This run goes on, but what is answered now is lost if the program stops. It is "
                        "written as soon as that is possible again.")
                   .toStdString());
}

void Session::tick()
{
    if (m_run)
        noticeSetClock();
    catchUp(m_clock->now());
    schedule();
}

/// Goes on towards `now`, for some moments. Whether it did not get there yet.
bool Session::catchUp(Instant now)
{
    for (int moments = 0; moments < mostMomentsAtOnce && m_run && m_state.now < now; ++moments)
        // In real time what nobody could hear, because the machine slept, is past: only what stands now
        // counts.
        moveTo(m_clock->isSimulated() ? nextMoment(m_state, m_manners, now) : now);
    return m_run && m_state.now < now && !m_state.finished;
}

void Session::moveTo(Instant moment)
{
    const bool outer = std::exchange(m_moving, true);
    if (m_failing && moment - m_lastTry >= retryEvery)
        keep();
    const std::size_t audibleBefore = audible().size();
    m_state = stateAt(moment);
    followPlanning();
    auto alarms = core::alarm::alarmsAt(m_state, m_manners, moment);
    bool same = std::equal(alarms.begin(), alarms.end(), m_alarms.begin(), m_alarms.end(), isSameButForTime);
    m_alarms = std::move(alarms);
    same = same && audible().size() == audibleBefore;
    Q_EMIT stateChanged();
    if (!same)
        Q_EMIT alarmsChanged();
    sound();
    Q_EMIT settled();
    m_moving = outer;
}

void Session::schedule()
{
    if (!m_run || m_state.finished)
        return m_timer.stop();
    if (m_state.now < m_clock->now())
        return m_timer.start(0);
    auto sleep = m_clock->until(m_state.now + core::measure::Seconds{1});
    if (m_clock->isSimulated())
        sleep = std::max(sleep, shortestSleep);
    m_timer.start(sleep);
}

void Session::warn(const std::string& warning)
{
    Q_EMIT warningRaised(QString::fromStdString(warning));
}

}  // namespace app::session
