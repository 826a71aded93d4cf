#pragma once

#include "core/service/service.h"

#include <cstddef>
#include <string>
#include <vector>

namespace core::stagger {

/// What a head is called among others that are planned together: its own name,
/// else that of its service, with a number behind it where another is called so
/// too. "Head 2" where it has no name at all.
std::string headName(const std::vector<service::Service>& services, std::size_t head);

}  // namespace core::stagger
