#include "app/session/choice_search.h"

#include <memory>

namespace app::session {
namespace {

constexpr int patienceMilliseconds = 500;

}  // namespace

ChoiceSearch::ChoiceSearch(const Session& session, QObject* parent)
    : QObject{parent}
    , m_session{session}
{
    m_patience.setSingleShot(true);
    m_patience.setInterval(patienceMilliseconds);
    connect(&m_patience, &QTimer::timeout, this, [this] {
        m_long = true;
        Q_EMIT changed();
    });
}

void ChoiceSearch::open()
{
    const auto question = m_session.choiceQuestion();
    if (!question)
        return close();
    m_open = true;
    m_long = false;
    m_run = m_session.current();
    m_facts = m_session.facts().size();
    m_asOf = m_session.state().now;
    m_patience.start();
    m_work.begin([this, question = *question,
                  budget = m_session.setup().budget](const BackgroundWork::Stop& stop) {
        core::stagger::Budget both = budget;
        both.stop = [stop, ours = budget.stop] { return stop() || (ours && ours()); };
        auto choices =
            std::make_shared<std::vector<core::stagger::Choice>>(core::stagger::choicesFor(question, both));
        return [this, choices] { found(std::move(*choices)); };
    });
    Q_EMIT changed();
}

void ChoiceSearch::found(std::vector<core::stagger::Choice> choices)
{
    m_patience.stop();
    m_choices = std::move(choices);
    Q_EMIT changed();
}

void ChoiceSearch::close()
{
    const bool was = m_open;
    m_work.forget();
    m_patience.stop();
    m_open = false;
    m_choices.clear();
    if (was)
        Q_EMIT changed();
}

void ChoiceSearch::follow()
{
    if (!m_open)
        return;
    const core::run::State& state = m_session.state();
    if (m_session.current() != m_run || state.finished || !state.reason)
        return close();
    if (m_session.facts().size() == m_facts)
        return;
    m_choices.clear();  // One of them would take back what was answered since.
    open();
}

}  // namespace app::session
