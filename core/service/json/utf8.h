#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace core::service::json {

/// Where the first byte stands that is not part of well-formed UTF-8 (RFC 3629:
/// no overlong forms, no surrogates, nothing past U+10FFFF), or nothing.
std::optional<std::size_t> firstInvalidUtf8(std::string_view text);

/// Characters, for text that is UTF-8.
std::size_t characters(std::string_view text);

/// At most `most` characters of `text`, with an ellipsis where something was cut.
/// Control characters are shown as spaces, so that a message stays on its line.
std::string clipped(std::string_view text, std::size_t most);

/// "line 3, column 7" of the byte at `offset`, both counted from 1.
std::string lineAndColumn(std::string_view text, std::size_t offset);

}  // namespace core::service::json
