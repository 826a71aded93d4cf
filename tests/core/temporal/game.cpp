#include "tests/core/temporal/game.h"

#include "tests/core/temporal/small_networks.h"

#include <algorithm>

namespace core::temporal {
namespace {

constexpr Time unseen = -1;
constexpr Time forgotten = -2;

std::size_t place(Point point)
{
    return static_cast<std::size_t>(point);
}

}  // namespace

Game::Game(const UncertainNetwork& network)
    : m_network{network}
    , m_isEnd(place(network.points), false)
{
    for (const Uncertain& link : network.links)
        m_isEnd[place(link.end)] = true;
}

/// What has been seen keeps its lags with `point`, which has just been seen.
bool Game::allows(const Times& times, Point point) const
{
    return std::ranges::all_of(m_network.lags, [&](const Lag& lag) {
        if (lag.from != point && lag.to != point)
            return true;
        const Time from = times[place(lag.from)];
        const Time to = times[place(lag.to)];
        return from == unseen || to == unseen || to - from <= lag.most;
    });
}

/// Something unseen should have come before `now`.
bool Game::isLate(const Times& times, Time now) const
{
    return std::ranges::any_of(m_network.lags, [&](const Lag& lag) {
        const Time from = times[place(lag.from)];
        return from != unseen && times[place(lag.to)] == unseen && now - from > lag.most;
    });
}

/// Times of points that bear on nothing that is still unseen make no difference.
std::string Game::key(Time now, const Times& times) const
{
    std::vector<bool> bears(times.size(), false);
    for (const Lag& lag : m_network.lags) {
        bears[place(lag.from)] = bears[place(lag.from)] || times[place(lag.to)] == unseen;
        bears[place(lag.to)] = bears[place(lag.to)] || times[place(lag.from)] == unseen;
    }
    for (const Uncertain& link : m_network.links)
        if (times[place(link.end)] == unseen)
            bears[place(link.start)] = true;
    std::string text(1, static_cast<char>(now));
    for (std::size_t point = 0; point < times.size(); ++point) {
        const bool told = times[point] == unseen || bears[point];
        text += static_cast<char>(told ? times[point] : forgotten);
    }
    return text;
}

/// Nature's turn. With `usual`, only choices other than that one count.
bool Game::forAllEnds(Time now, Times& times, std::size_t index, const std::vector<bool>* usual, bool differs)
{
    if (index == m_network.links.size()) {
        if (usual != nullptr && !differs)
            return true;
        return winsByStarting(now, times, 1);
    }
    const Uncertain& link = m_network.links[index];
    const Time start = times[place(link.start)];
    const bool running = start != unseen && times[place(link.end)] == unseen;
    const bool mayEnd = running && now - start >= link.least;
    const bool mustEnd = running && now - start == link.most;
    const auto unlike = [&](bool ends) { return differs || (usual != nullptr && (*usual)[index] != ends); };
    if (!mustEnd && !forAllEnds(now, times, index + 1, usual, unlike(false)))
        return false;
    if (!mayEnd)
        return true;
    times[place(link.end)] = now;
    const bool won = allows(times, link.end) && forAllEnds(now, times, index + 1, usual, unlike(true));
    times[place(link.end)] = unseen;
    return won;
}

/// The answer: any of the points from `next` on may be started now or not.
bool Game::winsByStarting(Time now, Times& times, Point next)
{
    if (next == m_network.points)
        return winsFrom(now + 1, times);
    if (m_isEnd[place(next)] || times[place(next)] != unseen)
        return winsByStarting(now, times, next + 1);
    times[place(next)] = now;
    const bool won = allows(times, next) && winsByStarting(now, times, next + 1);
    times[place(next)] = unseen;
    return won || winsByStarting(now, times, next + 1);
}

bool Game::winsFrom(Time now, const Times& times)
{
    if (std::ranges::find(times, unseen) == times.end())
        return true;
    if (isLate(times, now))
        return false;
    const std::string state = key(now, times);
    if (const auto known = m_won.find(state); known != m_won.end())
        return known->second;
    Times copy = times;
    const bool won = forAllEnds(now, copy, 0, nullptr, true);
    m_won.emplace(state, won);
    return won;
}

bool Game::isWon()
{
    Times times(place(m_network.points), unseen);
    times[origin] = 0;
    return winsFrom(0, times);
}

bool Game::isWonBy(const std::vector<Time>& run)
{
    Times times(place(m_network.points), unseen);
    times[origin] = 0;
    const Time last = std::ranges::max(run);
    for (Time now = 0; now <= last; ++now) {
        if (isLate(times, now))
            return false;
        std::vector<bool> usual;
        for (const Uncertain& link : m_network.links)
            usual.push_back(run[place(link.end)] == now);
        if (!forAllEnds(now, times, 0, &usual, false))
            return false;
        for (Point point = 1; point < m_network.points; ++point)
            if (run[place(point)] == now) {
                times[place(point)] = now;
                if (!allows(times, point))
                    return false;
            }
    }
    return true;
}

std::vector<std::vector<Time>> usualRuns(const UncertainNetwork& network, Time last)
{
    std::vector<const Uncertain*> endOf(place(network.points), nullptr);
    for (const Uncertain& link : network.links)
        endOf[place(link.end)] = &link;
    std::vector<Point> starts;
    for (Point point = 1; point < network.points; ++point)
        if (endOf[place(point)] == nullptr)
            starts.push_back(point);
    std::vector<std::vector<Time>> runs;
    forAllTimes({static_cast<int>(starts.size()) + 1, 0, last}, [&](const std::vector<Time>& chosen) {
        std::vector<Time> run(place(network.points), 0);
        for (std::size_t index = 0; index < starts.size(); ++index)
            run[place(starts[index])] = chosen[index + 1];
        // A link may start where another ends; so often enough round.
        for (std::size_t round = 0; round < network.links.size(); ++round)
            for (const Uncertain& link : network.links)
                run[place(link.end)] = run[place(link.start)] + link.usual;
        if (keepsAll(network.lags, run))
            runs.push_back(run);
    });
    return runs;
}

}  // namespace core::temporal
