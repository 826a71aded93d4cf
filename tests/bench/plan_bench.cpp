#include "core/stagger/forecast.h"
#include "tests/bench/bench_service.h"
#include "tests/oracle/gecode_model.h"

#include <benchmark/benchmark.h>

#include <limits>

// How long a plan takes, beside Gecode on the same coats in the same run. Arguments: zones, pairs of hands.
//
// Gecode's model is the one that the tests check the planner with: plain, and tuned for nothing. It is
// searched in two ways, for neither is always the better. It is given whole minutes to choose from where the
// planner takes seconds, which is in its favour, and gives up ten seconds into a level: then `open` is 1.

namespace bench {
namespace {

using core::stagger::Question;

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

Question asked(Family family, const benchmark::State& state)
{
    return coat(family, static_cast<std::size_t>(state.range(0)), static_cast<std::size_t>(state.range(1)));
}

void planWithBasinbell(benchmark::State& state, Family family)
{
    const Question question = asked(family, state);
    bool fits = false;
    for (auto _ : state) {
        const auto plan = core::stagger::plan(question);
        fits = plan.has_value();
        benchmark::DoNotOptimize(fits);
    }
    state.counters["fits"] = fits ? 1 : 0;
    state.counters["conflicts"] = conflictsNeeded(question);
}

/// The same coats with lengths that are uncertain, with the greatest give.
void planGuaranteed(benchmark::State& state, Family family)
{
    Question question = asked(family, state);
    makeUncertain(question.services.front());
    int give = -1;
    for (auto _ : state) {
        const auto plan = core::stagger::plan(question);
        give = plan ? (*plan)->give.value_or(-1) : -1;
        benchmark::DoNotOptimize(give);
    }
    state.counters["give"] = give;
}

/// The forecast of such a coat. Arguments: zones, runs.
void forecastOf(benchmark::State& state)
{
    Question question = coat(Family::Looks, static_cast<std::size_t>(state.range(0)), 1);
    makeUncertain(question.services.front());
    const auto plan = core::stagger::plan(question);
    for (auto _ : state) {
        auto forecast = core::stagger::forecast(question, *plan, {.runs = static_cast<int>(state.range(1))});
        benchmark::DoNotOptimize(forecast);
    }
}

void planWithGecode(benchmark::State& state, Family family, oracle::GecodeOptions::First first)
{
    const Question question = asked(family, state);
    oracle::GecodeAnswer answer;
    for (auto _ : state)
        answer = oracle::planWithGecode(question,
                                        {.first = first,
                                         .mostFailures = std::numeric_limits<std::uint64_t>::max(),
                                         .longest = std::chrono::seconds{10},
                                         .grid = core::measure::Seconds{60}});
    state.counters["fits"] = answer.plan ? 1 : 0;
    state.counters["open"] = answer.kind == oracle::GecodeAnswer::Kind::Open ? 1 : 0;
    state.counters["failures"] = static_cast<double>(answer.failures);
}

void upToTwelve(benchmark::internal::Benchmark* bench, std::int64_t hands)
{
    for (std::int64_t zones = 2; zones <= 12; zones += 2)
        bench->Args({zones, hands});
    bench->Unit(benchmark::kMillisecond);
}

void onePair(benchmark::internal::Benchmark* bench)
{
    upToTwelve(bench, 1);
}

void oneAndTwoPairs(benchmark::internal::Benchmark* bench)
{
    upToTwelve(bench, 1);
    upToTwelve(bench, 2);
}

using First = oracle::GecodeOptions::First;

BENCHMARK_CAPTURE(planWithBasinbell, looks, Family::Looks)->Apply(onePair);
BENCHMARK_CAPTURE(planWithGecode, looks_order, Family::Looks, First::Order)->Apply(onePair)->Iterations(1);
BENCHMARK_CAPTURE(planWithGecode, looks_deviation, Family::Looks, First::Deviation)
    ->Apply(onePair)
    ->Iterations(1);
BENCHMARK_CAPTURE(planWithBasinbell, mixing, Family::Mixing)->Apply(oneAndTwoPairs);
BENCHMARK_CAPTURE(planWithGecode, mixing_order, Family::Mixing, First::Order)
    ->Apply(oneAndTwoPairs)
    ->Iterations(1);
BENCHMARK_CAPTURE(planWithGecode, mixing_deviation, Family::Mixing, First::Deviation)
    ->Apply(oneAndTwoPairs)
    ->Iterations(1);

BENCHMARK_CAPTURE(planGuaranteed, looks, Family::Looks)->Apply(oneAndTwoPairs);
BENCHMARK_CAPTURE(planGuaranteed, mixing, Family::Mixing)
    ->Args({2, 1})
    ->Args({4, 1})
    ->Args({6, 1})
    ->Unit(benchmark::kMillisecond);

BENCHMARK(forecastOf)->Args({6, 1'000})->Args({6, 100'000})->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace bench

BENCHMARK_MAIN();
