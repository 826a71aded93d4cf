#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace app::storage {

/// How values stand in the file, a word each. A word is never given another meaning.
template <typename Value, std::size_t count>
using Words = std::array<std::pair<Value, std::string_view>, count>;

/// The word of a value that has one.
template <typename Value, std::size_t count>
std::string wordOf(const Words<Value, count>& words, Value value)
{
    const auto found = std::ranges::find(words, value, &std::pair<Value, std::string_view>::first);
    return std::string{found->second};
}

/// Nothing for a word that nobody wrote.
template <typename Value, std::size_t count>
std::optional<Value> valueOf(const Words<Value, count>& words, const std::string& text)
{
    const auto found = std::ranges::find(words, text, &std::pair<Value, std::string_view>::second);
    return found == words.end() ? std::nullopt : std::optional{found->first};
}

}  // namespace app::storage
