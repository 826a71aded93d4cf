#pragma once

#include <compare>
#include <cstdint>

namespace core::measure {

/// How bad one minute short of, or past, the target is, as whole hundredths:
/// 1.25 is `HarmRate{125}`. A relative weight without a unit; the default in a
/// service is 1. Whole numbers, so that no comparison of plans rests on rounding.
struct HarmRate {
    std::int64_t hundredths = 0;

    friend constexpr auto operator<=>(HarmRate, HarmRate) = default;
};

/// A sum of harm: hundredths of harm per minute, times seconds. 6000 of these
/// are one zone-minute at harm 1. Exact.
struct Harm {
    std::int64_t hundredthSeconds = 0;

    friend constexpr auto operator<=>(Harm, Harm) = default;
    friend constexpr Harm operator+(Harm a, Harm b) { return {a.hundredthSeconds + b.hundredthSeconds}; }

    /// In zone-minutes, for showing only.
    [[nodiscard]] constexpr double minutes() const { return static_cast<double>(hundredthSeconds) / 6000.0; }
};

}  // namespace core::measure
