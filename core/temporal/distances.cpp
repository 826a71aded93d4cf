#include "core/temporal/distances.h"

#include <algorithm>
#include <cassert>

namespace core::temporal {

Distances::Distances(int points)
    : m_points{static_cast<std::size_t>(points)}
    , m_distance(m_points * m_points, unbounded)
    , m_last(m_points * m_points, -1)
{
    for (Point point = 0; point < points; ++point)
        m_distance[cell(point, point)] = 0;
}

bool Distances::addForGood(const Lag& lag)
{
    assert(m_added.empty());
    if (lag.from == lag.to)
        return lag.most >= 0;
    if (between(lag.to, lag.from) + lag.most < 0)
        return false;
    tighten(lag, false);
    return true;
}

void Distances::add(const Lag& lag, Literal reason)
{
    assert(between(lag.to, lag.from) + lag.most >= 0);
    m_added.push_back({lag, reason, m_changes.size()});
    tighten(lag, true);
}

void Distances::tighten(const Lag& lag, bool record)
{
    if (lag.most >= between(lag.from, lag.to))
        return;
    // Only ways through the new lag can get shorter, and only between points for
    // which the way to its head, or from its tail, gets shorter.
    m_before.clear();
    m_after.clear();
    const auto points = static_cast<Point>(m_points);
    for (Point point = 0; point < points; ++point) {
        const Time toTail = between(point, lag.from);
        if (toTail < unbounded && toTail + lag.most < between(point, lag.to))
            m_before.push_back(point);
        const Time fromHead = between(lag.to, point);
        if (fromHead < unbounded && lag.most + fromHead < between(lag.from, point))
            m_after.push_back(point);
    }
    const int added = static_cast<int>(m_added.size()) - 1;
    for (const Point from : m_before) {
        const Time start = between(from, lag.from) + lag.most;
        for (const Point to : m_after) {
            const Time through = start + between(lag.to, to);
            const std::size_t place = cell(from, to);
            if (through >= m_distance[place])
                continue;
            if (record) {
                m_changes.push_back({place, m_distance[place], m_last[place], added});
                m_last[place] = static_cast<int>(m_changes.size()) - 1;
            }
            m_distance[place] = through;
        }
    }
}

void Distances::takeBackTo(int added)
{
    while (this->added() > added) {
        while (m_changes.size() > m_added.back().changes) {
            const Change& change = m_changes.back();
            m_distance[change.cell] = change.before;
            m_last[change.cell] = change.lastBefore;
            m_changes.pop_back();
        }
        m_added.pop_back();
    }
}

void Distances::explain(Point from, Point to, int asOf, std::vector<Literal>& literals) const
{
    int change = m_last[cell(from, to)];
    while (change >= 0 && m_changes[static_cast<std::size_t>(change)].added >= asOf)
        change = m_changes[static_cast<std::size_t>(change)].lastBefore;
    if (change < 0)
        return;  // It followed from lags that always hold.
    const int through = m_changes[static_cast<std::size_t>(change)].added;
    const Added& added = m_added[static_cast<std::size_t>(through)];
    explain(from, added.lag.from, through, literals);
    literals.push_back(added.reason);
    explain(added.lag.to, to, through, literals);
}

}  // namespace core::temporal
