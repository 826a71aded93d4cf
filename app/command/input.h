#pragma once

#include "core/measure/time.h"
#include "core/service/service.h"

#include <QString>

#include <tl/expected.hpp>

#include <iosfwd>
#include <string>
#include <vector>

namespace app::command {

/// The service in `file`, or in `in` where the file is "-". The errors are lines
/// that each begin with the file's name.
tl::expected<core::service::Service, std::vector<std::string>>
readServiceFile(const QString& file, std::istream& in, const core::measure::TimeZones& zones);

/// A moment as typed: "14:30" (today), "2026-03-14T14:30", or either with a
/// distance from UTC behind it, "+01:00" or "Z". By the clocks of `zone`.
tl::expected<core::measure::Instant, std::string> readMoment(const QString& text, const std::string& zone,
                                                             const core::measure::TimeZones& zones,
                                                             core::measure::Instant now);

}  // namespace app::command
