#pragma once

#include "app/desktop/wall_clock.h"
#include "app/view/give_view.h"

#include "core/stagger/cures.h"
#include "core/stagger/forecast.h"

#include <QString>

/// What Set-up says of a plan, of what it holds for and of what would make one.
namespace app::desktop::plan_text {

/// When it begins and ends, and whether the targets are met.
QString summary(const core::stagger::PlanData& plan, std::size_t heads, const WallClock& clock);

/// "Holds even if Mids takes up to 14 min (or only 9)"; in minutes, never as a share alone. Empty where
/// nothing is uncertain.
QString give(const view::GiveView& give);

/// How often all stays inside its limits. Empty where nothing is uncertain.
QString forecast(const core::stagger::Forecast& forecast);

/// What a cure changes, a sentence each step.
QString change(const core::stagger::Cure& cure, const WallClock& clock);

/// What to mind with it, and what the plan then comes to.
QString outcome(const core::stagger::Cure& cure, const WallClock& clock);

}  // namespace app::desktop::plan_text
