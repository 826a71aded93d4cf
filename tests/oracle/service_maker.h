#pragma once

#include "core/stagger/plan.h"

#include <string>
#include <vector>

/// Short ways to write down services in tests.
namespace oracle {

using core::measure::Instant;
using core::measure::Seconds;

/// Where the clock stands when the tests' services are planned: 2026-01-05T09:00:00Z, a Monday.
inline constexpr Instant opening =
    std::chrono::sys_days{std::chrono::year{2026} / 1 / 5} + std::chrono::hours{9};

/// Minutes from the opening.
[[nodiscard]] inline Instant at(int minute)
{
    return opening + std::chrono::minutes{minute};
}

/// Least, target and most development.
struct Span {
    Seconds least;
    Seconds target;
    Seconds most;
};

/// A zone that takes exactly `apply` and whose clock starts at the end of application; bowl 0, group 0.
core::service::Zone makeZone(const std::string& name, Seconds apply, Span develop);

/// A head with one coat: a bowl without mixing, one rinse group that takes `rinse`, one pair of hands and one
/// basin. No time is set: give it `notBefore` or `readyBy`.
core::service::Service makeService(std::vector<core::service::Zone> zones, Seconds rinse);

/// The question that asks for a plan of `service` and nothing else.
core::stagger::Question ask(core::service::Service service);

}  // namespace oracle
