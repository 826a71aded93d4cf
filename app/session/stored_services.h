#pragma once

#include "app/session/journal.h"
#include "core/service/service.h"

#include <tl/expected.hpp>

#include <string>
#include <vector>

/// Services as a journal keeps them: as service files.
namespace app::session {

/// The services that were written down in a run, or what is wrong with them.
tl::expected<std::vector<core::service::Service>, std::string>
servicesOf(const std::vector<std::string>& texts, Instant began, const core::measure::TimeZones& zones);

/// What amendments made of them.
tl::expected<std::vector<std::vector<core::service::Service>>, std::string>
revisionsOf(const StoredRun& stored, const core::measure::TimeZones& zones);

std::vector<std::string> textsOf(const std::vector<core::service::Service>& services,
                                 const core::measure::TimeZones& zones);

}  // namespace app::session
