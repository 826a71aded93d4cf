#pragma once

#include "core/temporal/project.h"

#include <optional>
#include <string>
#include <vector>

/// Projects of ten activities with least and longest lags and five resources, generated with ProGen/max.
///
/// Instances: C. Schwindt, "Generation of resource-constrained project scheduling problems subject to
/// temporal constraints", report WIOR-543, Universitaet Karlsruhe 1998; the sets J10 and UBO10 of PSPLIB (R.
/// Kolisch, A. Sprecher, "PSPLIB - a project scheduling problem library", European Journal of Operational
/// Research 96 (1997) 205-216). The values are those that are distributed with the collections of these sets.
/// Left out are the two activities without duration, first and last, which say no more than that nothing
/// starts before 0 and that the makespan is the end of the last activity.
namespace published {

struct FollowedBy {
    std::size_t activity = 0;  ///< From 1 on, as published.
    std::size_t other = 0;
    core::temporal::Time least =
        0;  ///< From start to start; below 0, `activity` is at most that long after `other`.
};

struct PublishedProject {
    std::string name;
    std::optional<core::temporal::Time> makespan;  ///< The least; nothing where no schedule fits.
    std::vector<core::temporal::Activity> activities;
    std::vector<FollowedBy> lags;
    std::vector<int> capacities;
};

const std::vector<PublishedProject>& publishedProjects();

}  // namespace published
