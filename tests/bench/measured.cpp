#include "tests/bench/measured.h"

#include "tests/bench/bench_service.h"

namespace bench {
namespace {

std::size_t argument(const benchmark::State& state, std::size_t place)
{
    return static_cast<std::size_t>(state.range(place));
}

}  // namespace

core::stagger::Question looksAsked(const benchmark::State& state)
{
    return coat(Family::Looks, argument(state, 0), argument(state, 1));
}

core::stagger::Question mixingAsked(const benchmark::State& state)
{
    return coat(Family::Mixing, argument(state, 0), argument(state, 1));
}

core::stagger::Question roomAsked(const benchmark::State& state)
{
    return room(argument(state, 2), argument(state, 0), argument(state, 1));
}

void zonesWith(benchmark::internal::Benchmark* bench, std::int64_t pairs, std::int64_t most)
{
    bench->ArgNames({"zones", "pairs"})->Unit(benchmark::kMillisecond);
    for (std::int64_t zones = 2; zones <= most; zones += 2)
        bench->Args({zones, pairs});
}

void onePair(benchmark::internal::Benchmark* bench)
{
    zonesWith(bench, 1);
}

void oneOrTwoPairs(benchmark::internal::Benchmark* bench)
{
    zonesWith(bench, 1);
    zonesWith(bench, 2);
}

void rooms(benchmark::internal::Benchmark* bench)
{
    bench->ArgNames({"zones", "pairs", "heads"})->Unit(benchmark::kMillisecond);
    for (std::int64_t heads = 2; heads <= 4; ++heads)
        for (std::int64_t zones = 2; zones <= 4; ++zones) {
            bench->Args({zones, 2, heads});
            if (heads == 4)
                bench->Args({zones, heads, heads});
        }
}

void report(benchmark::State& state, const core::stagger::Worth* worth, bool proved)
{
    state.counters["open"] = proved ? 0 : 1;
    state.counters["fits"] = worth != nullptr ? 1 : 0;
    if (worth == nullptr)
        return;
    state.counters["deviation"] = worth->deviation.minutes();
    state.counters["waste"] = static_cast<double>(worth->waste.count()) / 60;
    state.counters["staleness"] = static_cast<double>(worth->staleness.count()) / 60;
}

}  // namespace bench
