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
    {
        for (std::size_t head = 0; head < question.services.size(); ++head)
            for (const TaskId& id : core::stagger::tasksOf(question.services[head], head))
                m_tasks.push_back(id);
    }

    void run(std::size_t place = 0)
    {
        if (place == m_tasks.size()) {
            consider();
            return;
        }
        const TaskId& id = m_tasks[place];
        const service::Service& head = m_question.services[id.service];
        const Seconds length = core::stagger::usualLength(head, id);
        for (Instant start = *head.notBefore; start + length <= *head.readyBy; start += Seconds{1}) {
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
