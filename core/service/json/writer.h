#pragma once

#include "core/service/json/value.h"

#include <iosfwd>

namespace core::service::json {

/// Writes `value` for people: what fits on a line stays on it, the rest is
/// indented by two. Ends with a line feed. The same value gives the same text.
void writeJson(std::ostream& out, const Value& value);

}  // namespace core::service::json
