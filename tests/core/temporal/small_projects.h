#pragma once

#include "core/temporal/project.h"

#include <optional>
#include <string>
#include <vector>

/// Projects that are small enough to try every start of every activity, written from project.h alone.
namespace core::temporal {

/// What `starts`, by activity, break, in words; empty if they are a schedule.
std::string brokenBy(const Project& project, const std::vector<Time>& starts);

/// When the last activity ends.
Time makespanOf(const Project& project, const std::vector<Time>& starts);

/// The least makespan of a schedule whose starts are all within [0, horizon]; nothing where there is none.
std::optional<Time> shortestByTryingAll(const Project& project, Time horizon);

std::string textOf(const Project& project);

}  // namespace core::temporal
