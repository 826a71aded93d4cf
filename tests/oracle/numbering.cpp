#include "tests/oracle/numbering.h"

#include "tests/oracle/facts.h"

#include <algorithm>
#include <tuple>

namespace oracle {
namespace {

bool before(const PlannedTask& a, const PlannedTask& b)
{
    return std::tie(a.start, a.id) < std::tie(b.start, b.id);
}

template <typename Keep>
std::vector<PlannedTask> inOrder(const PlanView& view, Keep keep)
{
    std::vector<PlannedTask> tasks;
    std::ranges::copy_if(view.plan().tasks, std::back_inserter(tasks), keep);
    std::ranges::sort(tasks, before);
    return tasks;
}

bool takesBasin(const PlannedTask& task)
{
    return isRinse(task.id);
}

bool takesHands(const PlannedTask& task)
{
    return task.start < task.end;
}

/// Depth first, lowest number first: the first way found is the least one.
class HandsSearch {
public:
    explicit HandsSearch(const PlanView& view)
        : m_view{view}
        , m_tasks{inOrder(view, takesHands)}
    {
        for (PlannedTask& task : m_tasks) {
            task.hands.reset();
            task.madeWhile.reset();
        }
    }

    bool solve(std::size_t place = 0)
    {
        if (place == m_tasks.size())
            return true;
        for (std::size_t hands = 0; hands < m_view.crew().hands.size(); ++hands) {
            m_tasks[place].hands = hands;
            if (fits(place) && solve(place + 1))
                return true;
        }
        m_tasks[place].hands.reset();
        m_tasks[place].madeWhile.reset();
        return false;
    }

    [[nodiscard]] const std::vector<PlannedTask>& tasks() const { return m_tasks; }

private:
    /// The application that these hands are at when the look starts, in so far as that is settled: it may
    /// start in the same second and come later in the order.
    bool settleMadeWhile(PlannedTask& task)
    {
        task.madeWhile.reset();
        const auto underWay = applicationsUnderWay(m_view, task);
        for (const PlannedTask* apply : underWay) {
            const auto own = std::ranges::find(m_tasks, apply->id, &PlannedTask::id);
            if (!own->hands || own->hands == task.hands) {
                task.madeWhile = apply->id;
                if (own->hands)
                    break;
            }
        }
        return underWay.empty() || task.madeWhile;
    }

    bool mayDo(PlannedTask& task)
    {
        if (task.id.kind == TaskKind::Look && !settleMadeWhile(task))
            return false;
        const service::Hands& hands = m_view.crew().hands[*task.hands];
        const bool away = std::ranges::any_of(hands.away, [&](const core::measure::Interval& interval) {
            return task.start < interval.until && interval.from < task.end;
        });
        return !away && (task.madeWhile || hands.does(core::stagger::workOf(task.id.kind)));
    }

    bool fits(std::size_t place)
    {
        if (!mayDo(m_tasks[place]))
            return false;
        for (std::size_t other = 0; other < place; ++other) {
            PlannedTask& earlier = m_tasks[other];
            const bool counts =
                earlier.id.kind == TaskKind::Look && m_tasks[place].id.kind == TaskKind::Apply;
            if (counts && !mayDo(earlier))
                return false;
            if (earlier.hands == m_tasks[place].hands && !canShareHands(earlier, m_tasks[place]))
                return false;
        }
        return true;
    }

    const PlanView& m_view;
    std::vector<PlannedTask> m_tasks;
};

}  // namespace

std::vector<const PlannedTask*> applicationsUnderWay(const PlanView& view, const PlannedTask& look)
{
    std::vector<const PlannedTask*> underWay;
    for (const PlannedTask* task : view.tasksOfHead(look.id.service))
        if (task->id.kind == TaskKind::Apply && task->start <= look.start && look.start < task->end)
            underWay.push_back(task);
    return underWay;
}

bool canShareHands(const PlannedTask& a, const PlannedTask& b)
{
    const bool looksOnOneHead =
        a.id.kind == TaskKind::Look && b.id.kind == TaskKind::Look && a.id.service == b.id.service;
    return looksOnOneHead || a.madeWhile == b.id || b.madeWhile == a.id
        || !(a.start < b.end && b.start < a.end);
}

Numbers handsInOrder(const PlanView& view)
{
    Numbers numbers;
    for (const PlannedTask& task : inOrder(view, takesHands))
        numbers.push_back(task.hands);
    return numbers;
}

std::optional<Numbers> lowestHands(const PlanView& view)
{
    HandsSearch search{view};
    if (!search.solve())
        return std::nullopt;
    Numbers numbers;
    for (const PlannedTask& task : search.tasks())
        numbers.push_back(task.hands);
    return numbers;
}

Numbers basinsInOrder(const PlanView& view)
{
    Numbers numbers;
    for (const PlannedTask& rinse : inOrder(view, takesBasin))
        numbers.push_back(rinse.basin);
    return numbers;
}

Numbers lowestBasins(const PlanView& view)
{
    std::vector<PlannedTask> rinses = inOrder(view, takesBasin);
    Numbers numbers;
    for (std::size_t place = 0; place < rinses.size(); ++place) {
        std::size_t basin = 0;
        const auto isTaken = [&] {
            for (std::size_t other = 0; other < place; ++other)
                if (rinses[other].end > rinses[place].start && numbers[other] == basin)
                    return true;
            return false;
        };
        while (isTaken())
            ++basin;
        numbers.emplace_back(basin);
    }
    return numbers;
}

bool number(const Question& question, PlanData& plan)
{
    std::ranges::sort(plan.tasks, before);
    const PlanView view{question, plan};
    HandsSearch search{view};
    if (!search.solve())
        return false;
    const Numbers basins = lowestBasins(view);
    std::size_t rinse = 0;
    for (PlannedTask& task : plan.tasks) {
        const auto found = std::ranges::find(search.tasks(), task.id, &PlannedTask::id);
        if (found != search.tasks().end()) {
            task.hands = found->hands;
            task.madeWhile = found->madeWhile;
        }
        if (isRinse(task.id))
            task.basin = basins[rinse++];
    }
    return true;
}

}  // namespace oracle
