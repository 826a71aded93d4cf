#pragma once

#include "core/stagger/plan.h"

#include <cstddef>
#include <cstdint>
#include <string>

namespace oracle {

/// What random questions may hold.
struct Sizes {
    std::size_t leastHeads = 1;
    std::size_t mostHeads = 1;
    std::size_t mostTasks = SIZE_MAX;  ///< Of all heads together, looks that may not fall due included.
    std::size_t mostZones = 4;         ///< In a coat.
    std::size_t mostCoats = 2;
    std::size_t mostHands = 3;
    bool looks = true;
    bool uncertain = false;  ///< Whether applying may take longer or shorter than usual.
    /// Of what every length is a multiple. Where it is one second a whole service takes a few minutes, so
    /// that every second of it can be tried.
    core::measure::Seconds unit{1};
};

/// A question drawn with `seed`: the same on every machine. Its services have passed every check; some half
/// of the questions can be planned.
core::stagger::Question randomQuestion(std::uint64_t seed, const Sizes& sizes = {});

/// A question on a few lines, in seconds and as it is called in the code, for a person who has to look into
/// it.
std::string questionText(const core::stagger::Question& question);

/// A plan the same way.
std::string planText(const core::stagger::Question& question, const core::stagger::PlanData& plan);

}  // namespace oracle
