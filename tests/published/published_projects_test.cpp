#include "tests/core/temporal/proved_shortest.h"
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
    SCOPED_TRACE(published.name);
    EXPECT_EQ(provedShortest(projectOf(published)), published.makespan);
}

INSTANTIATE_TEST_SUITE_P(ProGenMax, PublishedProjects,
                         testing::Range(std::size_t{0}, publishedProjects().size()));

}  // namespace
}  // namespace published
