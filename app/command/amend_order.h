#pragma once

#include "app/command/answer_line.h"

#include <tl/expected.hpp>

#include <optional>
#include <string>
#include <vector>

namespace app::command {

/// Reads a line that changes what is planned from now on: who is away, comes or goes, what is rinsed by
/// itself, applying that stops, a coat that is given up, and what is chosen where not every limit can hold.
/// Nothing if it is no such line.
std::optional<tl::expected<Order, std::string>>
readAmendment(const std::vector<std::string>& words, const std::vector<core::service::Service>& services,
              const core::run::State& state);

}  // namespace app::command
