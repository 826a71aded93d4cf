#include "core/temporal/executor.h"
#include "core/temporal/reductions.h"
#include "tests/core/temporal/naive_closure.h"
#include "tests/core/temporal/uncertain_networks.h"

#include <benchmark/benchmark.h>

#include <algorithm>

// How long it takes to decide whether a network is controllable and what objections there are to a run,
// beside all reductions applied until nothing changes, in the same run. Arguments: points, links.

namespace core::temporal {
namespace {

/// Links one after another whose ends lie in windows before a common last point, and other points that follow
/// one end each and partly one another.
UncertainNetwork networkOf(int points, int links)
{
    Dice dice{static_cast<std::uint64_t>(points * 100 + links)};
    UncertainNetwork network{.points = points, .lags = {}, .links = {}};
    const Point last = points - 1;
    window(network, origin, last, 0, 100'000);
    for (int link = 0; link < links; ++link) {
        const Point start = 1 + 2 * link;
        network.links.push_back({start, start + 1, 480, 600, 840});
        network.lags.push_back({start, link == 0 ? origin : start - 1, 0});
        window(network, start + 1, last, 2400, 3000 + 840 * (links - 1 - link));
    }
    for (Point point = 1 + 2 * links; point < last; ++point) {
        const Point end = 2 + 2 * dice.between(0, links - 1);
        window(network, end, point, 60 * dice.between(0, 5), 3000 + 840 * links);
        network.lags.push_back({last, point, -60});
        if (point > 1 + 2 * links && dice.between(0, 1) == 0)
            network.lags.push_back({point, point - 1, 0});
    }
    return network;
}

/// The earliest run of usual lengths that keeps all lags and to which there is no objection, found by adding
/// what is objected. `rounds` counts how often.
std::vector<Time> safeRun(const UncertainNetwork& network, int& rounds)
{
    UncertainNetwork usual = network;
    for (const Uncertain& link : network.links)
        window(usual, link.start, link.end, link.usual, link.usual);
    while (true) {
        ++rounds;
        std::vector<Time> times(static_cast<std::size_t>(network.points), 0);
        for (int round = 0; round < network.points; ++round)
            for (const Lag& lag : usual.lags)
                times[static_cast<std::size_t>(lag.from)] =
                    std::max(times[static_cast<std::size_t>(lag.from)],
                             times[static_cast<std::size_t>(lag.to)] - lag.most);
        const auto objections = objectionsTo(network, times);
        if (objections.empty())
            return times;
        for (const Objection& objection : objections)
            usual.lags.push_back(objection.lag.value());
    }
}

UncertainNetwork asked(const benchmark::State& state)
{
    return networkOf(static_cast<int>(state.range(0)), static_cast<int>(state.range(1)));
}

void decide(benchmark::State& state)
{
    const UncertainNetwork network = asked(state);
    Reductions reductions;
    bool wins = false;
    for (auto _ : state) {
        wins = !reductions.close(network);
        benchmark::DoNotOptimize(wins);
    }
    state.counters["wins"] = wins ? 1 : 0;
    state.counters["lags"] = static_cast<double>(network.lags.size());
}

void objectToSafeRun(benchmark::State& state)
{
    const UncertainNetwork network = asked(state);
    int rounds = 0;
    const std::vector<Time> times = safeRun(network, rounds);
    Reductions reductions;
    for (auto _ : state)
        benchmark::DoNotOptimize(reductions.closeAround(network, times));
    state.counters["rounds"] = rounds;
}

void decideByAllReductions(benchmark::State& state)
{
    const UncertainNetwork network = asked(state);
    bool wins = false;
    for (auto _ : state) {
        wins = NaiveClosure{network}.isControllable();
        benchmark::DoNotOptimize(wins);
    }
    state.counters["wins"] = wins ? 1 : 0;
}

void prepareExecutor(benchmark::State& state)
{
    const UncertainNetwork network = asked(state);
    for (auto _ : state)
        benchmark::DoNotOptimize(Executor::of(network));
}

void execute(benchmark::State& state)
{
    const UncertainNetwork network = asked(state);
    auto executor = Executor::of(network);
    Dice dice{1};
    std::vector<Time> lengths(network.links.size());
    const std::vector<Time> wished(static_cast<std::size_t>(network.points), -farTime);
    std::vector<Time> times;
    for (auto _ : state) {
        for (Time& length : lengths)
            length = dice.between(480, 840);
        executor->run(lengths, wished, times);
        benchmark::DoNotOptimize(times.data());
    }
}

void sizes(benchmark::internal::Benchmark* bench)
{
    bench->Args({20, 3})->Args({40, 4})->Args({60, 6})->Args({80, 8})->Args({120, 12});
    bench->Unit(benchmark::kMicrosecond);
}

BENCHMARK(decide)->Apply(sizes);
BENCHMARK(objectToSafeRun)->Apply(sizes);
BENCHMARK(decideByAllReductions)->Apply(sizes);
BENCHMARK(prepareExecutor)->Apply(sizes);
BENCHMARK(execute)->Apply(sizes);

}  // namespace
}  // namespace core::temporal

BENCHMARK_MAIN();
