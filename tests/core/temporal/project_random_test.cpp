#include "tests/core/temporal/proved_shortest.h"
#include "tests/core/temporal/small_networks.h"
#include "tests/core/temporal/small_projects.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

// Random projects with fixed seeds: against trying everything, and properties that need no other answer.

namespace core::temporal {
namespace {

struct Mix {
    int activities = 4;
    int lags = 4;
    int longest = 4;
    int resources = 2;
};

Project randomProject(Dice& dice, const Mix& mix)
{
    Project project;
    for (int count = dice.between(1, mix.resources); count > 0; --count)
        project.capacities.push_back(dice.between(2, 5));
    for (int count = mix.activities; count > 0; --count) {
        Activity& activity = project.activities.emplace_back();
        activity.duration = dice.between(count == 1 ? 0 : 1, mix.longest);
        for (const int capacity : project.capacities)
            activity.demands.push_back(dice.between(0, std::min(capacity, 3)));
    }
    for (int count = dice.between(0, mix.lags); count > 0; --count) {
        // Forwards at least, backwards at most: few contradict one another.
        Lag lag = dice.lag(mix.activities, -mix.longest, 0);
        lag = {std::max(lag.from, lag.to) + 1, std::min(lag.from, lag.to) + 1, lag.most};
        if (dice.between(0, 2) == 0)
            lag = {lag.to, lag.from, mix.longest + lag.most + 1};
        project.lags.push_back(lag);
    }
    return project;
}

/// `check` gets what was found and says what was found last: of these, not all fit.
void tryProjects(std::uint64_t firstSeed, int count, const Mix& mix,
                 const std::function<std::optional<Time>(Dice&, Project&, std::optional<Time>)>& check)
{
    int fitting = 0;
    for (std::uint64_t seed = firstSeed; seed < firstSeed + static_cast<std::uint64_t>(count); ++seed) {
        Dice dice{seed};
        Project project = randomProject(dice, mix);
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << textOf(project));
        fitting += check(dice, project, provedShortest(project)) ? 1 : 0;
        if (testing::Test::HasFailure())
            return;
    }
    EXPECT_GT(fitting, count / 3);
    EXPECT_LT(fitting, count);
}

// If anything fits, something fits in which every activity starts before the sum, over all activities, of the
// greater of its duration and its longest lag to another: without a pause longer than that there is nothing
// to wait for, and what comes after a longer one can all be moved forwards.
TEST(ProjectAgainstTryingAll, FindsTheLeastMakespan)
{
    const Mix mix{.activities = 3, .lags = 4, .longest = 4};
    tryProjects(1, 400, mix, [&](Dice&, const Project& project, std::optional<Time> found) {
        EXPECT_EQ(found, shortestByTryingAll(project, mix.activities * mix.longest));
        return found;
    });
}

TEST(ProjectAgainstTryingAll, FindsTheLeastMakespanBeforeDeadlines)
{
    const Mix mix{.activities = 5, .lags = 3, .longest = 3};
    tryProjects(10'001, 120, mix, [&](Dice& dice, Project& project, std::optional<Time>) {
        const Time deadline = dice.between(3, 6);
        for (std::size_t activity = 0; activity < project.activities.size(); ++activity)
            project.lags.push_back({origin, startOf(activity), deadline});
        const std::optional<Time> found = provedShortest(project);
        EXPECT_EQ(found, shortestByTryingAll(project, deadline));
        return found;
    });
}

constexpr Mix larger{.activities = 9, .lags = 12, .longest = 9, .resources = 3};

TEST(ProjectProperties, BackwardsItIsAsLong)
{
    tryProjects(20'001, 150, larger, [](Dice&, Project& project, std::optional<Time> found) {
        for (Lag& lag : project.lags) {
            const auto duration = [&](Point point) {
                return project.activities[static_cast<std::size_t>(point - 1)].duration;
            };
            lag = {lag.to, lag.from, lag.most + duration(lag.to) - duration(lag.from)};
        }
        EXPECT_EQ(provedShortest(project), found);
        return found;
    });
}

TEST(ProjectProperties, NamesDoNotMatter)
{
    tryProjects(30'001, 150, larger, [](Dice& dice, Project& project, std::optional<Time> found) {
        std::vector<std::size_t> places(project.activities.size());
        std::iota(places.begin(), places.end(), 0U);
        for (std::size_t place = places.size() - 1; place > 0; --place)
            std::swap(places[place],
                      places[static_cast<std::size_t>(dice.between(0, static_cast<int>(place)))]);
        Project renamed = project;
        for (std::size_t place = 0; place < places.size(); ++place)
            renamed.activities[places[place]] = project.activities[place];
        for (Lag& lag : renamed.lags) {
            lag.from = startOf(places[static_cast<std::size_t>(lag.from - 1)]);
            lag.to = startOf(places[static_cast<std::size_t>(lag.to - 1)]);
        }
        EXPECT_EQ(provedShortest(renamed), found);
        return found;
    });
}

TEST(ProjectProperties, ThreeTimesSlowerIsThreeTimesLonger)
{
    tryProjects(40'001, 150, larger, [](Dice&, Project& project, std::optional<Time> found) {
        for (Activity& activity : project.activities)
            activity.duration *= 3;
        for (Lag& lag : project.lags)
            lag.most *= 3;
        EXPECT_EQ(provedShortest(project), found ? std::optional{3 * *found} : std::nullopt);
        return found;
    });
}

TEST(ProjectProperties, MoreOfAResourceOrALagLessIsNeverLonger)
{
    tryProjects(50'001, 150, larger, [](Dice& dice, Project& project, std::optional<Time> found) {
        if (project.lags.empty() || dice.between(0, 1) == 0)
            ++project.capacities.front();
        else
            project.lags.pop_back();
        const std::optional<Time> easier = provedShortest(project);
        EXPECT_TRUE(easier || !found);
        if (easier && found) {
            EXPECT_LE(*easier, *found);
        }
        return easier;
    });
}

}  // namespace
}  // namespace core::temporal
