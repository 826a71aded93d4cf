#include "core/temporal/derived_lags.h"

#include <cassert>

namespace core::temporal {

void Reasons::reset(std::size_t lags, std::size_t links)
{
    m_seen.assign(lags + links, 0);
    m_lags = static_cast<int>(lags);
    m_round = 0;
    begin();
}

void Reasons::begin()
{
    ++m_round;
    m_codes.clear();
}

void Reasons::add(int code)
{
    int& seen = m_seen[static_cast<std::size_t>(code)];
    if (seen == m_round)
        return;
    seen = m_round;
    m_codes.push_back(code);
}

void DerivedLags::reset(const UncertainNetwork& network)
{
    const auto points = static_cast<std::size_t>(network.points);
    m_edges.clear();
    m_reasons.clear();
    m_leaving.assign(points, -1);
    m_arriving.assign(points, -1);
    int code = 0;
    for (const Lag& lag : network.lags)
        append(lag.from, lag.to, lag.most, code++);
    for (const Uncertain& link : network.links) {
        assert(0 <= link.least && link.least <= link.usual && link.usual <= link.most);
        append(link.start, link.end, link.most, code);
        append(link.end, link.start, -link.least, code++);
    }
}

int DerivedLags::append(Point from, Point to, Length most, int reason)
{
    const int index = static_cast<int>(m_edges.size());
    int& leaving = m_leaving[static_cast<std::size_t>(from)];
    int& arriving = m_arriving[static_cast<std::size_t>(to)];
    m_edges.push_back({from, to, most, leaving, arriving, reason});
    leaving = index;
    arriving = index;
    return index;
}

bool DerivedLags::says(Point from, Point to, Length most) const
{
    for (int index = firstLeaving(from); index >= 0; index = edge(index).nextLeaving)
        if (edge(index).to == to && edge(index).most <= most)
            return true;
    return false;
}

int DerivedLags::derive(Point from, Point to, Length most, std::span<const int> codes)
{
    const int reason = ~static_cast<int>(m_reasons.size());
    m_reasons.push_back(static_cast<int>(codes.size()));
    m_reasons.insert(m_reasons.end(), codes.begin(), codes.end());
    return append(from, to, most, reason);
}

void DerivedLags::addReason(int index, Reasons& reasons) const
{
    const int reason = edge(index).reason;
    if (reason >= 0) {
        reasons.add(reason);
        return;
    }
    const auto begin = ~static_cast<std::size_t>(reason);
    const auto count = static_cast<std::size_t>(m_reasons[begin]);
    for (const int code : std::span{m_reasons}.subspan(begin + 1, count))
        reasons.add(code);
}

void DerivedLags::setPotential(const std::vector<Time>& times)
{
    m_potential.assign(times.begin(), times.end());
}

/// The potential of the edge's head comes down to what the edge asks for.
bool DerivedLags::lower(const Edge& edge)
{
    const Length asked = m_potential[static_cast<std::size_t>(edge.from)] + edge.most;
    Length& head = m_potential[static_cast<std::size_t>(edge.to)];
    if (asked >= head)
        return false;
    head = asked;
    m_loweredBy[static_cast<std::size_t>(edge.to)] = static_cast<int>(&edge - m_edges.data());
    return true;
}

/// Bellman-Ford, from 0 everywhere: as if all points came at most 0 after one more.
bool DerivedLags::findPotential()
{
    const std::size_t points = m_leaving.size();
    m_potential.assign(points, 0);
    m_loweredBy.assign(points, -1);
    for (std::size_t round = 0; round <= points; ++round) {
        Point lowered = -1;
        for (const Edge& edge : m_edges)
            if (lower(edge))
                lowered = edge.to;
        if (lowered < 0)
            return true;
        if (round < points)
            continue;
        for (std::size_t step = 0; step < points; ++step)
            lowered = edge(m_loweredBy[static_cast<std::size_t>(lowered)]).from;
        traceCycle(lowered);
    }
    return false;
}

/// Before `index` was added nothing was wrong, so a cycle goes through it: then its own tail is lowered.
bool DerivedLags::mendPotential(int index)
{
    m_loweredBy.resize(m_leaving.size(), -1);
    m_queued.assign(m_leaving.size(), 0);
    const Edge added = edge(index);
    if (!lower(m_edges[static_cast<std::size_t>(index)]))
        return true;
    m_queue.assign(1, added.to);
    for (std::size_t next = 0; next < m_queue.size(); ++next) {
        const Point point = m_queue[next];
        m_queued[static_cast<std::size_t>(point)] = 0;
        if (point == added.from) {
            traceCycle(point);
            return false;
        }
        for (int leaving = firstLeaving(point); leaving >= 0; leaving = edge(leaving).nextLeaving) {
            const Edge& way = edge(leaving);
            if (!lower(way) || m_queued[static_cast<std::size_t>(way.to)] != 0)
                continue;
            m_queued[static_cast<std::size_t>(way.to)] = 1;
            m_queue.push_back(way.to);
        }
    }
    return true;
}

void DerivedLags::traceCycle(Point point)
{
    m_cycle.clear();
    Point walker = point;
    do {
        m_cycle.push_back(m_loweredBy[static_cast<std::size_t>(walker)]);
        walker = edge(m_cycle.back()).from;
    } while (walker != point);
}

}  // namespace core::temporal
