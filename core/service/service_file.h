#pragma once

#include "core/measure/time.h"
#include "core/service/problem.h"
#include "core/service/service.h"

#include <tl/expected.hpp>

#include <cstddef>
#include <iosfwd>
#include <string>
#include <string_view>
#include <vector>

/// The service file: JSON for people, described in docs/service-file.md and in
/// resources/schema/basinbell-service-1.schema.json.
///
/// Reading never throws and never guesses. It answers with a service that has
/// passed every check of `checkService`, or with everything that is wrong with
/// the text, each at its place.
namespace core::service {

/// What a service file leaves to the place where it is read.
struct ReadContext {
    const measure::TimeZones& zones;
    std::string localZone;          ///< Used where the file names no zone.
    std::chrono::local_days today;  ///< The day of "14:30" where the file names no date.
};

/// A longer file is refused, and no more of it is read than shows that it is longer.
inline constexpr std::size_t mostFileBytes = std::size_t{4} * 1024 * 1024;

tl::expected<Service, std::vector<Problem>> readService(std::istream& in, const ReadContext& context);
tl::expected<Service, std::vector<Problem>> readService(std::string_view text, const ReadContext& context);

/// Writes `service` so that reading it back gives an equal one: keys in one
/// order, defaults left out, moments in full in the service's time zone. For a
/// service that passes `checkService`; `zones` must know its zone.
void writeService(std::ostream& out, const Service& service, const measure::TimeZones& zones);

}  // namespace core::service
