#pragma once

#include "core/measure/time.h"

#include <string>

namespace app::session {

/// The time zones that the machine knows, through QTimeZone.
class QtTimeZones final : public core::measure::TimeZones {
public:
    [[nodiscard]] bool knows(std::string_view zone) const override;
    [[nodiscard]] std::vector<core::measure::Instant> instantsOf(core::measure::LocalTime local,
                                                                 std::string_view zone) const override;
    [[nodiscard]] core::measure::LocalTime localAt(core::measure::Instant instant,
                                                   std::string_view zone) const override;
};

/// The zone of the machine, an IANA name; "UTC" where it has none.
std::string localZone();

}  // namespace app::session
