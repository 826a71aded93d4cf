#pragma once

#include "core/run/run.h"
#include "tests/app/sound/capture/private_sound.h"

#include <QString>

#include <span>

namespace desk {

/// Who and what a run is about, and all that was answered, as the journal has it.
struct Kept {
    core::run::Setup setup;
    std::vector<core::run::Fact> facts;
};

/// The first run in the journal of that folder. Throws what is wrong with it.
Kept keptIn(const QString& folder);

/// Where the beginning of a run lies in a recording, in seconds, for a life of the program in which each of
/// these presses led to facts of one moment, in this order: the middle one of what they say, since a press is
/// only a little before its facts. The run went `timesAsFast` as time does. Throws where there are not as
/// many moments as presses.
double beginningOf(core::measure::Instant began, std::span<const core::run::Fact> facts,
                   std::span<const capture::Clock::time_point> presses, const capture::Recording& recording,
                   double timesAsFast);

}  // namespace desk
