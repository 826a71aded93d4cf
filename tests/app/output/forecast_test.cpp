#include "app/output/forecast.h"

#include "app/session/time_zones.h"
#include "tests/app/output/output_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

namespace app::output {
namespace {

using nlohmann::json;
using std::chrono::minutes;
using testing::HasSubstr;

/// A forecast of one zone, made up to the last figure: what is tested is how it is said.
Forecasted madeUp(const Services& services, int inside)
{
    core::stagger::Forecast forecast;
    forecast.runs = 1000;
    forecast.allInside = inside;
    const core::measure::Instant noon = std::chrono::sys_days{std::chrono::year{2026} / 7 / 1}
        + std::chrono::hours{11};  // In London, in summer.
    forecast.zones.push_back(
        {0, 0, 0, inside, {minutes{31}, minutes{33}, minutes{35}, minutes{38}, minutes{40}}});
    forecast.rinses.push_back(
        {{.service = 0, .coat = 0, .kind = core::stagger::TaskKind::Rinse},
         {noon, noon + minutes{2}, noon + minutes{5}, noon + minutes{9}, noon + minutes{12}}});
    forecast.influences.push_back(
        {{.service = 0, .coat = 0, .kind = core::stagger::TaskKind::Apply}, 0.8349});
    return {
        samples::planOf(services.front(), noon - std::chrono::hours{1}), forecast, {.runs = 1000, .seed = 7}};
}

class ForecastOutput : public testing::Test {
protected:
    [[nodiscard]] std::string text(int inside) const
    {
        return forecastText(services, madeUp(services, inside), zones);
    }

    session::QtTimeZones zones;
    Services services{samples::service(samples::oneZone(""), zones)};
};

TEST_F(ForecastOutput, SaysChancesInHundredsAndNeverMoreThanIsKnown)
{
    EXPECT_THAT(text(971), HasSubstr("Every zone stays inside its limits: 97 in 100."));
    EXPECT_THAT(text(1000), HasSubstr("limits: every time."));
    EXPECT_THAT(text(999), HasSubstr("limits: more than 99 in 100."));
    EXPECT_THAT(text(1), HasSubstr("limits: less than 1 in 100."));
    EXPECT_THAT(text(0), HasSubstr("limits: never."));
}

TEST_F(ForecastOutput, SaysHowFarThingsSpreadInWholeMinutesAndByTheClock)
{
    EXPECT_THAT(text(971), HasSubstr("33 min to 38 min"));
    EXPECT_THAT(text(971), HasSubstr("12:02 to 12:09"));
    EXPECT_THAT(text(971), HasSubstr("It hangs most on: Apply Root (83 % of what differs)."));
}

TEST_F(ForecastOutput, IsTheSameInJson)
{
    const json made = json::parse(forecastJson(services, madeUp(services, 971), zones));

    EXPECT_EQ(made["basinbell_forecast"], 1);
    EXPECT_EQ(made["runs"], 1000);
    EXPECT_EQ(made["seed"], 7);
    EXPECT_EQ(made["zones"][0]["inside"], 971);
    EXPECT_EQ(made["zones"][0]["development_seconds"]["low"], 33 * 60);
    EXPECT_EQ(made["rinses"][0]["water"]["middle"], "2026-07-01T12:05:00+01:00");
    EXPECT_EQ(made["influences"][0]["task"], "0.0.apply.0.0");
    EXPECT_EQ(made["influences"][0]["share"], 0.835);
}

}  // namespace
}  // namespace app::output
