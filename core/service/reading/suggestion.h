#pragma once

#include <span>
#include <string>
#include <string_view>

namespace core::service::reading {

/// The candidate that `word` was probably meant to be, or "" where none is near:
/// at most a third of its letters wrong, swapped, missing or too many.
std::string nearest(std::string_view word, std::span<const std::string> candidates);

/// `did you mean "least"?` or, with nothing near, `known here: least, target, most`.
std::string suggestion(std::string_view word, std::span<const std::string> candidates);

}  // namespace core::service::reading
