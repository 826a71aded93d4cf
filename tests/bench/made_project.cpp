#include "tests/bench/made_project.h"

#include <algorithm>
#include <random>
#include <vector>

namespace bench {
namespace {

using core::temporal::Activity;
using core::temporal::Project;
using core::temporal::startOf;
using core::temporal::Time;

constexpr Time noWay = -1'000'000;
constexpr std::size_t resourceCount = 5;

class Maker {
public:
    Maker(int activities, std::uint64_t seed)
        : m_engine{seed}
        , m_count{static_cast<std::size_t>(activities)}
        , m_longest(m_count * m_count, noWay)
    {
    }

    Project make()
    {
        for (std::size_t activity = 0; activity < m_count; ++activity)
            m_project.activities.push_back({between(1, 10), {}});
        addLeast();
        addMost();
        addDemands();
        return m_project;
    }

private:
    int between(int least, int most)
    {
        return least + static_cast<int>(m_engine() % static_cast<std::uint64_t>(most - least + 1));
    }
    bool chance(int percent) { return between(1, 100) <= percent; }
    Time& longest(std::size_t from, std::size_t to) { return m_longest[from * m_count + to]; }
    void atLeast(std::size_t from, std::size_t to, Time least)
    {
        m_project.lags.push_back({startOf(to), startOf(from), -least});
    }

    void addLeast()
    {
        constexpr int densities[] = {5, 10, 20};
        const int density = densities[between(0, 2)];
        for (std::size_t to = 0; to < m_count; ++to) {
            for (std::size_t from = to - std::min<std::size_t>(to, 8); from < to; ++from) {
                if (!chance(density))
                    continue;
                const Time length = m_project.activities[from].duration;
                const Time least =
                    chance(70) ? between(std::max(0, length - 2), length + 2) : between(0, length);
                atLeast(from, to, least);
                longest(from, to) = std::max(longest(from, to), least);
                for (std::size_t before = 0; before < from; ++before) {
                    if (longest(before, from) > noWay)
                        longest(before, to) = std::max(longest(before, to), longest(before, from) + least);
                }
            }
        }
    }

    /// No schedule need fit: a longest lag alone never contradicts the least ones, but several may.
    void addMost()
    {
        const int percent = between(5, 20);
        for (std::size_t from = 0; from < m_count; ++from) {
            for (std::size_t to = from + 1; to < m_count; ++to) {
                if (longest(from, to) == noWay || !chance(percent))
                    continue;
                Time sum = 1;
                for (std::size_t between = from; between < to; ++between)
                    sum += m_project.activities[between].duration;
                atLeast(to, from, -longest(from, to) - between(0, sum / 2));
            }
        }
    }

    void addDemands()
    {
        constexpr int factors[] = {50, 75, 100};
        constexpr int strengths[] = {0, 25, 50};
        const int factor = factors[between(0, 2)];
        const int strength = strengths[between(0, 2)];
        for (Activity& activity : m_project.activities) {
            for (std::size_t resource = 0; resource < resourceCount; ++resource)
                activity.demands.push_back(chance(factor) ? between(1, 5) : 0);
        }
        const std::vector<Time> starts = earliestStarts();
        for (std::size_t resource = 0; resource < resourceCount; ++resource) {
            int most = 1;
            int peak = 1;
            for (std::size_t now = 0; now < m_count; ++now) {
                int sum = 0;
                for (std::size_t other = 0; other < m_count; ++other) {
                    const Activity& each = m_project.activities[other];
                    if (starts[other] <= starts[now] && starts[now] < starts[other] + each.duration)
                        sum += each.demands[resource];
                }
                most = std::max(most, m_project.activities[now].demands[resource]);
                peak = std::max(peak, sum);
            }
            m_project.capacities.push_back(most + strength * std::max(0, peak - most) / 100);
        }
    }

    std::vector<Time> earliestStarts()
    {
        std::vector<Time> starts(m_count, 0);
        for (std::size_t to = 0; to < m_count; ++to) {
            for (std::size_t from = 0; from < to; ++from)
                starts[to] = std::max(starts[to], longest(from, to));
        }
        return starts;
    }

    std::mt19937_64 m_engine;
    std::size_t m_count;
    std::vector<Time> m_longest;  ///< The longest way of least lags between two.
    Project m_project;
};

}  // namespace

Project madeProject(int activities, std::uint64_t seed)
{
    return Maker{activities, seed}.make();
}

}  // namespace bench
