#pragma once

#include "core/stagger/plan.h"

#include <cstdint>
#include <optional>
#include <vector>

/// What a plan comes to where applying takes as long as it happens to take: the
/// plan is followed by its dispatch rule many times over, with lengths drawn at
/// random. A pure function: the same seed gives the same forecast, on every machine.
namespace core::stagger {

/// Of something over all runs: from least to most, with the ends of the middle
/// nine tenths and the middle.
template <typename Value>
struct Spread {
    Value least{};
    Value low{};  ///< A twentieth of the runs lie below.
    Value middle{};
    Value high{};  ///< A twentieth of the runs lie above.
    Value most{};

    friend bool operator==(const Spread&, const Spread&) = default;
};

struct ZoneForecast {
    std::size_t service = 0;
    std::size_t coat = 0;
    std::size_t zone = 0;
    int inside = 0;  ///< In so many runs it stays inside all its limits.
    Spread<Seconds> development;

    friend bool operator==(const ZoneForecast&, const ZoneForecast&) = default;
};

struct RinseForecast {
    TaskId rinse;
    Spread<Instant> water;

    friend bool operator==(const RinseForecast&, const RinseForecast&) = default;
};

/// How much of what differs between the runs goes back to one application.
struct Influence {
    TaskId apply;
    double share = 0;  ///< From 0 to 1: the square of the correlation with what the runs are worth.

    friend bool operator==(const Influence&, const Influence&) = default;
};

struct Forecast {
    int runs = 0;
    int allInside = 0;  ///< In so many runs every zone stays inside its limits.
    std::vector<ZoneForecast> zones;
    std::vector<RinseForecast> rinses;
    /// The greatest first. What the runs are worth is the harm short of and past the
    /// targets; where that is the same in all, the last water.
    std::vector<Influence> influences;

    friend bool operator==(const Forecast&, const Forecast&) = default;
};

/// How often, in words that claim no more than so many runs can tell.
struct Chance {
    enum class Kind {
        Always,        ///< In every run.
        AlmostAlways,  ///< More than 99 in 100, but not in every one.
        Share,         ///< `inHundred` in 100.
        HardlyEver,    ///< Less than 1 in 100, but in some.
        Never,
    };
    Kind kind = Kind::Never;
    int inHundred = 0;  ///< Rounded; for `Share` alone.

    friend bool operator==(const Chance&, const Chance&) = default;
};

/// `inside` of `runs`, which is at least 1.
Chance chanceOf(int inside, int runs);

struct ForecastOptions {
    int runs = 2000;  ///< At least 1.
    std::uint64_t seed = 1;
};

/// Draws every open application from a triangular distribution over [quickest,
/// slowest] with its peak at the usual length (all that is known are these three;
/// its tails are heavier than those of smoother curves through them, which errs on
/// the side of caution), rounds to seconds, and follows the plan: each step as
/// planned where that is safe, else as near to that as may be. Beyond the plan's
/// give, limits can be missed. Nothing for a plan whose limits are broken already.
/// The plan must be one of this question.
std::optional<Forecast> forecast(const Question& question, const Plan& plan,
                                 const ForecastOptions& options = {});

}  // namespace core::stagger
