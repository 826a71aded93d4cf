#include "app/output/explanation.h"

#include "app/session/time_zones.h"
#include "tests/app/output/output_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

namespace app::output {
namespace {

using core::measure::Instant;
using nlohmann::json;
using testing::HasSubstr;
using testing::Not;

using samples::twoOClock;

/// Two toners that clash by 2 min: mids first and ends 10 min at least, or somebody for 8 min, or wider
/// windows.
core::stagger::Question twoToners(const core::measure::TimeZones& zones)
{
    core::stagger::Question question;
    question.services = {samples::service(R"({"basinbell": 1, "name": "Toners", "zone": "Europe/London",
      "head": {"name": "The lamplighter", "kind": "wig"}, "crew": {"hands": [{"name": "Wig room"}]},
      "coats": [{"zones": [
        {"name": "Mids", "apply": 10, "develop": {"least": 12, "target": 15, "most": 18}},
        {"name": "Ends", "apply": 8, "develop": {"least": 12, "target": 15, "most": 18}}],
        "rinse": [{"length": 5}]}]})",
                                          zones)};
    question.now = twoOClock;
    return question;
}

WhyNot whyNot(const core::stagger::Question& question)
{
    WhyNot why;
    const auto plan = core::stagger::plan(question);
    EXPECT_FALSE(plan);
    why.reason = plan.error();
    why.cures = core::stagger::curesFor(question, why.reason);
    return why;
}

TEST(Explanation, ListsCuresWithTheirNumbers)
{
    const session::QtTimeZones zones;
    const auto question = twoToners(zones);
    const std::string text = explanationText(question.services, whyNot(question), zones);

    EXPECT_THAT(text, HasSubstr("These cannot all hold together"));
    // Mids 14:00 to 14:10, ends to 14:18, water after 10 of ends at 14:28, when mids have 18; rinsed by
    // 14:33.
    EXPECT_THAT(text,
                HasSubstr("1   Let Ends be rinsed from 10 min on (now from 12 min). Only if the product's "
                          "leaflet allows it.\n"
                          "    Then off target by 8 zone-minutes in all, from 14:00 to 14:33.\n"));
    EXPECT_THAT(text, HasSubstr("3   Call another pair of hands for 8 min, from 14:"));
    EXPECT_THAT(text, Not(HasSubstr("there may be more")));
}

TEST(Explanation, SaysWhenTheTimeWasUp)
{
    const session::QtTimeZones zones;
    const auto question = twoToners(zones);
    WhyNot why = whyNot(question);
    why.cures.clear();
    EXPECT_THAT(explanationText(question.services, why, zones), HasSubstr("No change that is known"));
    why.complete = false;
    EXPECT_THAT(explanationText(question.services, why, zones), HasSubstr("there may be more"));
}

TEST(Explanation, SaysWhatWouldHaveToGive)
{
    const session::QtTimeZones zones;
    auto question = twoToners(zones);
    question.services[0].coats[0].zones[0].develop.most = std::chrono::minutes{30};
    const auto plan = core::stagger::plan(question);
    ASSERT_TRUE(plan);
    const std::string text =
        explanationText(question.services, WhySo{*plan, core::stagger::holdsOf(question)}, zones);

    EXPECT_THAT(text, HasSubstr("It fits: off target by 8 zone-minutes in all, from 14:00 to "));
    EXPECT_THAT(text, HasSubstr("one pair of hands: without it every zone would get its target"));
}

TEST(Explanation, SaysWhatTheGiveCosts)
{
    // For usual lengths ends begin 1 min after root, and both get their targets: 1 + 11 + 27 = 39. So that
    // ends may take 14 min and still have 26 while root has no more than 40, they begin at once, and root
    // gets 38.
    const session::QtTimeZones zones;
    auto question = twoToners(zones);
    auto& toners = question.services.front().coats.front().zones;
    const auto minutes = [](int count) { return core::measure::Seconds{60 * count}; };
    for (auto& zone : toners)
        zone.apply = {minutes(8), minutes(11), minutes(14)};
    toners[0].develop = {minutes(25), minutes(39), minutes(40)};
    toners[1].develop = {minutes(26), minutes(27), minutes(27)};
    const auto plan = core::stagger::plan(question);
    ASSERT_TRUE(plan);
    const std::string text =
        explanationText(question.services, WhySo{*plan, core::stagger::holdsOf(question)}, zones);

    EXPECT_THAT(text, HasSubstr("Off target by 1 zone-minutes in all"));
    EXPECT_THAT(text, HasSubstr("1 zone-minutes of that are the price of holding"));
    EXPECT_THAT(text, Not(HasSubstr("No single limit")));
}

TEST(Explanation, IsSaidInJsonToo)
{
    const session::QtTimeZones zones;
    const auto question = twoToners(zones);
    const json answer = json::parse(explanationJson(question.services, whyNot(question), zones));

    EXPECT_EQ(answer["basinbell_explanation"], 1);
    EXPECT_EQ(answer["fits"], false);
    ASSERT_EQ(answer["cures"].size(), 5u);
    EXPECT_EQ(answer["cures"][0]["number"], 1);
    EXPECT_EQ(answer["cures"][0]["change_hundredth_seconds"], 800 * 60);
    EXPECT_EQ(answer["cures"][0]["plan"]["end"], "2026-07-01T14:33:00+01:00");
    const json& step = answer["cures"][0]["steps"][0];
    EXPECT_EQ(step["kind"], "shorter-least");
    EXPECT_EQ(step["task"], "0.0.apply.1.0");
    EXPECT_EQ(step["by_seconds"], 120);
    EXPECT_FALSE(step.contains("from"));
    EXPECT_EQ(answer["cures"][2]["steps"][0]["kind"], "another-hands");
    EXPECT_TRUE(answer["cures"][2]["steps"][0].contains("until"));
}

}  // namespace
}  // namespace app::output
