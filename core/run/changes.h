#pragma once

#include "core/run/run.h"

namespace core::run {

/// A moment as the clock on the wall of a service shows it, in minutes.
measure::LocalTime clockTime(const service::Service& service, Instant moment,
                             const measure::TimeZones& zones);

/// What `after` does differently from `before` for the tasks that are still open, in order
/// of time. Looks are left out: they follow their zone's clock.
std::vector<Change> changesBetween(const stagger::Plan& before, const stagger::Plan& after,
                                   const stagger::Progress& progress);

}  // namespace core::run
