#pragma once

#include "app/desktop/wall_clock.h"

#include "core/run/fact.h"
#include "core/run/run.h"

#include <QString>

#include <span>

namespace app::desktop {

/// An answer that stands in words, by the last of its facts as it really happened: "Apply Root: started
/// 14:02", "Ada comes to help 14:10". `facts` are all of the run, to which it belongs.
QString answerText(const core::run::Setup& setup, std::span<const core::run::Fact> facts,
                   const std::vector<core::run::Fact>& answer, const WallClock& clock,
                   const core::measure::TimeZones& zones);

/// The last answer that stands. Empty where there is none.
QString lastAnswer(const core::run::Setup& setup, std::span<const core::run::Fact> facts,
                   const WallClock& clock, const core::measure::TimeZones& zones);

}  // namespace app::desktop
