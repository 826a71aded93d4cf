#include "core/service/shared_crew.h"

#include <chrono>

#include <gtest/gtest.h>

namespace core::service {
namespace {

Service with(std::size_t hands)
{
    Service service;
    for (std::size_t pair = 0; pair < hands; ++pair)
        service.crew.hands.push_back({"Hands", {}, {}});
    return service;
}

TEST(SharedCrew, IsTheFirstThatIsNamed)
{
    EXPECT_EQ(whoseCrew({with(1), with(2), with(3)}), 1u);
    EXPECT_EQ(whoseCrew({with(2), with(3)}), 0u);
    EXPECT_EQ(whoseCrew({with(1), with(1)}), 0u);
}

TEST(SharedCrew, IsNamedByWhateverIsNotTheUsual)
{
    Crew crew = with(1).crew;
    EXPECT_TRUE(namesNoCrew(crew));
    crew.basins = 2;
    EXPECT_FALSE(namesNoCrew(crew));
    crew.basins = 1;
    crew.hands[0].kinds = {Work::Rinse};
    EXPECT_FALSE(namesNoCrew(crew));
}

TEST(SharedCrew, SaysHowCrewsDiffer)
{
    Crew here{.hands = {{.name = "One", .away = {}, .kinds = {}}}, .basins = 1};
    Crew there = here;
    EXPECT_EQ(crewDifference(here, there), "");
    there.basins = 2;
    EXPECT_EQ(crewDifference(here, there), "1 basin here, 2 there");
    there.hands[0].kinds = {Work::Mix};
    EXPECT_EQ(crewDifference(here, there), "One does other work");
    there.hands[0].away = {{measure::Instant{}, measure::Instant{} + std::chrono::hours{1}}};
    EXPECT_EQ(crewDifference(here, there), "One is away at other times");
    there.hands[0].name = "Two";
    EXPECT_EQ(crewDifference(here, there), "One here, Two there");
    there.hands.push_back(there.hands[0]);
    EXPECT_EQ(crewDifference(here, there), "1 pair of hands here, 2 there");
}

}  // namespace
}  // namespace core::service
