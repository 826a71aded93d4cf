#include "tests/core/temporal/small_networks.h"

#include <algorithm>

namespace core::temporal {

void forAllTimes(const Box& box, const std::function<void(const std::vector<Time>&)>& visit)
{
    std::vector<Time> times(static_cast<std::size_t>(box.points), box.low);
    times[origin] = 0;
    while (true) {
        visit(times);
        std::size_t place = 1;
        while (place < times.size() && times[place] == box.high)
            times[place++] = box.low;
        if (place == times.size())
            return;
        ++times[place];
    }
}

std::vector<Lag> lagsOf(const Box& box)
{
    std::vector<Lag> lags;
    for (Point point = 1; point < box.points; ++point) {
        lags.push_back({point, origin, -box.low});
        lags.push_back({origin, point, box.high});
    }
    return lags;
}

bool keeps(const Lag& lag, const std::vector<Time>& times)
{
    return times[static_cast<std::size_t>(lag.to)] <= times[static_cast<std::size_t>(lag.from)] + lag.most;
}

bool keepsAll(const std::vector<Lag>& lags, const std::vector<Time>& times)
{
    return std::ranges::all_of(lags, [&](const Lag& lag) { return keeps(lag, times); });
}

bool keepsOne(const Clause& clause, const std::vector<Time>& times)
{
    return std::ranges::any_of(clause, [&](const Lag& lag) { return keeps(lag, times); });
}

Price costOf(const std::vector<SoftLag>& softLags, const std::vector<Time>& times)
{
    Price cost = 0;
    for (const SoftLag& soft : softLags) {
        const Time apart =
            times[static_cast<std::size_t>(soft.lag.to)] - times[static_cast<std::size_t>(soft.lag.from)];
        cost += soft.price * std::max(0, apart - soft.lag.most);
    }
    return cost;
}

std::optional<Price> cheapest(const Box& box, const std::vector<Lag>& lags,
                              const std::vector<SoftLag>& softLags)
{
    std::optional<Price> best;
    forAllTimes(box, [&](const std::vector<Time>& times) {
        if (!keepsAll(lags, times))
            return;
        const Price cost = costOf(softLags, times);
        if (!best || cost < *best)
            best = cost;
    });
    return best;
}

std::vector<Time> leastOfCheapest(const Box& box, const std::vector<Lag>& lags,
                                  const std::vector<SoftLag>& softLags)
{
    std::vector<Time> least;
    std::optional<Price> best;
    forAllTimes(box, [&](const std::vector<Time>& times) {
        if (!keepsAll(lags, times))
            return;
        const Price cost = costOf(softLags, times);
        if (best && cost > *best)
            return;
        if (!best || cost < *best)
            least = times;
        best = cost;
        for (std::size_t place = 0; place < times.size(); ++place)
            least[place] = std::min(least[place], times[place]);
    });
    return least;
}

Lag Dice::lag(int points, Time least, Time most)
{
    const Point from = between(0, points - 1);
    const Point to = (from + between(1, points - 1)) % points;
    return {from, to, between(least, most)};
}

SoftLag Dice::softLag(int points)
{
    return {lag(points, -4, 3), between(1, 5)};
}

std::string textOf(const Lag& lag)
{
    return "t" + std::to_string(lag.to) + " - t" + std::to_string(lag.from)
        + " <= " + std::to_string(lag.most);
}

std::string textOf(const Problem& problem)
{
    std::string text = std::to_string(problem.points) + " points\n";
    for (const Lag& lag : problem.lags)
        text += "always " + textOf(lag) + '\n';
    for (const Clause& clause : problem.clauses) {
        text += "one of";
        for (const Lag& lag : clause)
            text += " [" + textOf(lag) + ']';
        text += '\n';
    }
    for (const SoftLag& soft : problem.softLags)
        text += std::to_string(static_cast<long long>(soft.price)) + " beyond " + textOf(soft.lag) + '\n';
    for (const Ranked& ranked : problem.ranking)
        text += "rank t" + std::to_string(ranked.point)
            + (ranked.present ? " where " + textOf(*ranked.present) : std::string{}) + '\n';
    return text;
}

}  // namespace core::temporal
