#include "core/temporal/reductions.h"

#include <algorithm>
#include <functional>

// Going over the tables: shortest ways by Dijkstra, lengths made non-negative by the potential.

namespace core::temporal {
namespace {

void forgetTwins(std::vector<Point>& points)
{
    std::ranges::sort(points);
    points.erase(std::unique(points.begin(), points.end()), points.end());
}

}  // namespace

/// A way goes on only through points at which it is still a wait, or still no bound below 0.
bool Reductions::goesOn(Kind kind, int index, Point point, Length length) const
{
    const Uncertain& of = link(index);
    if (kind == Kind::Waits)
        return length < -of.least && point != of.start;
    return length >= 0 && length < noWay;
}

void Reductions::shorten(Table& table, Point point, Length length, Via via, Length key)
{
    const auto place = static_cast<std::size_t>(point);
    if (length >= table.length[place])
        return;
    table.length[place] = length;
    table.via[place] = via;
    m_heap.emplace_back(key, point);
    std::ranges::push_heap(m_heap, std::greater{});
}

void Reductions::leaveBackwards(int index, Point point)
{
    Table& waits = table(Kind::Waits, index);
    const Length length = waits.length[static_cast<std::size_t>(point)];
    for (int way = m_lags.firstArriving(point); way >= 0; way = m_lags.edge(way).nextArriving) {
        const DerivedLags::Edge& edge = m_lags.edge(way);
        const Length through = length + edge.most;
        shorten(waits, edge.from, through, {way, -1}, through + m_lags.potential(edge.from));
    }
    const int ended = m_endOf[static_cast<std::size_t>(point)];
    if (ended >= 0 && ended != index)
        m_crossings.push_back(ended);
}

/// Upper case and cross case: backwards from the link's end, over lags and over
/// other links as if they took their least, as long as it is a wait.
void Reductions::spreadWaits(int index)
{
    Table& waits = table(Kind::Waits, index);
    m_heap.clear();
    m_crossings.clear();
    for (const Point point : waits.pending)
        m_heap.emplace_back(waits.length[static_cast<std::size_t>(point)] + m_lags.potential(point), point);
    std::ranges::make_heap(m_heap, std::greater{});
    m_touched.clear();
    waits.pending.clear();
    do {
        while (!m_heap.empty()) {
            std::ranges::pop_heap(m_heap, std::greater{});
            const auto [key, point] = m_heap.back();
            m_heap.pop_back();
            const Length length = waits.length[static_cast<std::size_t>(point)];
            if (key != length + m_lags.potential(point))
                continue;
            m_touched.push_back(point);
            if (goesOn(Kind::Waits, index, point, length))
                leaveBackwards(index, point);
        }
    } while (cross(index));
    forgetTwins(m_touched);
}

/// Crossing a link may make lengths negative in spite of the potential. So all
/// crossings wait until the heap is empty: each round is a search of its own, and
/// a way crosses each link once at most unless it loops.
bool Reductions::cross(int index)
{
    Table& waits = table(Kind::Waits, index);
    for (const int crossed : m_crossings) {
        const Uncertain& other = link(crossed);
        const Length length = waits.length[static_cast<std::size_t>(other.end)] + other.least;
        if (length >= waits.length[static_cast<std::size_t>(other.start)])
            continue;
        shorten(waits, other.start, length, {-1, crossed}, length + m_lags.potential(other.start));
        if (loops(index, other.start))
            return false;
    }
    m_crossings.clear();
    return !m_heap.empty();
}

/// Whether the way from `point` comes round again: then going round makes it
/// ever shorter, and that is objected to.
bool Reductions::loops(int index, Point point)
{
    const Table& waits = table(Kind::Waits, index);
    const auto next = [&](Point at) {
        const Via& via = waits.via[static_cast<std::size_t>(at)];
        return via.edge >= 0 ? m_lags.edge(via.edge).to : link(via.crossed).end;
    };
    Point walker = point;
    for (int step = 0; step <= m_network->points; ++step) {
        if (waits.via[static_cast<std::size_t>(walker)].isRoot())
            return false;
        walker = next(walker);
    }
    m_reasons.begin();
    const Point begin = walker;
    do {
        const Via& via = waits.via[static_cast<std::size_t>(walker)];
        if (via.edge >= 0)
            m_lags.addReason(via.edge, m_reasons);
        else
            m_reasons.addLink(via.crossed);
        walker = next(walker);
    } while (walker != begin);
    object(std::nullopt);
    return true;
}

/// Forwards from the link's end over lags, as far as there is no bound below 0.
void Reductions::spreadReach(int index)
{
    Table& reach = table(Kind::Reach, index);
    m_heap.clear();
    for (const Point point : reach.pending)
        m_heap.emplace_back(reach.length[static_cast<std::size_t>(point)] - m_lags.potential(point), point);
    std::ranges::make_heap(m_heap, std::greater{});
    m_touched.clear();
    reach.pending.clear();
    while (!m_heap.empty()) {
        std::ranges::pop_heap(m_heap, std::greater{});
        const auto [key, point] = m_heap.back();
        m_heap.pop_back();
        const Length length = reach.length[static_cast<std::size_t>(point)];
        if (key != length - m_lags.potential(point))
            continue;
        m_touched.push_back(point);
        if (!goesOn(Kind::Reach, index, point, length))
            continue;
        for (int way = m_lags.firstLeaving(point); way >= 0; way = m_lags.edge(way).nextLeaving) {
            const DerivedLags::Edge& edge = m_lags.edge(way);
            const Length through = length + edge.most;
            shorten(reach, edge.to, through, {way, -1}, through - m_lags.potential(edge.to));
        }
    }
    forgetTwins(m_touched);
}

}  // namespace core::temporal
