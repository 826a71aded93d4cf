#include "app/output/forecast.h"
#include "app/output/text_table.h"
#include "app/output/wall_clock.h"

#include "core/stagger/task.h"

#include <cmath>

namespace app::output {

using core::measure::lengthText;
using core::measure::Seconds;
using core::stagger::Forecast;
using core::stagger::Influence;
using core::stagger::RinseForecast;
using core::stagger::Spread;
using core::stagger::ZoneForecast;
using Side = TextTable::Side;

namespace {

/// "97 in 100"; never all and never none unless it is so, and no finer than some thousand runs can tell.
std::string chanceText(int inside, int runs)
{
    using Kind = core::stagger::Chance::Kind;
    const core::stagger::Chance chance = core::stagger::chanceOf(inside, runs);
    switch (chance.kind) {
    case Kind::Always: return "every time";
    case Kind::Never: return "never";
    case Kind::AlmostAlways: return "more than 99 in 100";
    case Kind::HardlyEver: return "less than 1 in 100";
    case Kind::Share: break;
    }
    return std::to_string(chance.inHundred) + " in 100";
}

/// To whole minutes, as nobody can say such a thing to the second.
std::string aboutText(const Spread<Seconds>& spread)
{
    const auto rounded = [](Seconds length) {
        return lengthText(std::chrono::round<std::chrono::minutes>(length));
    };
    return rounded(spread.low) == rounded(spread.high) ? rounded(spread.middle)
                                                       : rounded(spread.low) + " to " + rounded(spread.high);
}

std::string zonesText(const Services& services, const Forecast& forecast)
{
    TextTable table{{{"Zone"}, {"Inside its limits"}, {"Develops, 9 times in 10"}, {"Asked for"}}};
    for (const ZoneForecast& zone : forecast.zones) {
        const auto& service = services.at(zone.service);
        const auto& coat = service.coats.at(zone.coat);
        const std::string of =
            ofHead(services, zone.service) + (service.coats.size() > 1 ? coat.name + ", " : "");
        table.addRow({of + coat.zones.at(zone.zone).name, chanceText(zone.inside, forecast.runs),
                      aboutText(zone.development), windowText(coat.zones.at(zone.zone).develop)});
    }
    return table.text();
}

std::string rinsesText(const Services& services, const Forecast& forecast, const WallClock& clock)
{
    const auto minute = [&clock](core::measure::Instant moment) {
        return clock.text(std::chrono::round<std::chrono::minutes>(moment));
    };
    TextTable table{{{"Rinse"}, {"Water, 9 times in 10"}, {"At the earliest"}, {"At the latest"}}};
    for (const RinseForecast& rinse : forecast.rinses) {
        const auto& service = services.at(rinse.rinse.service);
        const std::string of = ofHead(services, rinse.rinse.service)
            + (service.coats.size() > 1 ? service.coats.at(rinse.rinse.coat).name + ", " : "");
        const std::string low = minute(rinse.water.low);
        const std::string high = minute(rinse.water.high);
        table.addRow({of + core::stagger::taskName(service, rinse.rinse).text(),
                      low == high ? low : low + " to " + high, minute(rinse.water.least),
                      minute(rinse.water.most)});
    }
    return table.text();
}

std::string influenceText(const Services& services, const Forecast& forecast)
{
    if (forecast.influences.empty())
        return "No length of applying is uncertain, so there is nothing to forecast.\n";
    const Influence& most = forecast.influences.front();
    if (most.share < 0.01)
        return {};
    return "It hangs most on: " + ofHead(services, most.apply.service)
        + core::stagger::taskName(services.at(most.apply.service), most.apply).text() + " ("
        + std::to_string(std::lround(100 * most.share)) + " % of what differs).\n";
}

}  // namespace

std::string forecastText(const Services& services, const Forecasted& forecasted,
                         const core::measure::TimeZones& zones)
{
    const Forecast& forecast = forecasted.forecast;
    WallClock clock{zones, services.front().timeZone, forecasted.plan->start, forecasted.plan->end};
    std::string text = "The plan was followed " + std::to_string(forecast.runs)
        + " times, with applying as quick and as slow as the service says it may be.\n";
    text += "Every zone stays inside its limits: " + chanceText(forecast.allInside, forecast.runs) + ".\n\n";
    text += zonesText(services, forecast) + "\n" + rinsesText(services, forecast, clock) + "\n";
    text += influenceText(services, forecast);
    return text + "Chances, not promises: they are as good as the times in the service.\n";
}

}  // namespace app::output
