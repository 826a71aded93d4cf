#pragma once

#include "core/measure/harm.h"
#include "core/measure/time.h"
#include "core/service/json/value.h"

#include <tl/expected.hpp>

#include <string>

/// Lengths and harms as people write them in a service file.
namespace core::service {

/// No length in a service may be longer: a day.
inline constexpr measure::Seconds longestLength{24 * 3600};
inline constexpr measure::HarmRate mostHarm{100'000};

/// A length in minutes as a file shows it: 12, 2.5, 0.05. A third of a minute has
/// no finite decimal, so a length that needs one is "12:20", minutes and seconds.
json::Value minutesValue(measure::Seconds length);
json::Value harmValue(measure::HarmRate harm);

/// The same for a message, without quotation marks.
std::string minutesText(measure::Seconds length);

/// The reverse, or what is wrong with it. Exact; a sign is let through.
tl::expected<measure::Seconds, std::string> readMinutes(const json::Value& value);
tl::expected<measure::HarmRate, std::string> readHarm(const json::Value& value);

}  // namespace core::service
