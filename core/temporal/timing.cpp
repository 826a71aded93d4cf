#include "core/temporal/timing.h"

#include <algorithm>
#include <cassert>
#include <functional>

namespace core::temporal {
Price priceOf(const Problem& problem, const std::vector<Time>& times)
{
    Price price = 0;
    for (const SoftLag& soft : problem.softLags) {
        const Time stretched = times[static_cast<std::size_t>(soft.lag.to)]
            - times[static_cast<std::size_t>(soft.lag.from)] - soft.lag.most;
        if (stretched > 0)
            price += soft.price * stretched;
    }
    return price;
}

Timing::Timing(int points)
    : m_leaving(static_cast<std::size_t>(points))
    , m_arriving(static_cast<std::size_t>(points))
    , m_times(static_cast<std::size_t>(points), 0)
    , m_earliest(static_cast<std::size_t>(points), 0)
    , m_towardsOrigin(static_cast<std::size_t>(points), noStep)
    , m_reach(static_cast<std::size_t>(points), 0)
    , m_via(static_cast<std::size_t>(points), noStep)
{
}

Price Timing::room(Step step) const
{
    const auto arc = static_cast<std::size_t>(step >> 1);
    if ((step & 1) != 0)
        return m_flows[arc];
    return m_arcs[arc].capacity < 0 ? Price{-1} : m_arcs[arc].capacity - m_flows[arc];
}

int Timing::append(const Arc& arc)
{
    const int place = static_cast<int>(m_arcs.size());
    m_arcs.push_back(arc);
    m_flows.push_back(0);
    m_ways.push_back({arc.to, arc.length, true});
    m_ways.push_back({arc.from, -arc.length, false});
    for (const Step step : {2 * place, 2 * place + 1}) {
        m_leaving[static_cast<std::size_t>(tail(step))].push_back(step);
        m_arriving[static_cast<std::size_t>(head(step))].push_back(step);
    }
    return place;
}

void Timing::reopen(int arc)
{
    for (const Step step : {2 * arc, 2 * arc + 1})
        m_ways[static_cast<std::size_t>(step)].open = room(step) != 0;
}

bool Timing::add(const Lag& lag, Literal reason)
{
    return settle(append({lag.from, lag.to, lag.most, Price{-1}, reason}));
}

void Timing::addSoft(const SoftLag& soft)
{
    if (soft.price <= 0)
        return;
    [[maybe_unused]] const bool settled =
        settle(append({soft.lag.from, soft.lag.to, soft.lag.most, soft.price, noLiteral}));
    assert(settled && "a priced lag can always be stretched");
}

/// Restores optimality after `arc` was added without flow: as long as it is
/// stretched, either the times can give way, or there is a cheaper circulation
/// round a cycle through it.
bool Timing::settle(int arc)
{
    const Arc& added = m_arcs[static_cast<std::size_t>(arc)];
    while (true) {
        const Time excess = -reducedLength(2 * arc);
        if (excess <= 0 || room(2 * arc) == 0)
            return true;
        const Time distance = shortestFrom(added.to, added.from, excess);
        lowerTimes(distance);
        if (distance >= excess)
            continue;
        const Price amount = bottleneck(arc);
        if (amount < 0) {
            m_failed = true;
            m_cycle.assign(1, 2 * arc);
            for (Point point = added.from; point != added.to;
                 point = tail(m_via[static_cast<std::size_t>(point)]))
                m_cycle.push_back(m_via[static_cast<std::size_t>(point)]);
            return false;
        }
        push(arc, amount);
    }
}

/// Dijkstra over reduced lengths from `start`, as far as `goal` or `bound`,
/// whichever is nearer; returns that distance. `m_reach` holds distances below it.
Time Timing::shortestFrom(Point start, Point goal, Time bound)
{
    std::ranges::fill(m_reach, bound);
    m_heap.clear();
    m_reach[static_cast<std::size_t>(start)] = 0;
    m_heap.push_back({0, start});
    while (!m_heap.empty()) {
        std::ranges::pop_heap(m_heap, std::greater<>{});
        const auto [distance, point] = m_heap.back();
        m_heap.pop_back();
        if (distance > m_reach[static_cast<std::size_t>(point)])
            continue;
        if (point == goal)
            return distance;
        const Time potential = distance + m_times[static_cast<std::size_t>(point)];
        for (const Step step : m_leaving[static_cast<std::size_t>(point)]) {
            const Way& way = m_ways[static_cast<std::size_t>(step)];
            if (!way.open)
                continue;
            const auto next = static_cast<std::size_t>(way.head);
            const Time further = potential + way.length - m_times[next];
            if (further >= m_reach[next])
                continue;
            m_reach[next] = further;
            m_via[next] = step;
            m_heap.push_back({further, way.head});
            std::ranges::push_heap(m_heap, std::greater<>{});
        }
    }
    return bound;
}

void Timing::lowerTimes(Time distance)
{
    for (std::size_t point = 0; point < size(); ++point) {
        if (m_reach[point] < distance)
            m_times[point] -= distance - m_reach[point];
    }
}

/// How much can flow round the cycle of `arc` and the path found last; below 0 without limit.
Price Timing::bottleneck(int arc) const
{
    Price least = room(2 * arc);
    const Point start = m_arcs[static_cast<std::size_t>(arc)].to;
    Point point = m_arcs[static_cast<std::size_t>(arc)].from;
    while (point != start) {
        const Step step = m_via[static_cast<std::size_t>(point)];
        const Price here = room(step);
        if (here >= 0 && (least < 0 || here < least))
            least = here;
        point = tail(step);
    }
    return least;
}

void Timing::push(int arc, Price amount)
{
    m_flows[static_cast<std::size_t>(arc)] += amount;
    reopen(arc);
    const Point start = m_arcs[static_cast<std::size_t>(arc)].to;
    Point point = m_arcs[static_cast<std::size_t>(arc)].from;
    while (point != start) {
        const Step step = m_via[static_cast<std::size_t>(point)];
        m_flows[static_cast<std::size_t>(step >> 1)] += (step & 1) != 0 ? -amount : amount;
        reopen(step >> 1);
        point = tail(step);
    }
}

Price Timing::price() const
{
    Price price = 0;
    for (const Arc& arc : m_arcs) {
        if (arc.capacity < 0)
            continue;
        const Time stretched = m_times[static_cast<std::size_t>(arc.to)]
            - m_times[static_cast<std::size_t>(arc.from)] - arc.length;
        if (stretched > 0)
            price += arc.capacity * stretched;
    }
    return price;
}

const std::vector<Time>& Timing::earliest()
{
    // t(point) >= t(origin) - length of the shortest residual way to the origin.
    constexpr Time unreached = farTime;
    std::ranges::fill(m_reach, unreached);
    m_heap.clear();
    m_reach[origin] = 0;
    m_towardsOrigin[origin] = noStep;
    m_heap.push_back({0, origin});
    while (!m_heap.empty()) {
        std::ranges::pop_heap(m_heap, std::greater<>{});
        const auto [distance, point] = m_heap.back();
        m_heap.pop_back();
        if (distance > m_reach[static_cast<std::size_t>(point)])
            continue;
        const Time potential = distance - m_times[static_cast<std::size_t>(point)];
        for (const Step step : m_arriving[static_cast<std::size_t>(point)]) {
            const Way& way = m_ways[static_cast<std::size_t>(step)];
            if (!way.open)
                continue;
            const auto next = static_cast<std::size_t>(tail(step));
            const Time further = potential + way.length + m_times[next];
            if (further >= m_reach[next])
                continue;
            m_reach[next] = further;
            m_towardsOrigin[next] = step;
            m_heap.push_back({further, tail(step)});
            std::ranges::push_heap(m_heap, std::greater<>{});
        }
    }
    for (std::size_t point = 0; point < size(); ++point) {
        assert(m_reach[point] < unreached && "every point has an earliest time");
        m_earliest[point] = m_times[point] - m_times[origin] - m_reach[point];
    }
    return m_earliest;
}

void Timing::save(Snapshot& snapshot) const
{
    snapshot.arcs = m_arcs.size();
    snapshot.times = m_times;
    snapshot.flows = m_flows;
}

void Timing::restore(const Snapshot& snapshot)
{
    m_failed = false;
    while (m_arcs.size() > snapshot.arcs) {
        const int arc = static_cast<int>(m_arcs.size()) - 1;
        for (const Step step : {2 * arc + 1, 2 * arc}) {
            m_leaving[static_cast<std::size_t>(tail(step))].pop_back();
            m_arriving[static_cast<std::size_t>(head(step))].pop_back();
        }
        m_arcs.pop_back();
        m_ways.resize(m_ways.size() - 2);
    }
    m_times = snapshot.times;
    m_flows = snapshot.flows;
    for (int arc = 0; arc < static_cast<int>(m_arcs.size()); ++arc)
        reopen(arc);
}

}  // namespace core::temporal
