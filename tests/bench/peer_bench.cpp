#include "tests/bench/measured.h"
#include "tests/bench/minizinc.h"
#include "tests/oracle/gecode_model.h"

#include <limits>

// How long others take for the same plans: Gecode with the model that the tests check the planner with, and
// MiniZinc with Gecode and the model of coat.mzn. Both models are plain, and tuned for nothing. Both choose
// among whole minutes where the planner chooses among seconds, which is in their favour.

namespace bench {
namespace {

using core::stagger::Question;
using First = oracle::GecodeOptions::First;

/// Searched in two ways, for neither is always the better.
void planWithGecode(benchmark::State& state, Make make, First first)
{
    const Question question = make(state);
    oracle::GecodeAnswer answer;
    for (auto _ : state)
        answer = oracle::planWithGecode(question,
                                        {.first = first,
                                         .mostFailures = std::numeric_limits<std::uint64_t>::max(),
                                         .longest = longestLevel,
                                         .grid = core::measure::Seconds{60}});
    report(state, answer.plan ? &answer.plan->worth : nullptr,
           answer.kind != oracle::GecodeAnswer::Kind::Open);
    state.counters["failures"] = static_cast<double>(answer.failures);
}

/// Searched in two ways as well. The time is the solver's own, without starting it and without MiniZinc's
/// flattening.
void planWithMiniZinc(benchmark::State& state, Make make, Search search)
{
    if (!miniZincIsThere()) {
        state.SkipWithError("the package minizinc is not installed");
        return;
    }
    const Question question = make(state);
    MiniZincAnswer answer;
    for (auto _ : state) {
        answer = bench::planWithMiniZinc(question, search, longestLevel);
        state.SetIterationTime(answer.solving.count());
    }
    report(state, answer.worth ? &*answer.worth : nullptr, answer.proved);
    state.counters["failures"] = static_cast<double>(answer.failures);
    state.counters["flattening_ms"] = answer.flattening.count() * 1000;
}

/// Short ones are repeated by `planWithMiniZinc` itself.
void once(benchmark::internal::Benchmark* bench)
{
    bench->Iterations(1)->UseManualTime();
}

BENCHMARK_CAPTURE(planWithGecode, looks_order, looksAsked, First::Order)->Apply(onePair);
BENCHMARK_CAPTURE(planWithGecode, looks_deviation, looksAsked, First::Deviation)->Apply(onePair);
BENCHMARK_CAPTURE(planWithMiniZinc, looks_guided, looksAsked, Search::Guided)->Apply(onePair)->Apply(once);
BENCHMARK_CAPTURE(planWithMiniZinc, looks_own, looksAsked, Search::Own)->Apply(onePair)->Apply(once);

BENCHMARK_CAPTURE(planWithGecode, mixing_order, mixingAsked, First::Order)->Apply(oneOrTwoPairs);
BENCHMARK_CAPTURE(planWithGecode, mixing_deviation, mixingAsked, First::Deviation)->Apply(oneOrTwoPairs);
BENCHMARK_CAPTURE(planWithMiniZinc, mixing_guided, mixingAsked, Search::Guided)
    ->Apply(oneOrTwoPairs)
    ->Apply(once);
BENCHMARK_CAPTURE(planWithMiniZinc, mixing_own, mixingAsked, Search::Own)->Apply(oneOrTwoPairs)->Apply(once);

BENCHMARK_CAPTURE(planWithGecode, room_order, roomAsked, First::Order)->Apply(rooms);
BENCHMARK_CAPTURE(planWithGecode, room_deviation, roomAsked, First::Deviation)->Apply(rooms);
BENCHMARK_CAPTURE(planWithMiniZinc, room_guided, roomAsked, Search::Guided)->Apply(rooms)->Apply(once);
BENCHMARK_CAPTURE(planWithMiniZinc, room_own, roomAsked, Search::Own)->Apply(rooms)->Apply(once);

}  // namespace
}  // namespace bench
