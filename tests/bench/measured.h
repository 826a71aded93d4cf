#pragma once

#include "core/stagger/plan.h"

#include <benchmark/benchmark.h>

#include <chrono>

/// What every way of planning is measured on, and how what it found is reported.
namespace bench {

/// What is asked, by the arguments of a benchmark: zones, pairs of hands and, for a room, heads.
using Make = core::stagger::Question (*)(const benchmark::State&);
core::stagger::Question looksAsked(const benchmark::State& state);
core::stagger::Question mixingAsked(const benchmark::State& state);
core::stagger::Question roomAsked(const benchmark::State& state);

/// Whoever has not proved a level after so much processor time gives it up; the planner, which proves all
/// levels at once, has as much as for three.
constexpr std::chrono::seconds longestLevel{10};
constexpr std::chrono::seconds longestPlan = 3 * longestLevel;

/// Two to so many zones, by twos.
constexpr std::int64_t mostZones = 16;
void zonesWith(benchmark::internal::Benchmark* bench, std::int64_t pairs, std::int64_t most = mostZones);

/// With one pair of hands, and with one or two.
void onePair(benchmark::internal::Benchmark* bench);
void oneOrTwoPairs(benchmark::internal::Benchmark* bench);

/// Two to four heads of two to four zones with two pairs of hands, and four heads with four.
void rooms(benchmark::internal::Benchmark* bench);

/// Says beside the time how good the plan is, in zone-minutes and minutes, and whether that is proved.
/// Without a plan nothing is said of its worth; `open` is 1 unless it was proved that nothing fits.
void report(benchmark::State& state, const core::stagger::Worth* worth, bool proved);

}  // namespace bench
