#include "core/stagger/forecast.h"
#include "tests/bench/bench_service.h"
#include "tests/bench/measured.h"

#include <ctime>

// How long a plan takes. The peers on the same coats in the same run: peer_bench.cpp.

namespace bench {
namespace {

using core::stagger::Question;

/// Ends a search after the longest that is waited for one plan.
std::function<bool()> afterLongest()
{
    const std::clock_t begin = std::clock();
    const std::clock_t most = longestPlan.count() * CLOCKS_PER_SEC;
    return [begin, most] { return std::clock() - begin > most; };
}

/// The least power of two of conflicts with which the planner proves its answer: its face tells no more.
double conflictsNeeded(const Question& question)
{
    std::uint64_t conflicts = 1;
    const auto isProved = [&] {
        const auto plan = core::stagger::plan(question, {.conflicts = conflicts, .stop = {}});
        return plan ? (*plan)->proved : !plan.error().stopped;
    };
    while (conflicts < 2'000'000 && !isProved())
        conflicts *= 2;
    return static_cast<double>(conflicts);
}

void planWithBasinbell(benchmark::State& state, Make make)
{
    const Question question = make(state);
    auto plan = core::stagger::plan(question, {.stop = afterLongest()});
    for (auto _ : state) {
        plan = core::stagger::plan(question, {.stop = afterLongest()});
        benchmark::DoNotOptimize(plan);
    }
    const bool proved = plan ? (*plan)->proved : !plan.error().stopped;
    report(state, plan ? &(*plan)->worth : nullptr, proved);
    if (proved)
        state.counters["conflicts"] = conflictsNeeded(question);
}

/// The same coats with lengths that are uncertain, with the greatest give.
void planGuaranteed(benchmark::State& state, Make make)
{
    Question question = make(state);
    makeUncertain(question);
    int give = -1;
    bool proved = false;
    for (auto _ : state) {
        const auto plan = core::stagger::plan(question, {.stop = afterLongest()});
        give = plan ? (*plan)->give.value_or(-1) : -1;
        proved = plan ? (*plan)->proved && (*plan)->giveProved : !plan.error().stopped;
        benchmark::DoNotOptimize(give);
    }
    state.counters["give"] = give;
    state.counters["open"] = proved ? 0 : 1;
}

/// The forecast of such a coat. Arguments: zones, runs.
void forecastOf(benchmark::State& state)
{
    Question question = coat(Family::Looks, static_cast<std::size_t>(state.range(0)), 1);
    makeUncertain(question);
    const auto plan = core::stagger::plan(question);
    for (auto _ : state) {
        auto forecast = core::stagger::forecast(question, *plan, {.runs = static_cast<int>(state.range(1))});
        benchmark::DoNotOptimize(forecast);
    }
}

/// With uncertain lengths it takes so much longer that fewer zones are asked about.
void looksGuaranteed(benchmark::internal::Benchmark* bench)
{
    zonesWith(bench, 1, 12);
    zonesWith(bench, 2, 12);
}

void mixingGuaranteed(benchmark::internal::Benchmark* bench)
{
    zonesWith(bench, 1, 6);
}

BENCHMARK_CAPTURE(planWithBasinbell, looks, looksAsked)->Apply(onePair);
BENCHMARK_CAPTURE(planWithBasinbell, mixing, mixingAsked)->Apply(oneOrTwoPairs);
BENCHMARK_CAPTURE(planWithBasinbell, room, roomAsked)->Apply(rooms);

BENCHMARK_CAPTURE(planGuaranteed, looks, looksAsked)->Apply(looksGuaranteed);
BENCHMARK_CAPTURE(planGuaranteed, mixing, mixingAsked)->Apply(mixingGuaranteed);

BENCHMARK(forecastOf)
    ->ArgNames({"zones", "runs"})
    ->Args({6, 1'000})
    ->Args({6, 100'000})
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace bench

BENCHMARK_MAIN();
