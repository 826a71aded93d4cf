#include "tests/core/temporal/small_projects.h"
#include "tests/published/project_instances.h"

#include <gtest/gtest.h>

// Source of instances and values: tests/published/project_instances.h.

namespace published {
namespace {

using core::temporal::Project;
using core::temporal::startOf;

Project projectOf(const PublishedProject& published)
{
    Project project{published.activities, {}, published.capacities};
    for (const FollowedBy& lag : published.lags)
        project.lags.push_back({startOf(lag.other - 1), startOf(lag.activity - 1), -lag.least});
    return project;
}

class PublishedProjects : public testing::TestWithParam<std::size_t> { };

TEST_P(PublishedProjects, HaveThePublishedMakespan)
{
    const PublishedProject& published = publishedProjects().at(GetParam());
    const Project project = projectOf(published);
    const core::temporal::ProjectOutcome outcome = shortest(project, {});
    EXPECT_TRUE(outcome.complete) << published.name;
    ASSERT_EQ(outcome.best.has_value(), published.makespan.has_value()) << published.name;
    if (!outcome.best)
        return;
    EXPECT_EQ(outcome.best->makespan, *published.makespan) << published.name;
    EXPECT_EQ(brokenBy(project, outcome.best->starts), "") << published.name;
    EXPECT_EQ(makespanOf(project, outcome.best->starts), *published.makespan) << published.name;
}

INSTANTIATE_TEST_SUITE_P(ProGenMax, PublishedProjects,
                         testing::Range(std::size_t{0}, publishedProjects().size()));

}  // namespace
}  // namespace published
