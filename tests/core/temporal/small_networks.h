#pragma once

#include "core/temporal/problem.h"

#include <functional>
#include <optional>
#include <random>
#include <string>
#include <vector>

/// Networks that are small enough to try every time of every point, and random ones of that kind.
namespace core::temporal {

/// Every time lies in [low, high]; that many points, the origin included.
struct Box {
    int points = 4;
    Time low = 0;
    Time high = 4;
};

/// Calls `visit` with every choice of times in the box; the origin stands at 0.
void forAllTimes(const Box& box, const std::function<void(const std::vector<Time>&)>& visit);

/// The lags that say the same.
std::vector<Lag> lagsOf(const Box& box);

[[nodiscard]] bool keeps(const Lag& lag, const std::vector<Time>& times);
[[nodiscard]] bool keepsAll(const std::vector<Lag>& lags, const std::vector<Time>& times);
[[nodiscard]] bool keepsOne(const Clause& clause, const std::vector<Time>& times);

/// What priced lags cost, written apart from `priceOf`.
[[nodiscard]] Price costOf(const std::vector<SoftLag>& softLags, const std::vector<Time>& times);

/// The least cost in the box of times that keep `lags`; nothing where none do.
[[nodiscard]] std::optional<Price> cheapest(const Box& box, const std::vector<Lag>& lags,
                                            const std::vector<SoftLag>& softLags);

/// Every point at its least over the cheapest times; they need not be taken at once, unless a theorem says
/// so.
[[nodiscard]] std::vector<Time> leastOfCheapest(const Box& box, const std::vector<Lag>& lags,
                                                const std::vector<SoftLag>& softLags);

/// The same numbers on every machine, which the standard distributions are not.
class Dice {
public:
    explicit Dice(std::uint64_t seed)
        : m_engine{seed}
    {
    }
    int between(int least, int most)
    {
        return least + static_cast<int>(m_engine() % static_cast<std::uint64_t>(most - least + 1));
    }
    /// Between two different points.
    Lag lag(int points, Time least, Time most);
    SoftLag softLag(int points);

private:
    std::mt19937_64 m_engine;
};

std::string textOf(const Lag& lag);

/// GoogleTest prints no numbers of 128 bits.
[[nodiscard]] inline long long shown(Price price)
{
    return static_cast<long long>(price);
}

std::string textOf(const Problem& problem);

}  // namespace core::temporal
