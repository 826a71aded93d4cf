#pragma once

#include "app/output/plan_words.h"
#include "core/measure/time.h"
#include "core/stagger/forecast.h"

#include <string>

/// What a plan comes to where applying takes as long as it happens to take. In words,
/// and as JSON (docs/forecast-json.md, with its schema
/// resources/schema/basinbell-forecast-1.schema.json).
namespace app::output {

/// A forecast with all that it was made of.
struct Forecasted {
    core::stagger::Plan plan;
    core::stagger::Forecast forecast;
    core::stagger::ForecastOptions options;
};

std::string forecastText(const Services& services, const Forecasted& forecasted,
                         const core::measure::TimeZones& zones);
std::string forecastJson(const Services& services, const Forecasted& forecasted,
                         const core::measure::TimeZones& zones);

}  // namespace app::output
