#pragma once

#include "app/output/plan_words.h"
#include "core/measure/time.h"

#include <string>

namespace app::output {

/// A plan on paper, as somebody works from it: what is done when and by whom, what
/// each zone gets beside its window, what the plan is worth.
std::string timetable(const Services& services, const core::stagger::Plan& plan,
                      const core::measure::TimeZones& zones, Remarks wanted = Remarks::Counted);

}  // namespace app::output
