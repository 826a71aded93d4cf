#include "app/session/session.h"

#include "core/run/amend/amend.h"
#include "core/run/remember.h"

#include <algorithm>
#include <utility>

// What of the session is about plans, which are worked out apart, and about what can be chosen.

namespace app::session {
namespace {

/// Before that a plan that is worked out is not worth a word.
constexpr std::chrono::milliseconds longPlanning{500};

}  // namespace

void Session::preparePatience()
{
    m_patience.setSingleShot(true);
    m_patience.setInterval(longPlanning);
    connect(&m_patience, &QTimer::timeout, this, [this] {
        m_planningLong = true;
        Q_EMIT stateChanged();
    });
}

/// For the clock that the run goes by. What is remembered of another run is of no use for this one.
void Session::choosePlanner()
{
    m_setup.planner = m_planner;  // What it was planned by goes.
    m_apart.reset();
    if (!m_plansApart.value_or(!m_clock->isSimulated())) {
        m_runPlanner = core::run::remembering(m_planner);
        return;
    }
    m_apart = std::make_unique<PlanningApart>(
        m_planner, [this] { QMetaObject::invokeMethod(this, "takePlan", Qt::QueuedConnection); });
    m_runPlanner = core::run::remembering([apart = m_apart.get()](const core::stagger::Question& question,
                                                                  const core::stagger::Budget& budget) {
        return apart->ask(question, budget);
    });
}

core::run::State Session::stateAt(Instant moment)
{
    if (!m_apart)
        return core::run::stateAt(m_setup, m_facts, moment);
    const PlanningApart::Look look = m_apart->look(std::exchange(m_entering, false));
    return core::run::stateAt(m_setup, m_facts, moment);
}

/// Whether it is time to say that a plan is worked out.
void Session::followPlanning()
{
    if (!m_state.beingPlanned)
        stopWaiting();
    else if (!m_planningLong && !m_patience.isActive())
        m_patience.start();
}

void Session::stopWaiting()
{
    m_patience.stop();
    m_planningLong = false;
}

/// An answer that has been asked for meanwhile changes nothing any more.
void Session::takePlan()
{
    if (!m_run || m_moving || !m_apart || !m_apart->hasAnswer())
        return;
    moveTo(std::max(m_state.now, m_clock->now()));
    schedule();
}

std::vector<core::stagger::Choice> Session::choices() const
{
    return core::run::choicesAt(m_setup, m_facts, m_state.now);
}

std::optional<core::stagger::Question> Session::choiceQuestion() const
{
    if (!m_run || m_state.finished)
        return {};
    return core::run::choiceQuestionAt(m_setup, m_facts, m_state.now);
}

void Session::stopPlanning()
{
    stopWaiting();
    if (m_apart)
        m_apart->forget();
}

}  // namespace app::session
