#pragma once

#include "core/service/json/value.h"
#include "core/service/problem.h"

#include <tl/expected.hpp>

#include <string_view>
#include <vector>

namespace core::service::json {

inline constexpr std::size_t mostDepth = 32;
inline constexpr std::size_t mostValues = 200'000;
inline constexpr std::size_t mostKeys = 200;  ///< In one object.

struct Document {
    Value root;
    std::vector<Problem> repeatedKeys;  ///< Each at the place of the key. `find` gives the first of them.
};

/// Reads JSON (RFC 8259). What is not JSON, not UTF-8, too deep or too much is one
/// problem with its line and column; nothing is thrown.
tl::expected<Document, Problem> readJson(std::string_view text);

}  // namespace core::service::json
