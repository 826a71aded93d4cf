#pragma once

#include "app/output/plan_words.h"
#include "core/measure/time.h"

#include <string>

namespace app::output {

/// The whole plan as JSON, described in docs/plan-json.md and by
/// resources/schema/basinbell-plan-1.schema.json. Ends with a line feed.
std::string planJson(const Services& services, const core::stagger::Plan& plan,
                     const core::measure::TimeZones& zones);

/// The same for when nothing fits.
std::string noPlanJson(const Services& services, const core::stagger::NoPlan& noPlan);

}  // namespace app::output
