#include "core/stagger/forecast.h"

#include "core/service/check.h"
#include "tests/core/stagger/support.h"
#include "tests/oracle/random_service.h"

#include <gtest/gtest.h>

namespace core::stagger {
namespace {

Forecast forecastOf(const Service& service, const ForecastOptions& options = {})
{
    const Question question = ask(service);
    const std::optional<Forecast> made = forecast(question, planned(question), options);
    if (!made)
        throw std::runtime_error("there is no forecast");
    return *made;
}

double minutesFromOpening(Instant instant)
{
    return static_cast<double>((instant - opening).count()) / 60;
}

TEST(Forecast, SpreadsTheWaterAsTheLengthIsSpread)
{
    // One zone: water is 30 min after the end of applying, so it is spread as the triangular distribution
    // over 8, 11 and 14 min. Its p-quantile is 8 + sqrt(18 p) up to the peak at p = 1/2 and 14 - sqrt(18 (1 -
    // p)) from there (Johnson, The Statistician 46, 1997; from memory): 8.949, 11 and 13.051 min at 1/20, 1/2
    // and 19/20.
    const Forecast made = forecastOf(fromOpening({slowZone("Root", 30, 30, 30)}), {.runs = 4000, .seed = 7});

    ASSERT_EQ(made.rinses.size(), 1U);
    const Spread<Instant>& water = made.rinses.front().water;
    EXPECT_NEAR(minutesFromOpening(water.low), 38.949, 0.15);
    EXPECT_NEAR(minutesFromOpening(water.middle), 41.0, 0.15);
    EXPECT_NEAR(minutesFromOpening(water.high), 43.051, 0.15);
    EXPECT_GE(minutesFromOpening(water.least), 38.0);
    EXPECT_LE(minutesFromOpening(water.most), 44.0);
    EXPECT_EQ(made.allInside, made.runs);
}

TEST(Forecast, CountsTheRunsBeyondTheGive)
{
    // Root first, and then Ends must be done within 40 - 27 = 13 min. That fails where it takes longer: with
    // a chance of (14 - 13)^2 / (6 * 3) = 1/18 = 0.0556; in 4000 runs 222 with a standard deviation of 14.5.
    const Forecast made = forecastOf(
        fromOpening({slowZone("Root", 25, 38, 40), slowZone("Ends", 27, 27, 36)}), {.runs = 4000, .seed = 7});

    EXPECT_NEAR(made.runs - made.allInside, 222, 60);
    EXPECT_EQ(made.influences.size(), 2U);
}

TEST(Forecast, OfAGuaranteedPlanIsInsideInEveryRun)
{
    int guaranteed = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        Question question = oracle::randomQuestion(seed, {.mostZones = 4});
        for (service::Coat& coat : question.services.front().coats) {
            for (Zone& zone : coat.zones) {
                zone.apply.quickest = std::max(zone.apply.usual - Seconds{2}, Seconds{1});
                zone.apply.slowest = zone.apply.usual + Seconds{3};
            }
        }
        if (!service::checkService(question.services.front()).empty())
            continue;
        const auto found = plan(question);
        if (!found || (*found)->give != 100)
            continue;
        ++guaranteed;
        const std::optional<Forecast> made = forecast(question, *found, {.runs = 200, .seed = seed});
        ASSERT_TRUE(made) << oracle::questionText(question);
        EXPECT_EQ(made->allInside, made->runs) << oracle::questionText(question);
    }
    EXPECT_GT(guaranteed, 5);
}

TEST(Forecast, IsTheSameForTheSameSeed)
{
    const Service service = fromOpening({slowZone("Root", 25, 38, 40), slowZone("Ends", 27, 27, 36)});

    EXPECT_EQ(forecastOf(service, {.runs = 300, .seed = 3}), forecastOf(service, {.runs = 300, .seed = 3}));
    EXPECT_NE(forecastOf(service, {.runs = 300, .seed = 3}), forecastOf(service, {.runs = 300, .seed = 4}));
}

TEST(Forecast, OfCertainLengthsIsThePlan)
{
    const Service service = fromOpening({makeZone("Root", minutes{10}, exactly(30))});
    const Plan plan = planned(service);
    const Forecast made = forecastOf(service, {.runs = 10, .seed = 1});

    EXPECT_EQ(made.allInside, 10);
    EXPECT_EQ(made.zones.front().development.least, minutes{30});
    EXPECT_EQ(made.zones.front().development.most, minutes{30});
    EXPECT_EQ(made.rinses.front().water.middle, plan->zones.front().water);
    EXPECT_TRUE(made.influences.empty());
}

TEST(Forecast, GoesOnFromWhatHasHappened)
{
    Question question = ask(fromOpening({slowZone("Root", 25, 38, 50), slowZone("Ends", 20, 27, 36)}));
    happened(question, idOf(TaskKind::Apply), 0, 12);
    question.now = at(12);
    const std::optional<Forecast> made = forecast(question, planned(question), {.runs = 500, .seed = 2});

    ASSERT_TRUE(made);
    ASSERT_EQ(made->influences.size(), 1U);
    EXPECT_EQ(made->influences.front().apply, idOf(TaskKind::Apply, 1));
    EXPECT_GT(made->allInside, 0);
}

}  // namespace
}  // namespace core::stagger
