#pragma once

#include "core/temporal/project.h"

#include <istream>
#include <map>
#include <optional>
#include <string>

namespace bench {

struct ReadProject {
    core::temporal::Project project;
    std::string error;  ///< Empty, or what is wrong and in which line.
};

/// Reads the format of ProGen/max (C. Schwindt), in which the sets of PSPLIB come:
/// a line with the number n of activities and the number of resources; n + 2 lines
/// with an activity, its modes (1), how many follow it, which, and each one's least
/// lag from start to start in brackets; n + 2 lines with an activity, its mode, its
/// length and what it takes of each resource; a line with the capacities.
ReadProject readProject(std::istream& in);

/// A table `file,value`: the least makespan of each project, nothing where no schedule fits (`unsat`). Lines
/// with another value are left out.
std::map<std::string, std::optional<core::temporal::Time>> readTable(std::istream& in);

}  // namespace bench
