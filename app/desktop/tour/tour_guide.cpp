#include "app/desktop/tour/tour_guide.h"

#include <algorithm>

namespace app::desktop {
namespace {

using core::measure::Seconds;
using core::run::Answer;
using core::run::Prompt;
using core::stagger::TaskKind;

constexpr int tickMilliseconds = 25;
constexpr Seconds perTick{8};
constexpr double speed = 320;  ///< What comes of the two above.

/// So much later than planned the first application ends, so that there is a change of plan to be seen.
constexpr Seconds longer{4 * 60};

Answer asPlanned(const Prompt& prompt)
{
    Answer answer;
    answer.task = prompt.task;
    answer.kind = prompt.asks == Prompt::Asks::Finish ? Answer::Kind::Finish
        : prompt.asks == Prompt::Asks::Look           ? Answer::Kind::Leave
                                                      : Answer::Kind::Start;
    return answer;
}

bool isDue(const Prompt& prompt, const core::run::State& state)
{
    return prompt.due <= state.now && !prompt.waitsFor;
}

}  // namespace

TourGuide::TourGuide(core::service::Service service, core::measure::Instant start,
                     std::shared_ptr<const core::measure::TimeZones> zones, QObject* parent)
    : QObject{parent}
    , m_service{std::move(service)}
    , m_clock{std::make_shared<TourClock>(start, speed)}
    , m_session{{.journal = std::make_unique<session::MemoryJournal>(),
                 .clock = m_clock,
                 .zones = std::move(zones)}}
{
    m_timer.setInterval(tickMilliseconds);
    connect(&m_timer, &QTimer::timeout, this, &TourGuide::advance);
}

void TourGuide::goOn()
{
    if (isGoing()) {
        while (isGoing())
            advance();
        return;
    }
    if (m_stop == Stop::End)
        return;
    const Stop left = m_stop;
    m_stop = static_cast<Stop>(static_cast<int>(m_stop) + 1);
    if (left == Stop::Plan)
        return begin();
    if (!m_session.state().prompts.empty() && isDue(m_session.state().prompts.front(), m_session.state()))
        m_session.answer(asPlanned(m_session.state().prompts.front()));
    m_timer.start();
    Q_EMIT changed();
}

void TourGuide::begin()
{
    m_session.begin({m_service}, core::stagger::Preference::AsAsked);
    Q_EMIT changed();
}

/// A step at a time, and never past what is due, so that all is answered to the second.
void TourGuide::advance()
{
    if (!isThere()) {
        answerWhatIsDue();
        if (!isThere()) {
            m_clock->goOn(std::min(perTick, toNext()));
            m_session.wake();
        }
    }
    if (!isThere())
        return;
    m_timer.stop();
    Q_EMIT changed();
}

bool TourGuide::isThere() const
{
    const core::run::State& state = m_session.state();
    const auto isFirst = [&](auto&& asked) {
        return std::ranges::any_of(
            state.prompts, [&](const Prompt& prompt) { return isDue(prompt, state) && asked(prompt); });
    };
    switch (m_stop) {
    case Stop::Plan:
    case Stop::OneThing: return true;
    case Stop::Change: return (hasApplied() && !state.changes.empty()) || state.finished;
    case Stop::Look:
        return isFirst([](const Prompt& prompt) { return prompt.asks == Prompt::Asks::Look; })
            || state.finished;
    case Stop::Alarm:
        return isFirst([](const Prompt& prompt) {
                   return prompt.task.kind == TaskKind::Rinse && prompt.asks == Prompt::Asks::Start;
               })
            || state.finished;
    case Stop::End: return state.finished;
    }
    return true;
}

/// Whether the application that takes longer is over.
bool TourGuide::hasApplied() const
{
    return std::ranges::any_of(m_session.facts(), [](const session::Fact& fact) {
        return fact.kind == core::run::FactKind::Finished && fact.task.kind == TaskKind::Apply;
    });
}

/// What is asked for is answered as soon as it is due, but for the first application, which takes longer.
void TourGuide::answerWhatIsDue()
{
    for (;;) {
        const core::run::State& state = m_session.state();
        const auto due = std::ranges::find_if(
            state.prompts, [&](const Prompt& prompt) { return isDue(prompt, state) && !isHeldBack(prompt); });
        if (due == state.prompts.end() || m_session.answer(asPlanned(*due)) || isThere())
            return;
    }
}

bool TourGuide::isHeldBack(const Prompt& prompt) const
{
    return m_stop == Stop::Change && prompt.task.kind == TaskKind::Apply
        && prompt.asks == Prompt::Asks::Finish && m_session.state().now < prompt.due + longer;
}

Seconds TourGuide::toNext() const
{
    const core::run::State& state = m_session.state();
    Seconds next = perTick;
    for (const Prompt& prompt : state.prompts)
        if (prompt.due > state.now)
            next = std::min(next, Seconds{prompt.due - state.now});
    return std::max(next, Seconds{1});
}

}  // namespace app::desktop
