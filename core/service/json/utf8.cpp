#include "core/service/json/utf8.h"

#include <algorithm>
#include <array>

namespace core::service::json {
namespace {

using Byte = unsigned char;

bool isContinuation(Byte byte)
{
    return (byte & 0xC0U) == 0x80U;
}

struct Lead {
    std::size_t length;  ///< 0: no character starts with this byte.
    Byte secondLeast;
    Byte secondMost;
};

/// RFC 3629, section 4: the bytes that may follow each first byte.
Lead leadOf(Byte byte)
{
    if (byte < 0x80)
        return {1, 0, 0};
    if (byte >= 0xC2 && byte <= 0xDF)
        return {2, 0x80, 0xBF};
    if (byte == 0xE0)
        return {3, 0xA0, 0xBF};
    if (byte == 0xED)
        return {3, 0x80, 0x9F};
    if (byte >= 0xE1 && byte <= 0xEF)
        return {3, 0x80, 0xBF};
    if (byte == 0xF0)
        return {4, 0x90, 0xBF};
    if (byte >= 0xF1 && byte <= 0xF3)
        return {4, 0x80, 0xBF};
    if (byte == 0xF4)
        return {4, 0x80, 0x8F};
    return {0, 0, 0};
}

/// The length of the character at the start of `text`, or 0 where it is not one.
std::size_t characterLength(std::string_view text)
{
    const Lead lead = leadOf(static_cast<Byte>(text[0]));
    if (lead.length < 2)
        return lead.length;
    if (text.size() < lead.length)
        return 0;
    const Byte second = static_cast<Byte>(text[1]);
    if (second < lead.secondLeast || second > lead.secondMost)
        return 0;
    const auto rest = text.substr(2, lead.length - 2);
    return std::ranges::all_of(rest, [](char c) { return isContinuation(static_cast<Byte>(c)); })
        ? lead.length
        : 0;
}

}  // namespace

std::optional<std::size_t> firstInvalidUtf8(std::string_view text)
{
    std::size_t offset = 0;
    while (offset < text.size()) {
        const std::size_t length = characterLength(text.substr(offset));
        if (length == 0)
            return offset;
        offset += length;
    }
    return {};
}

std::size_t characters(std::string_view text)
{
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return !isContinuation(static_cast<Byte>(c)); }));
}

std::string clipped(std::string_view text, std::size_t most)
{
    std::string result;
    std::size_t count = 0;
    for (const char c : text) {
        const Byte byte = static_cast<Byte>(c);
        if (!isContinuation(byte) && ++count > most)
            return result + "\u2026";
        result += byte < 0x20 || byte == 0x7F ? ' ' : c;
    }
    return result;
}

std::string lineAndColumn(std::string_view text, std::size_t offset)
{
    const std::string_view before = text.substr(0, std::min(offset, text.size()));
    const auto line = std::ranges::count(before, '\n') + 1;
    const std::size_t lineStart = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
    return "line " + std::to_string(line) + ", column "
        + std::to_string(characters(before.substr(lineStart)) + 1);
}

}  // namespace core::service::json
