#include "core/service/minutes.h"

#include "core/service/json/decimal.h"

#include <algorithm>
#include <optional>

namespace core::service {
namespace {

using json::Exactness;
using json::Kind;
using measure::HarmRate;
using measure::Seconds;

constexpr const char* lengthHelp =
    "a length is a number of minutes such as 12 or 2.5, or \"2:20\" for 2 min 20 s";
constexpr const char* tooLong = " is more than 1440 (24 h), the longest that is accepted";

std::string twoDigits(std::int64_t value)
{
    return (value < 10 ? "0" : "") + std::to_string(value);
}

/// Hundredths as a decimal without zeros at its end.
std::string hundredthsText(std::int64_t hundredths)
{
    const std::int64_t size = std::abs(hundredths);
    std::string text = (hundredths < 0 ? "-" : "") + std::to_string(size / 100);
    if (size % 100 != 0)
        text += "." + twoDigits(size % 100);
    if (size % 100 != 0 && text.back() == '0')
        text.pop_back();
    return text;
}

bool isDecimal(Seconds length)
{
    return length.count() % 3 == 0;  // 60 = 4 * 3 * 5, and only the 3 has no finite decimal
}

std::string minutesAndSeconds(Seconds length)
{
    const std::int64_t size = std::abs(length.count());
    return (length.count() < 0 ? "-" : "") + std::to_string(size / 60) + ":" + twoDigits(size % 60);
}

/// "12:20" or "0:05", and nothing else.
std::optional<Seconds> readMinutesAndSeconds(std::string_view text)
{
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    const std::size_t colon = text.find(':');
    if (colon == std::string_view::npos || colon == 0 || colon > 6 || text.size() != colon + 3)
        return {};
    std::int64_t parts[2] = {0, 0};
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (i == colon)
            continue;
        if (!isDigit(text[i]))
            return {};
        auto& part = parts[i < colon ? 0 : 1];
        part = part * 10 + (text[i] - '0');
    }
    if (parts[1] > 59)
        return {};
    return Seconds{parts[0] * 60 + parts[1]};
}

}  // namespace

std::string minutesText(Seconds length)
{
    return isDecimal(length) ? hundredthsText(length.count() * 5 / 3) : minutesAndSeconds(length);
}

json::Value minutesValue(Seconds length)
{
    return isDecimal(length) ? json::number(minutesText(length)) : json::text(minutesText(length));
}

json::Value harmValue(HarmRate harm)
{
    return json::number(hundredthsText(harm.hundredths));
}

tl::expected<Seconds, std::string> readMinutes(const json::Value& value)
{
    if (value.kind == Kind::Text) {
        if (const auto length = readMinutesAndSeconds(value.text))
            return *length;
    }
    if (value.kind != Kind::Number)
        return tl::make_unexpected(json::described(value) + " is not a length; " + lengthHelp);
    const json::Scaled seconds = json::scaled(value.text, 60);
    if (seconds.exactness == Exactness::TooLarge)
        return tl::make_unexpected(json::described(value) + tooLong);
    if (seconds.exactness == Exactness::NotWhole)
        return tl::make_unexpected(json::described(value)
                                   + " min is not a whole number of seconds; write it as minutes and "
                                     "seconds, such as \"2:20\" for 2 min 20 s");
    return Seconds{seconds.value};
}

tl::expected<HarmRate, std::string> readHarm(const json::Value& value)
{
    if (value.kind != Kind::Number)
        return tl::make_unexpected(json::described(value)
                                   + " is not a harm; a harm is a number such as 1 or 2.5");
    const json::Scaled hundredths = json::scaled(value.text, 100);
    if (hundredths.exactness == Exactness::TooLarge)
        return tl::make_unexpected(json::described(value) + " is more than 1000, the greatest harm");
    if (hundredths.exactness == Exactness::NotWhole)
        return tl::make_unexpected(json::described(value)
                                   + " has more than two decimal places; a harm has at most two");
    return HarmRate{hundredths.value};
}

}  // namespace core::service
