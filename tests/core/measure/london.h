#pragma once

#include "core/measure/time.h"

namespace core::measure {

/// "Europe/London" in 2026, and "UTC". The clocks go forward on the last Sunday of
/// March and back on the last Sunday of October, each at 01:00 Greenwich mean time
/// (The Summer Time Order 2002, SI 2002/262; the same in the IANA time zone database):
/// on 29 March 2026 01:00 GMT becomes 02:00 BST, on 25 October 2026 02:00 BST becomes 01:00 GMT.
class London2026 final : public TimeZones {
public:
    [[nodiscard]] bool knows(std::string_view zone) const override
    {
        return zone == "Europe/London" || zone == "UTC";
    }

    [[nodiscard]] std::vector<Instant> instantsOf(LocalTime local, std::string_view zone) const override
    {
        std::vector<Instant> instants;
        for (const Seconds offset : {Seconds{3600}, Seconds{0}}) {
            const Instant instant{local.time_since_epoch() - offset};
            if (localAt(instant, zone) == local)
                instants.push_back(instant);
        }
        return instants;
    }

    [[nodiscard]] LocalTime localAt(Instant instant, std::string_view zone) const override
    {
        using namespace std::chrono;
        constexpr sys_seconds forward = sys_days{2026y / March / 29} + hours{1};
        constexpr sys_seconds back = sys_days{2026y / October / 25} + hours{1};
        const bool isSummer = zone != "UTC" && instant >= forward && instant < back;
        return LocalTime{instant.time_since_epoch() + (isSummer ? hours{1} : hours{0})};
    }
};

}  // namespace core::measure
