#pragma once

#include "core/measure/sentence.h"
#include "core/service/service.h"

#include <cstddef>
#include <string>
#include <vector>

/// Services that are planned together share one crew; each brings one of its own.
namespace core::service {

/// One pair of hands that is always there and does everything, and one basin: what a service also has
/// that says nothing of its crew.
bool namesNoCrew(const Crew& crew);

/// The place of the service whose crew all of them have: the first that names one, else the first.
std::size_t whoseCrew(const std::vector<Service>& services);

/// How two crews differ, "2 pairs of hands here, 3 there"; empty where they are the same.
measure::Sentence crewDifference(const Crew& here, const Crew& there);

}  // namespace core::service
