#pragma once

#include "core/service/problem.h"
#include "core/service/service.h"

#include <vector>

namespace core::service {

/// Everything that is wrong with `service`, whoever built it: one problem for
/// each fault, at the place the fault has in a service file (`coats[0].zones[2]
/// .develop.most`), in the order of the file. Empty means that it can be planned.
std::vector<Problem> checkService(const Service& service);

}  // namespace core::service
