#include "app/desktop/setup/start_wish.h"

#include <algorithm>
#include <memory>

namespace app::desktop {
namespace {

using core::measure::Instant;
using core::stagger::StartRange;
using Minutes = std::chrono::minutes;

/// Nobody waits for a limit longer than that; without one the start can be moved all the same.
constexpr std::uint64_t conflictsForRange = 50'000;

/// Whole minutes of the clock, so that what is chosen can be said and typed.
Instant wholeMinute(Instant moment)
{
    return std::chrono::floor<Minutes>(moment);
}

}  // namespace

StartWish::StartWish(QObject* parent)
    : QObject{parent}
{
    connect(&m_planner, &BackgroundPlanner::answered, this, &StartWish::take);
}

void StartWish::setPlan(core::stagger::Question question, core::stagger::Plan plan)
{
    letGo();
    m_question = std::move(question);
    m_plan = std::move(plan);
}

void StartWish::forgetPlan()
{
    letGo();
    m_plan.reset();
}

void StartWish::begin(const view::TaskId& zone)
{
    m_zone = zone;
    m_start = m_plan->find(zone)->start;
    m_minutes = 0;
    m_stopped = Stopped::No;
    m_range.reset();
    m_outcome.reset();
    m_shown.reset();
    findRange();
}

void StartWish::tryOut(const view::TaskId& zone, int minutes)
{
    if (!m_plan || m_plan->find(zone) == nullptr)
        return;
    const bool begins = m_zone != zone;
    if (begins)
        begin(zone);
    const int kept = bounded(minutes);
    const Stopped stopped = kept < minutes ? Stopped::AtLatest
        : kept > minutes                   ? Stopped::AtEarliest
                                           : Stopped::No;
    if (!begins && kept == m_minutes && stopped == m_stopped)
        return;
    const bool moves = begins || kept != m_minutes;
    m_minutes = kept;
    m_stopped = stopped;
    if (moves)
        ask();
    Q_EMIT changed();
}

void StartWish::letGo()
{
    m_planner.forget();
    m_ranges.forget();
    if (!m_zone)
        return;
    m_zone.reset();
    m_range.reset();
    m_outcome.reset();
    m_shown.reset();
    Q_EMIT changed();
}

/// What the document asks for.
std::optional<Instant> StartWish::asked() const
{
    return m_question.services[m_zone->service].coats[m_zone->coat].zones[m_zone->item].notBefore;
}

std::optional<Instant> StartWish::wanted() const
{
    if (m_minutes == 0)
        return asked();
    const Instant moment = wholeMinute(m_start) + Minutes{m_minutes};
    if (m_range && moment <= m_range->earliest)
        return std::nullopt;
    return moment;
}

Instant StartWish::moment() const
{
    if (m_minutes == 0)
        return m_start;
    const Instant moment = wholeMinute(m_start) + Minutes{m_minutes};
    return m_range ? std::max(moment, m_range->earliest) : moment;
}

bool StartWish::isNews() const
{
    return isOn() && wanted() != asked();
}

std::optional<int> StartWish::least() const
{
    if (!m_range)
        return asked() ? std::nullopt : std::optional{0};
    return static_cast<int>((wholeMinute(m_range->earliest) - wholeMinute(m_start)) / Minutes{1});
}

std::optional<int> StartWish::most() const
{
    if (!m_range || !m_range->latest)
        return std::nullopt;
    // What is planned fits, whatever whole minutes say.
    const auto whole = (wholeMinute(*m_range->latest) - wholeMinute(m_start)) / Minutes{1};
    return std::max(0, static_cast<int>(whole));
}

int StartWish::bounded(int minutes) const
{
    const int atLeast = std::max(minutes, least().value_or(minutes));
    return std::min(atLeast, most().value_or(atLeast));
}

void StartWish::ask()
{
    if (!isNews()) {
        m_planner.forget();
        m_shown.reset();
        m_outcome = *m_plan;
        return;
    }
    m_outcome.reset();
    m_planner.ask(wanting(m_question, *m_zone, wanted()));
}

void StartWish::take(const BackgroundPlanner::Outcome& outcome)
{
    if (!m_zone)
        return;
    m_outcome = outcome;
    if (outcome)
        m_shown = *outcome;
    else
        std::erase_if(m_outcome->error().demands, [this](const core::stagger::Demand& demand) {
            return demand.kind == core::stagger::DemandKind::NotBefore && demand.task == m_zone;
        });
    Q_EMIT changed();
}

void StartWish::findRange()
{
    m_ranges.begin([this, question = m_question, zone = *m_zone](const session::BackgroundWork::Stop& stop) {
        auto found = std::make_shared<std::optional<StartRange>>(
            core::stagger::startRangeOf(question, zone, {.conflicts = conflictsForRange, .stop = stop}));
        return [this, found] { takeRange(*found); };
    });
}

/// What was tried out beyond it meanwhile comes back to it.
void StartWish::takeRange(const std::optional<StartRange>& range)
{
    if (!m_zone || !range)
        return;
    const std::optional<Instant> before = wanted();
    m_range = range;
    const int kept = bounded(m_minutes);
    if (kept != m_minutes)
        m_stopped = kept < m_minutes ? Stopped::AtLatest : Stopped::AtEarliest;
    m_minutes = kept;
    if (wanted() != before)
        ask();
    Q_EMIT changed();
}

}  // namespace app::desktop
