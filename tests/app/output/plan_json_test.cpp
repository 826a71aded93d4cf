#include "app/output/plan_json.h"

#include "app/session/time_zones.h"
#include "tests/app/output/output_samples.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

namespace app::output {
namespace {

using core::measure::Instant;
using nlohmann::json;

using samples::twoOClock;

json planned()
{
    const session::QtTimeZones zones;
    const auto service = samples::service(samples::oneZone(""), zones);
    return json::parse(planJson({service}, samples::planOf(service, twoOClock), zones));
}

TEST(PlanJson, HoldsEveryTaskWithWhatItIsAbout)
{
    const json plan = planned();

    EXPECT_EQ(plan["basinbell_plan"], 1);
    ASSERT_EQ(plan["tasks"].size(), 4u);
    EXPECT_EQ(plan["tasks"][0], json::parse(R"({"id": "0.0.mix.0.0", "kind": "mix", "name": "Mix Root colour",
        "service": 0, "coat": "Coat", "bowl": "Root colour", "start": "2026-07-01T14:00:00+01:00",
        "end": "2026-07-01T14:05:00+01:00", "seconds": 300, "state": "open", "hands": "Wig room"})"));
    EXPECT_EQ(plan["tasks"][2]["look"], 1);
    EXPECT_EQ(plan["tasks"][3]["group"], "All together");
    EXPECT_EQ(plan["tasks"][3]["basin"], 1);
}

TEST(PlanJson, HoldsWhatEachZoneGetsBesideWhatWasAskedFor)
{
    const json plan = planned();
    const json& zone = plan["zones"][0];

    EXPECT_EQ(zone["development_seconds"], 35 * 60);
    EXPECT_EQ(zone["least_seconds"], 30 * 60);
    EXPECT_EQ(zone["most_seconds"], 45 * 60);
    EXPECT_EQ(zone["first_contact"], "2026-07-01T14:05:00+01:00");
    EXPECT_EQ(zone["first_strand_seconds"], 55 * 60);
    EXPECT_EQ(zone["first_strand_most_seconds"], 70 * 60);
    EXPECT_TRUE(zone["last_strand_least_seconds"].is_null());
}

TEST(PlanJson, SaysWhetherThePlanIsProved)
{
    const json plan = planned();

    EXPECT_EQ(plan["proved"], true);
    EXPECT_EQ(plan["worth"], plan["proved_bound"]);
    EXPECT_EQ(plan["worth"]["deviation_hundredth_seconds"], 0);
}

TEST(PlanJson, SaysHowFarThePlanHolds)
{
    const session::QtTimeZones zones;
    auto service = samples::service(samples::oneZone(""), zones);
    core::service::Application& apply = service.coats.front().zones.front().apply;
    apply.quickest = apply.usual - std::chrono::minutes{2};
    apply.slowest = apply.usual + std::chrono::minutes{4};
    const json plan = json::parse(planJson({service}, samples::planOf(service, twoOClock), zones));

    // Water waits for the end of applying, so one zone holds whatever that takes.
    EXPECT_EQ(plan["give"], json::parse(R"({"percent": 100, "proved": true})"));
    EXPECT_EQ(plan["zones"][0]["apply_held_seconds"], json::parse(R"({"quickest": 1080, "slowest": 1440})"));
    EXPECT_FALSE(planned().contains("give"));
}

TEST(PlanJson, SaysWhyNothingFits)
{
    const core::measure::UtcOnly zones;
    core::stagger::NoPlan none;
    none.text = std::string{"No."};
    none.minimal = true;
    none.demands = {{core::stagger::TaskId{}, std::string{"Root: at least 30 min"}},
                    {std::nullopt, std::string{"Ready by 15:00"}}};

    const json answer = json::parse(noPlanJson({samples::service(samples::oneZone("", "UTC"), zones)}, none));

    EXPECT_FALSE(answer.contains("tasks"));
    EXPECT_EQ(answer["nothing_fits"]["demands"][0]["task"], "0.0.apply.0.0");
    EXPECT_TRUE(answer["nothing_fits"]["demands"][1]["task"].is_null());
}

}  // namespace
}  // namespace app::output
