#pragma once

#include "app/command/options.h"
#include "core/measure/time.h"

#include <string>
#include <vector>

namespace app::command {

/// What `--from` and `--preference` ask for of `services`: from the next full minute on
/// where nothing else is said. The error is a sentence.
tl::expected<core::stagger::Question, std::string> questionOf(const Options& options,
                                                              std::vector<core::service::Service> services,
                                                              const core::measure::TimeZones& zones);

}  // namespace app::command
