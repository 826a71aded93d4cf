#pragma once

#include "core/measure/time.h"

#include <tl/expected.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace app::command {

std::vector<std::string> wordsOf(const std::string& line);

/// The words from `first` on, as one name, or as a list.
std::string nameFrom(const std::vector<std::string>& words, std::size_t first,
                     const std::string& between = " ");

std::string lowered(std::string text);

/// The whole number that `text` is, and nothing else.
std::optional<std::int64_t> numberIn(std::string_view text);

/// The minutes that the second of two words says; `example` is what could have been typed.
tl::expected<core::measure::Seconds, std::string> minutesOf(const std::vector<std::string>& words,
                                                            const std::string& example);

}  // namespace app::command
