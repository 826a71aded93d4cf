#include "core/stagger/planned_times.h"

#include <algorithm>
#include <deque>

namespace core::stagger {
namespace {

using temporal::Clause;

class PlannedTimes {
public:
    explicit PlannedTimes(const Draft& draft)
        : m_problem{draft.problem}
        , m_numberZero{draft.numberZero.value_or(temporal::origin)}
        , m_times(static_cast<std::size_t>(m_problem.points), 0)
        , m_arriving(m_times.size())
        , m_isRaised(m_times.size(), false)
    {
        for (const Lag& lag : m_problem.lags)
            m_arriving[index(lag.to)].push_back(&lag);
        for (Point point = 0; point < m_problem.points; ++point)
            raise(point, 0);
    }

    bool find()
    {
        // A clause is mended once as a rule; many more times is going round in circles.
        for (std::size_t tries = 0; tries < 4 * m_problem.clauses.size() + 4; ++tries) {
            if (!settle())
                return false;
            const auto broken = std::ranges::find_if(m_problem.clauses, [this](const Clause& clause) {
                return std::ranges::none_of(clause, [this](const Lag& lag) { return lateBy(lag) <= 0; });
            });
            if (broken == m_problem.clauses.end())
                return true;
            if (!mend(*broken))
                return false;
        }
        return false;
    }

    std::vector<Time> times() && { return std::move(m_times); }

private:
    static std::size_t index(Point point) { return static_cast<std::size_t>(point); }
    /// How much later the first of its points would have to be.
    [[nodiscard]] Time lateBy(const Lag& lag) const
    {
        return m_times[index(lag.to)] - m_times[index(lag.from)] - lag.most;
    }
    [[nodiscard]] bool canBeRaised(Point point) const
    {
        return point != temporal::origin && point != m_numberZero;
    }

    void raise(Point point, Time by)
    {
        m_times[index(point)] += by;
        if (!m_isRaised[index(point)])
            m_raised.push_back(point);
        m_isRaised[index(point)] = true;
    }

    /// Raises points until every lag holds; false if what stands still would have to.
    bool settle()
    {
        for (; !m_raised.empty(); m_raised.pop_front()) {
            const Point to = m_raised.front();
            m_isRaised[index(to)] = false;
            for (const Lag* lag : m_arriving[index(to)]) {
                const Time by = lateBy(*lag);
                if (by > 0 && !canBeRaised(lag->from))
                    return false;
                if (by > 0)
                    raise(lag->from, by);
            }
        }
        return true;
    }

    /// Makes that lag hold for which something is raised the least.
    bool mend(const Clause& clause)
    {
        const Lag* least = nullptr;
        for (const Lag& lag : clause) {
            if (canBeRaised(lag.from) && (least == nullptr || lateBy(lag) < lateBy(*least)))
                least = &lag;
        }
        if (least != nullptr)
            raise(least->from, lateBy(*least));
        return least != nullptr;
    }

    const temporal::Problem& m_problem;
    Point m_numberZero;
    std::vector<Time> m_times;
    std::vector<std::vector<const Lag*>> m_arriving;
    std::deque<Point> m_raised;  ///< What has not been looked at since.
    std::vector<bool> m_isRaised;
};

}  // namespace

std::optional<std::vector<Time>> plannedTimes(const Draft& draft)
{
    if (draft.impossible)
        return std::nullopt;
    PlannedTimes planned{draft};
    if (!planned.find())
        return std::nullopt;
    std::vector<Time> times = std::move(planned).times();
    return brokenByCrew(draft, times).empty() ? std::optional{std::move(times)} : std::nullopt;
}

}  // namespace core::stagger
