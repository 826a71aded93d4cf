#include "tests/core/temporal/naive_closure.h"

#include <algorithm>

namespace core::temporal {
namespace {

std::size_t place(Point point)
{
    return static_cast<std::size_t>(point);
}

/// Around a cycle below 0 lengths would fall for ever, and out of what a number can hold.
constexpr std::int64_t deepest = -(std::int64_t{1} << 40);

bool shorten(std::int64_t& length, std::int64_t to)
{
    to = std::max(to, deepest);
    if (to >= length)
        return false;
    length = to;
    return true;
}

}  // namespace

NaiveClosure::NaiveClosure(const UncertainNetwork& network)
    : m_network{network}
    , m_bounds{begun()}
    , m_waits(network.links.size(), std::vector<Length>(place(network.points), noWay))
{
    for (std::size_t index = 0; index < network.links.size(); ++index) {
        const Uncertain& link = network.links[index];
        shorten(m_bounds[place(link.start)][place(link.end)], link.most);
        shorten(m_bounds[place(link.end)][place(link.start)], -link.least);
        m_waits[index][place(link.end)] = -link.most;
    }
    bool changed = true;
    while (changed) {
        shortestWays(m_bounds);
        m_controllable = isConsistent();
        if (!m_controllable)
            return;
        changed = false;
        for (std::size_t index = 0; index < network.links.size(); ++index) {
            const bool upper = reduceUpper(index);
            const bool lower = reduceLower(index);
            changed = changed || upper || lower;
        }
    }
}

NaiveClosure::Matrix NaiveClosure::begun() const
{
    Matrix bounds(place(m_network.points), std::vector<Length>(place(m_network.points), noWay));
    for (std::size_t point = 0; point < bounds.size(); ++point)
        bounds[point][point] = 0;
    for (const Lag& lag : m_network.lags)
        shorten(bounds[place(lag.from)][place(lag.to)], lag.most);
    return bounds;
}

void NaiveClosure::shortestWays(Matrix& matrix) const
{
    for (std::size_t over = 0; over < matrix.size(); ++over)
        for (auto& row : matrix)
            for (std::size_t to = 0; row[over] < noWay && to < matrix.size(); ++to)
                if (matrix[over][to] < noWay)
                    shorten(row[to], row[over] + matrix[over][to]);
}

/// Upper case, cross case and label removal.
bool NaiveClosure::reduceUpper(std::size_t index)
{
    const Uncertain& link = m_network.links[index];
    std::vector<Length>& waits = m_waits[index];
    bool changed = false;
    for (std::size_t from = 0; from < m_bounds.size(); ++from)
        for (std::size_t over = 0; over < m_bounds.size(); ++over)
            if (m_bounds[from][over] < noWay && waits[over] < noWay)
                changed = shorten(waits[from], m_bounds[from][over] + waits[over]) || changed;
    for (const Uncertain& other : m_network.links)
        if (&other != &link && waits[place(other.end)] < 0)
            changed = shorten(waits[place(other.start)], other.least + waits[place(other.end)]) || changed;
    for (std::size_t from = 0; from < m_bounds.size(); ++from)
        if (waits[from] < noWay)
            changed = shorten(m_bounds[from][place(link.start)], std::max<Length>(waits[from], -link.least))
                || changed;
    return changed;
}

bool NaiveClosure::reduceLower(std::size_t index)
{
    const Uncertain& link = m_network.links[index];
    bool changed = false;
    for (std::size_t to = 0; to < m_bounds.size(); ++to)
        if (m_bounds[place(link.end)][to] < 0)
            changed = shorten(m_bounds[place(link.start)][to], link.least + m_bounds[place(link.end)][to])
                || changed;
    return changed;
}

/// No cycle below 0, all lengths taken to be the most.
bool NaiveClosure::isConsistent() const
{
    Matrix allMost = m_bounds;
    for (std::size_t index = 0; index < m_waits.size(); ++index)
        for (std::size_t from = 0; from < allMost.size(); ++from)
            shorten(allMost[from][place(m_network.links[index].start)], m_waits[index][from]);
    shortestWays(allMost);
    for (std::size_t point = 0; point < allMost.size(); ++point)
        if (allMost[point][point] < 0)
            return false;
    return true;
}

NaiveClosure::Matrix NaiveClosure::asUsual() const
{
    Matrix bounds = m_bounds;
    for (std::size_t index = 0; index < m_waits.size(); ++index) {
        const Uncertain& link = m_network.links[index];
        shorten(bounds[place(link.start)][place(link.end)], link.usual);
        shorten(bounds[place(link.end)][place(link.start)], -link.usual);
        for (std::size_t from = 0; from < bounds.size(); ++from)
            if (m_waits[index][from] < noWay)
                shorten(bounds[from][place(link.start)], std::max<Length>(m_waits[index][from], -link.usual));
    }
    return bounds;
}

bool NaiveClosure::isKeptBy(const std::vector<Time>& times) const
{
    return m_controllable && brokenBy(times).empty();
}

std::vector<Lag> NaiveClosure::brokenBy(const std::vector<Time>& times) const
{
    const Matrix bounds = asUsual();
    std::vector<Lag> broken;
    for (std::size_t from = 0; from < bounds.size(); ++from)
        for (std::size_t to = 0; to < bounds.size(); ++to)
            if (times[to] - times[from] > bounds[from][to])
                broken.push_back(
                    {static_cast<Point>(from), static_cast<Point>(to), static_cast<Time>(bounds[from][to])});
    return broken;
}

bool NaiveClosure::forces(const Lag& lag) const
{
    if (!m_controllable)
        return true;
    Matrix bounds = asUsual();
    shortestWays(bounds);
    for (std::size_t point = 0; point < bounds.size(); ++point)
        if (bounds[point][point] < 0)
            return true;
    return bounds[place(lag.from)][place(lag.to)] <= lag.most;
}

}  // namespace core::temporal
