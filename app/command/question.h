#pragma once

#include "app/command/options.h"
#include "core/measure/time.h"

#include <iosfwd>
#include <string>
#include <vector>

namespace app::command {

/// What is asked of the files on the command line. The errors are lines.
tl::expected<core::stagger::Question, std::vector<std::string>>
readQuestion(const Options& options, std::istream& in, const core::measure::TimeZones& zones);

/// What `--from` and `--preference` ask for of `services`: from the next full minute on
/// where nothing else is said. The error is a sentence.
tl::expected<core::stagger::Question, std::string> questionOf(const Options& options,
                                                              std::vector<core::service::Service> services,
                                                              const core::measure::TimeZones& zones);

}  // namespace app::command
