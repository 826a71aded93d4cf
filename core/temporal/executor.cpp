#include "core/temporal/executor.h"

#include "core/temporal/reductions.h"

#include <algorithm>
#include <limits>

namespace core::temporal {
namespace {

constexpr Time notYet = std::numeric_limits<Time>::min();
constexpr Time never = std::numeric_limits<Time>::max();

std::size_t place(Point point)
{
    return static_cast<std::size_t>(point);
}

/// All pairs of shortest ways (Floyd, Warshall).
void closeAll(std::vector<Time>& most, std::size_t points)
{
    for (std::size_t over = 0; over < points; ++over)
        for (std::size_t from = 0; from < points; ++from) {
            const Time first = most[from * points + over];
            if (first >= farTime)
                continue;
            for (std::size_t to = 0; to < points; ++to)
                if (const Time second = most[over * points + to]; second < farTime)
                    most[from * points + to] = std::min(most[from * points + to], first + second);
        }
}

}  // namespace

std::optional<Executor> Executor::of(const UncertainNetwork& network)
{
    Reductions reductions;
    if (reductions.close(network))
        return std::nullopt;
    Executor executor{network};
    const std::size_t points = executor.m_points;
    executor.m_ahead.assign(points * points, farTime);
    const auto tighten = [&](Point from, Point to, Length most) {
        Time& known = executor.m_ahead[executor.cell(from, to)];
        known = static_cast<Time>(std::min<Length>(known, most));
    };
    for (const auto& edge : reductions.lags().edges())
        tighten(edge.from, edge.to, edge.most);
    executor.m_isEnd.assign(points, 0);
    executor.m_waits.resize(points);
    executor.m_startsLinks.resize(points);
    for (int index = 0; index < static_cast<int>(network.links.size()); ++index) {
        const Uncertain& link = network.links[place(index)];
        executor.m_isEnd[place(link.end)] = 1;
        executor.m_startsLinks[place(link.start)].push_back(index);
        for (Point point = 0; point < network.points; ++point)
            if (const auto wait = reductions.wait(index, point)) {
                executor.m_waits[place(point)].push_back({index, static_cast<Time>(*wait)});
                tighten(point, link.start, -link.least);
            }
    }
    closeAll(executor.m_ahead, points);
    executor.turnAround();
    return executor;
}

/// What `happen` reads of a point, in one row.
void Executor::turnAround()
{
    m_back.resize(m_points * m_points);
    m_mustComeBefore.assign(m_points, 0);
    for (Point point = 0; point < m_network.points; ++point)
        for (Point other = 0; other < m_network.points; ++other) {
            const Time back = m_ahead[cell(other, point)];
            m_back[cell(point, other)] = back;
            m_mustComeBefore[place(other)] += back < 0 ? 1 : 0;
        }
}

void Executor::begin(std::vector<Time>& times)
{
    times.assign(m_points, notYet);
    m_before = m_mustComeBefore;
    m_earliest.assign(m_points, notYet);
    m_latest.assign(m_points, never);
    m_free.clear();
    m_runsLinks.clear();
    for (Point point = 1; point < m_network.points; ++point)
        if (m_before[place(point)] == 0 && m_isEnd[place(point)] == 0)
            m_free.push_back(point);
    happen(origin, 0, times);
    m_now = notYet;  // Points may come before the origin.
}

void Executor::happen(Point point, Time now, std::vector<Time>& times)
{
    times[place(point)] = now;
    m_now = now;
    std::erase(m_free, point);
    m_runsLinks.insert(m_runsLinks.end(), m_startsLinks[place(point)].begin(),
                       m_startsLinks[place(point)].end());
    // Three plain loops over whole rows, which compilers turn into few instructions: `farTime` changes
    // nothing.
    const Time* back = &m_back[cell(point, 0)];
    const Time* ahead = &m_ahead[cell(point, 0)];
    for (std::size_t other = 0; other < m_points; ++other)
        m_earliest[other] = std::max(m_earliest[other], now - back[other]);
    for (std::size_t other = 0; other < m_points; ++other)
        m_latest[other] = std::min(m_latest[other], now + ahead[other]);
    for (std::size_t other = 0; other < m_points; ++other)
        m_before[other] -= back[other] < 0 ? 1 : 0;
    for (Point other = 1; other < m_network.points; ++other)
        if (back[other] < 0 && m_before[place(other)] == 0 && m_isEnd[place(other)] == 0)
            m_free.push_back(other);
}

/// When a free point will be started if nothing happens before; `never` if it waits for something to happen.
Time Executor::dueAt(Point point, Time wished, const std::vector<Time>& times) const
{
    Time due = std::max(wished, m_earliest[place(point)]);
    for (const Wait& wait : m_waits[place(point)]) {
        const Uncertain& link = m_network.links[place(wait.link)];
        const Time start = times[place(link.start)];
        if (times[place(link.end)] != notYet)
            continue;
        if (start == notYet)
            return never;
        due = std::max(due, start + wait.length);
    }
    return std::max(m_now, std::min(due, m_latest[place(point)]));
}

void Executor::run(const std::vector<Time>& lengths, const std::vector<Time>& wished,
                   std::vector<Time>& times)
{
    begin(times);
    while (true) {
        // What happens next: ends first, for they may be answered in the same unit.
        Time now = never;
        int ended = -1;
        for (const int index : m_runsLinks) {
            const Time end = times[place(m_network.links[place(index)].start)] + lengths[place(index)];
            if (end < now || (end == now && index < ended)) {
                now = end;
                ended = index;
            }
        }
        Point next = ended < 0 ? -1 : m_network.links[place(ended)].end;
        for (const Point point : m_free) {
            const Time due = dueAt(point, wished[place(point)], times);
            if (due > now || due == never || (due == now && (ended >= 0 || next < point)))
                continue;
            now = due;
            next = point;
            ended = -1;
        }
        if (next < 0)
            return;
        if (ended >= 0)
            std::erase(m_runsLinks, ended);
        happen(next, now, times);
    }
}

}  // namespace core::temporal
