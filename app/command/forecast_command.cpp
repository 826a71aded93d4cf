#include "app/command/forecast_command.h"

#include "app/command/complain.h"
#include "app/command/question.h"
#include "app/output/forecast.h"
#include "app/output/plan_json.h"
#include "app/session/time_zones.h"

#include <ostream>

namespace app::command {

int forecastCommand(const Options& options, Outside& outside)
{
    const session::QtTimeZones zones;
    const auto question = readQuestion(options, outside.in, zones);
    if (!question)
        return complain(outside, question.error());
    const auto plan = core::stagger::plan(*question);
    if (!plan) {
        outside.out << (options.json ? output::noPlanJson(question->services, plan.error())
                                     : output::noPlanText(plan.error()));
        return NothingFits;
    }
    const core::stagger::ForecastOptions how{.runs = options.runs, .seed = options.seed};
    auto forecast = core::stagger::forecast(*question, *plan, how);
    if (!forecast)
        return complain(outside, {"No forecast can be made of this plan."});
    const output::Forecasted forecasted{*plan, *std::move(forecast), how};
    outside.out << (options.json ? output::forecastJson(question->services, forecasted, zones)
                                 : output::forecastText(question->services, forecasted, zones));
    return Planned;
}

}  // namespace app::command
