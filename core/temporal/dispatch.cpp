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

/// Lags, given and derived, and waits that count as `length` says of a link and a wait for its end.
template <typename Counted>
Ways waysOf(const UncertainNetwork& network, const Reductions& reductions, const Counted& length)
{
    Ways ways(reductions.lags().edges().begin(), reductions.lags().edges().end());
    for (int index = 0; index < static_cast<int>(network.links.size()); ++index) {
        const Uncertain& link = network.links[place(index)];
        for (Point waiting = 0; waiting < network.points; ++waiting)
            if (const auto wait = reductions.wait(index, waiting))
                ways.push_back({.from = waiting, .to = link.start, .most = -length(link, *wait)});
    }
    return ways;
}

Ways turned(Ways ways)
{
    for (auto& way : ways)
        std::swap(way.from, way.to);
    return ways;
}

/// From `point` to each, at a time decided upon now: lags, and waits that count in full.
std::vector<Length> waysThroughWaits(const UncertainNetwork& network, const Reductions& reductions,
                                     Point point)
{
    const auto inFull = [](const Uncertain&, Length wait) { return wait; };
    return waysFrom(point, network.points, waysOf(network, reductions, inFull));
}

/// Lags, and links that may take their least.
Ways waysAtLeast(const UncertainNetwork& network, const Reductions& reductions)
{
    Ways ways(reductions.lags().edges().begin(), reductions.lags().edges().end());
    for (const Uncertain& link : network.links)
        ways.push_back({.from = link.start, .to = link.end, .most = link.least});
    return ways;
}

/// Lags, links that take as long as usual, and waits that such an end lifts.
Ways waysWhenUsual(const UncertainNetwork& network, const Reductions& reductions)
{
    Ways ways = waysOf(network, reductions,
                       [](const Uncertain& link, Length wait) { return std::min<Length>(wait, link.usual); });
    for (const Uncertain& link : network.links) {
        ways.push_back({.from = link.start, .to = link.end, .most = link.usual});
        ways.push_back({.from = link.end, .to = link.start, .most = -link.usual});
    }
    return ways;
}

/// From each to `point`, at a time decided upon now: lags, and links that may take their least.
std::vector<Length> waysThroughLeasts(const UncertainNetwork& network, const Reductions& reductions,
                                      Point point)
{
    return waysFrom(point, network.points, turned(waysAtLeast(network, reductions)));
}

/// The lags and links of the network, those links that are certain as lags.
UncertainNetwork withoutCertainLinks(const UncertainNetwork& network)
{
    UncertainNetwork left{.points = network.points, .lags = network.lags, .links = {}};
    for (const Uncertain& link : network.links) {
        if (link.least < link.most) {
            left.links.push_back(link);
            continue;
        }
        left.lags.push_back({link.start, link.end, link.most});
        left.lags.push_back({link.end, link.start, -link.least});
    }
    return left;
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

std::optional<std::vector<UsualStart>> usualStarts(const UncertainNetwork& network)
{
    const UncertainNetwork left = withoutCertainLinks(network);
    Reductions reductions;
    if (reductions.close(left))
        return std::nullopt;
    const Ways usual = waysWhenUsual(left, reductions);
    const std::vector<Length> before = waysFrom(origin, left.points, usual);
    const std::vector<Length> after = waysFrom(origin, left.points, turned(usual));
    const std::vector<Length> quick = waysFrom(origin, left.points, waysAtLeast(left, reductions));
    const auto time = [](Length length) { return static_cast<Time>(std::min<Length>(length, farTime)); };
    std::vector<UsualStart> starts;
    for (std::size_t point = 0; point < before.size(); ++point)
        starts.push_back({-time(after[point]), time(before[point]), time(quick[point])});
    return starts;
}

std::optional<std::vector<Lag>> usualLags(const UncertainNetwork& network)
{
    const UncertainNetwork left = withoutCertainLinks(network);
    Reductions reductions;
    if (reductions.close(left))
        return std::nullopt;
    std::vector<Lag> lags;
    for (const auto& way : waysWhenUsual(left, reductions)) {
        if (way.from != way.to && way.most < farTime)
            lags.push_back({way.from, way.to, static_cast<Time>(way.most)});
    }
    return lags;
}

}  // namespace core::temporal
