#include "app/output/forecast.h"
#include "app/output/json_parts.h"
#include "app/output/wall_clock.h"

#include <cmath>

namespace app::output {

using core::stagger::Influence;
using core::stagger::RinseForecast;
using core::stagger::ZoneForecast;

namespace {

template <typename Value, typename Write>
Json spreadJson(const core::stagger::Spread<Value>& spread, const Write& write)
{
    return {{"least", write(spread.least)},
            {"low", write(spread.low)},
            {"middle", write(spread.middle)},
            {"high", write(spread.high)},
            {"most", write(spread.most)}};
}

Json zoneJson(const Services& services, const ZoneForecast& zone)
{
    const auto& coat = services.at(zone.service).coats.at(zone.coat);
    return {{"service", zone.service},
            {"coat", coat.name},
            {"zone", coat.zones.at(zone.zone).name},
            {"inside", zone.inside},
            {"development_seconds",
             spreadJson(zone.development, [](core::measure::Seconds length) { return length.count(); })}};
}

Json rinseJson(const RinseForecast& rinse, const WallClock& clock)
{
    return {{"task", core::stagger::taskIdText(rinse.rinse)},
            {"water", spreadJson(rinse.water, [&clock](Instant moment) { return clock.isoText(moment); })}};
}

Json influenceJson(const Influence& influence)
{
    // No more digits than some thousand runs can tell.
    return {{"task", core::stagger::taskIdText(influence.apply)},
            {"share", std::round(influence.share * 1000) / 1000}};
}

}  // namespace

std::string forecastJson(const Services& services, const Forecasted& forecasted,
                         const core::measure::TimeZones& zones)
{
    const WallClock clock{zones, services.front().timeZone, {}, {}};
    Json json = jsonHead("basinbell_forecast", services);
    json["runs"] = forecasted.forecast.runs;
    json["seed"] = forecasted.options.seed;
    json["all_inside"] = forecasted.forecast.allInside;
    json["zones"] = Json::array();
    for (const ZoneForecast& zone : forecasted.forecast.zones)
        json["zones"].push_back(zoneJson(services, zone));
    json["rinses"] = Json::array();
    for (const RinseForecast& rinse : forecasted.forecast.rinses)
        json["rinses"].push_back(rinseJson(rinse, clock));
    json["influences"] = Json::array();
    for (const Influence& influence : forecasted.forecast.influences)
        json["influences"].push_back(influenceJson(influence));
    return jsonText(json);
}

}  // namespace app::output
