#pragma once

#include "core/measure/time.h"

#include <optional>
#include <string>

/// What was said before a run began. It is no fact of the run: it was said before there was one, nothing is
/// planned by it, and no answer puts it right.
namespace core::run {

/// What is asked once before a run begins.
enum class Preparing { Sound, Tests, Protection, Bowls };

/// What was said of one of them.
struct Prepared {
    enum class State { Open, Done, Skipped };
    Preparing what = Preparing::Sound;
    State state = State::Open;
    std::string why{};                     ///< Of what was skipped, in words; empty where nobody said.
    std::optional<measure::Instant> at{};  ///< When it was said.

    friend bool operator==(const Prepared&, const Prepared&) = default;
};

}  // namespace core::run
