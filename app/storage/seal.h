#pragma once

#include <cstdint>
#include <string>

namespace app::storage {

/// A sum over `text`, begun with the seal before it, or 0: FNV-1a, 64 bits. SQLite's own check sees damaged
/// pages but not a changed value. Guards against accidents, not against forgery.
std::int64_t sealOf(std::int64_t before, const std::string& text);

}  // namespace app::storage
