#include "core/service/json/decimal.h"

#include <algorithm>
#include <string>

namespace core::service::json {
namespace {

constexpr int mostExponent = 1'000'000;  // past every number that fits into a file
constexpr int mostMagnitude = 12;        // digits before the point

/// sign * digits * 10^exponent, the digits without zeros at either end.
struct Decimal {
    bool negative = false;
    std::string digits;
    int exponent = 0;
};

int readExponent(std::string_view text)
{
    const bool negative = !text.empty() && text[0] == '-';
    int exponent = 0;
    for (const char c : text) {
        if (c >= '0' && c <= '9')
            exponent = std::min(exponent * 10 + (c - '0'), mostExponent);
    }
    return negative ? -exponent : exponent;
}

Decimal readDecimal(std::string_view number)
{
    Decimal decimal;
    const std::size_t mark = std::min(number.find_first_of("eE"), number.size());
    if (mark < number.size())
        decimal.exponent = readExponent(number.substr(mark + 1));
    bool pastPoint = false;
    for (const char c : number.substr(0, mark)) {
        decimal.negative |= c == '-';
        pastPoint |= c == '.';
        if (c < '0' || c > '9')
            continue;
        decimal.digits += c;
        decimal.exponent -= pastPoint ? 1 : 0;
    }
    while (!decimal.digits.empty() && decimal.digits.back() == '0') {
        decimal.digits.pop_back();
        ++decimal.exponent;
    }
    decimal.digits.erase(0, std::min(decimal.digits.find_first_not_of('0'), decimal.digits.size()));
    return decimal;
}

}  // namespace

Scaled scaled(std::string_view number, std::int64_t factor)
{
    const Decimal decimal = readDecimal(number);
    if (decimal.digits.empty())
        return {};
    if (static_cast<int>(decimal.digits.size()) + decimal.exponent > mostMagnitude)
        return {Exactness::TooLarge, 0};
    // The last digit is not 0, so that at most two places can be taken up by a factor of at most 100.
    if (decimal.exponent < -2)
        return {Exactness::NotWhole, 0};
    std::int64_t value = 0;
    for (const char c : decimal.digits)
        value = value * 10 + (c - '0');
    value *= factor;
    for (int place = 0; place < decimal.exponent; ++place)
        value *= 10;
    for (int place = decimal.exponent; place < 0; ++place) {
        if (value % 10 != 0)
            return {Exactness::NotWhole, 0};
        value /= 10;
    }
    return {Exactness::Exact, decimal.negative ? -value : value};
}

}  // namespace core::service::json
