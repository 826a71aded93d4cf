#pragma once

#include "core/measure/time.h"

#include <QString>

#include <optional>

namespace app::desktop {

/// A length as it is typed: "12", "12.5" or "12,5" minutes, or "12:20", minutes
/// and seconds. Rounds to whole seconds. Nothing where it is none of these.
std::optional<core::measure::Seconds> lengthOf(const QString& entry);

}  // namespace app::desktop
