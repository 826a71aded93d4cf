#include "core/temporal/dispatch.h"

#include "core/temporal/reductions.h"

#include <algorithm>

namespace core::temporal {
namespace {

std::size_t place(Point point)
{
    return static_cast<std::size_t>(point);
}

using Ways = std::vector<DerivedLags::Edge>;

/// Bellman-Ford from `start`; there is no cycle below 0.
std::vector<Length> waysFrom(Point start, int points, const Ways& ways)
{
    std::vector<Length> length(place(points), noWay);
    length[place(start)] = 0;
    bool changed = true;
    for (int round = 0; changed && round < points; ++round) {
        changed = false;
        for (const auto& way : ways) {
            if (length[place(way.from)] == noWay
                || length[place(way.from)] + way.most >= length[place(way.to)])
                continue;
            length[place(way.to)] = length[place(way.from)] + way.most;
            changed = true;
        }
    }
    return length;
}

/// From `point` to each, at a time decided upon now: lags, and waits that count in full.
std::vector<Length> waysThroughWaits(const UncertainNetwork& network, const Reductions& reductions,
                                     Point point)
{
    Ways ways(reductions.lags().edges().begin(), reductions.lags().edges().end());
    for (int index = 0; index < static_cast<int>(network.links.size()); ++index)
        for (Point waiting = 0; waiting < network.points; ++waiting)
            if (const auto wait = reductions.wait(index, waiting))
                ways.push_back({.from = waiting, .to = network.links[place(index)].start, .most = -*wait});
    return waysFrom(point, network.points, ways);
}

/// From each to `point`, at a time decided upon now: lags, and links that may take their least.
std::vector<Length> waysThroughLeasts(const UncertainNetwork& network, const Reductions& reductions,
                                      Point point)
{
    Ways turned;
    for (const auto& edge : reductions.lags().edges())
        turned.push_back({.from = edge.to, .to = edge.from, .most = edge.most});
    for (const Uncertain& link : network.links)
        turned.push_back({.from = link.end, .to = link.start, .most = link.least});
    return waysFrom(point, network.points, turned);
}

}  // namespace

UncertainNetwork seenSoFar(const UncertainNetwork& network, const std::vector<Seen>& seen, Time now)
{
    std::vector<std::optional<Time>> times(place(network.points));
    times[origin] = 0;
    for (const auto& [point, time] : seen)
        times[place(point)] = time;

    UncertainNetwork left{.points = network.points, .lags = {}, .links = {}};
    for (const Lag& lag : network.lags)
        if (!times[place(lag.from)] || !times[place(lag.to)])
            left.lags.push_back(lag);
    std::vector<bool> startsLater(place(network.points), true);
    for (Uncertain link : network.links) {
        startsLater[place(link.end)] = false;
        if (times[place(link.end)])
            continue;
        if (const auto start = times[place(link.start)])
            link.least = std::max(link.least, now + 1 - *start);
        link.most = std::max(link.most, link.least);
        link.usual = std::clamp(link.usual, link.least, link.most);
        left.links.push_back(link);
    }
    for (Point point = 1; point < network.points; ++point) {
        if (const auto time = times[place(point)]) {
            left.lags.push_back({origin, point, *time});
            left.lags.push_back({point, origin, -*time});
        } else if (startsLater[place(point)]) {
            left.lags.push_back({point, origin, -now});
        }
    }
    return left;
}

std::optional<SafeStart> safeStart(const UncertainNetwork& network, const std::vector<Seen>& seen, Time now,
                                   Point point)
{
    const UncertainNetwork left = seenSoFar(network, seen, now);
    Reductions reductions;
    if (reductions.close(left))
        return std::nullopt;
    // A time stands if no cycle through it is below 0, whatever other point it goes through.
    const std::vector<Length> after = waysThroughWaits(left, reductions, point);
    const std::vector<Length> before = waysThroughLeasts(left, reductions, point);
    for (std::size_t other = 0; other < after.size(); ++other)
        if (after[other] + before[other] < 0)
            return std::nullopt;
    return SafeStart{static_cast<Time>(-after[origin]),
                     static_cast<Time>(std::min<Length>(before[origin], farTime))};
}

}  // namespace core::temporal
