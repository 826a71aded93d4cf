#include "app/session/planning_apart.h"

#include <utility>

namespace app::session {

PlanningApart::PlanningApart(core::run::Planner planner, std::function<void()> found)
    : m_planner{std::move(planner)}
    , m_found{std::move(found)}
{
}

PlanningApart::~PlanningApart()
{
    forget();
}

PlanningApart::Look::Look(PlanningApart& planning, bool first)
    : m_planning{planning}
{
    m_planning.m_looking = true;
    m_planning.m_first = first;
    m_planning.m_wanted = false;
    m_planning.m_until = std::chrono::steady_clock::now() + patience;
}

PlanningApart::Look::~Look()
{
    m_planning.m_looking = false;
    if (!m_planning.m_wanted)
        m_planning.forget();
}

std::optional<PlanningApart::PlanAnswer> PlanningApart::ask(const core::stagger::Question& question,
                                                            const core::stagger::Budget& budget)
{
    if (!m_looking || m_wanted)
        return {};
    const bool goesOn = m_search && m_search->question == question;
    if (!goesOn)
        begin(question, budget);
    // What has been worked out for a while is not waited for once more, second after second.
    if (!goesOn || m_first)
        waitForAnswer();
    std::optional<PlanAnswer> answer = answered();
    m_wanted = !answer;
    if (answer) {
        m_search.reset();
        m_first = m_first && !*answer;
    }
    return answer;
}

void PlanningApart::begin(const core::stagger::Question& question, const core::stagger::Budget& budget)
{
    forget();
    m_search = std::make_shared<Search>();
    m_search->question = question;
    m_search->budget = budget;
    // The search owns what it is asked by; whoever stops it outlives it.
    m_search->budget.stop = [search = m_search.get(), theirs = budget.stop] {
        return search->stopped || (theirs && theirs());
    };
    m_worker.give([this, search = m_search] { solve(*search); });
}

void PlanningApart::forget()
{
    if (!m_search)
        return;
    m_search->stopped = true;
    m_worker.drop();
    m_search.reset();
}

bool PlanningApart::hasAnswer()
{
    const std::lock_guard guard{m_guard};
    return m_search && m_search->answer;
}

std::optional<PlanningApart::PlanAnswer> PlanningApart::answered()
{
    const std::lock_guard guard{m_guard};
    return m_search->answer;
}

void PlanningApart::waitForAnswer()
{
    std::unique_lock guard{m_guard};
    const auto isThere = [this] { return m_search->answer.has_value(); };
    if (m_first)
        m_answered.wait(guard, isThere);
    else
        m_answered.wait_until(guard, m_until, isThere);
}

void PlanningApart::solve(Search& search)
{
    std::optional<PlanAnswer> answer = m_planner(search.question, search.budget);
    // One that was stopped knows nothing. Nobody would hear of it either.
    if (search.stopped)
        return;
    {
        const std::lock_guard guard{m_guard};
        search.answer = std::move(answer);
    }
    m_answered.notify_all();
    m_found();
}

}  // namespace app::session
