#include "tests/oracle/brute_force.h"

#include "tests/oracle/checker.h"
#include "tests/oracle/figures.h"
#include "tests/oracle/plan_from_starts.h"

namespace oracle {
namespace {

class Trial {
public:
    explicit Trial(const Question& question)
        : m_question{question}
        , m_tasks{core::stagger::tasksOf(question.services.front())}
        , m_from{*question.services.front().notBefore}
        , m_until{*question.services.front().readyBy}
    {
    }

    void run(std::size_t place = 0)
    {
        if (place == m_tasks.size()) {
            consider();
            return;
        }
        const TaskId& id = m_tasks[place];
        const Seconds length = core::stagger::usualLength(m_question.services.front(), id);
        for (Instant start = m_from; start + length <= m_until; start += Seconds{1}) {
            m_starts[id] = start;
            run(place + 1);
        }
        m_starts.erase(id);
        if (id.kind == TaskKind::Look)
            run(place + 1);
    }

    [[nodiscard]] const std::optional<PlanData>& best() const { return m_best; }

private:
    void consider()
    {
        const auto plan = planFromStarts(m_question, m_starts);
        if (!plan || (m_best && !isBetter(*plan, *m_best)) || !violations(m_question, *plan).empty())
            return;
        m_best = plan;
    }

    [[nodiscard]] bool isBetter(const PlanData& plan, const PlanData& other) const
    {
        if (plan.worth != other.worth)
            return plan.worth < other.worth;
        return startsInOrder(m_question, plan) < startsInOrder(m_question, other);
    }

    const Question& m_question;
    std::vector<TaskId> m_tasks;
    Instant m_from;
    Instant m_until;
    Starts m_starts;
    std::optional<PlanData> m_best;
};

}  // namespace

std::optional<PlanData> planByTryingAll(const Question& question)
{
    Trial trial{question};
    trial.run();
    return trial.best();
}

}  // namespace oracle
