#pragma once

#include "core/temporal/project.h"
#include "tests/core/temporal/small_projects.h"

#include <gtest/gtest.h>

namespace core::temporal {

/// Nothing where it is proved that nothing fits; what is found must keep everything.
inline std::optional<Time> provedShortest(const Project& project)
{
    const ProjectOutcome outcome = shortest(project, {});
    EXPECT_TRUE(outcome.complete);
    if (!outcome.best)
        return std::nullopt;
    EXPECT_EQ(brokenBy(project, outcome.best->starts), "");
    EXPECT_EQ(makespanOf(project, outcome.best->starts), outcome.best->makespan);
    EXPECT_EQ(outcome.bound, outcome.best->makespan);
    return outcome.best->makespan;
}

}  // namespace core::temporal
