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
    executor.m_most.assign(points * points, farTime);
    const auto tighten = [&](Point from, Point to, Length most) {
        Time& known = executor.m_most[place(from) * points + place(to)];
        known = static_cast<Time>(std::min<Length>(known, most));
    };
    for (const auto& edge : reductions.lags().edges())
        tighten(edge.from, edge.to, edge.most);
    executor.m_isEnd.assign(points, 0);
    executor.m_waits.resize(points);
    for (int index = 0; index < static_cast<int>(network.links.size()); ++index) {
        const Uncertain& link = network.links[place(index)];
        executor.m_isEnd[place(link.end)] = 1;
        for (Point point = 0; point < network.points; ++point)
            if (const auto wait = reductions.wait(index, point)) {
                executor.m_waits[place(point)].push_back({index, static_cast<Time>(*wait)});
                tighten(point, link.start, -link.least);
            }
    }
    closeAll(executor.m_most, points);
    executor.m_mustComeBefore.assign(points, 0);
    for (Point point = 1; point < network.points; ++point)
        for (Point other = 0; other < network.points; ++other)
            executor.m_mustComeBefore[place(point)] += executor.most(point, other) < 0 ? 1 : 0;
    return executor;
}

void Executor::begin(std::vector<Time>& times)
{
    times.assign(m_points, notYet);
    m_before = m_mustComeBefore;
    m_earliest.assign(m_points, notYet);
    m_latest.assign(m_points, never);
    happen(origin, 0, times);
    m_now = notYet;  // Points may come before the origin.
}

void Executor::happen(Point point, Time now, std::vector<Time>& times)
{
    times[place(point)] = now;
    m_now = now;
    for (Point other = 0; other < m_network.points; ++other) {
        const Time back = most(other, point);
        if (back < 0)
            --m_before[place(other)];
        if (back < farTime)
            m_earliest[place(other)] = std::max(m_earliest[place(other)], now - back);
        if (const Time ahead = most(point, other); ahead < farTime)
            m_latest[place(other)] = std::min(m_latest[place(other)], now + ahead);
    }
}

/// When the point will be started if nothing happens before; `never` if it waits for something to happen.
Time Executor::dueAt(Point point, Time wished, const std::vector<Time>& times) const
{
    if (times[place(point)] != notYet || m_isEnd[place(point)] != 0 || m_before[place(point)] > 0)
        return never;
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
        Point next = -1;
        for (std::size_t index = 0; index < lengths.size(); ++index) {
            const Uncertain& link = m_network.links[index];
            if (times[place(link.start)] == notYet || times[place(link.end)] != notYet)
                continue;
            if (const Time end = times[place(link.start)] + lengths[index]; end < now) {
                now = end;
                next = link.end;
            }
        }
        for (Point point = 1; point < m_network.points; ++point) {
            if (const Time due = dueAt(point, wished[place(point)], times); due < now) {
                now = due;
                next = point;
            }
        }
        if (next < 0)
            return;
        happen(next, now, times);
    }
}

}  // namespace core::temporal
