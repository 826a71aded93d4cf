#include "app/command/words_of_line.h"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cmath>
#include <sstream>

namespace app::command {

using core::measure::Seconds;

namespace {

/// Ten hours: nothing in a service is asked for later than that.
constexpr double mostMinutes = 600;

}  // namespace

std::vector<std::string> wordsOf(const std::string& line)
{
    std::istringstream stream{line};
    std::vector<std::string> words;
    for (std::string word; stream >> word;)
        words.push_back(word);
    return words;
}

std::string nameFrom(const std::vector<std::string>& words, std::size_t first, const std::string& between)
{
    std::string name;
    for (std::size_t word = first; word < words.size(); ++word)
        name += (name.empty() ? std::string{} : between) + words[word];
    return name;
}

std::string lowered(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return std::tolower(c); });
    return text;
}

std::optional<std::int64_t> numberIn(std::string_view text)
{
    std::int64_t number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool whole = !text.empty() && error == std::errc{} && end == text.data() + text.size();
    return whole ? std::optional{number} : std::nullopt;
}

tl::expected<Seconds, std::string> minutesOf(const std::vector<std::string>& words,
                                             const std::string& example)
{
    double minutes = 0;
    const std::string text = words.size() > 1 ? words[1] : std::string{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), minutes);
    const bool whole = error == std::errc{} && end == text.data() + text.size() && words.size() == 2;
    if (!whole || !(minutes > 0 && minutes <= mostMinutes))
        return tl::unexpected{"How many minutes? Type " + example + "."};
    return Seconds{std::llround(minutes * 60)};
}

}  // namespace app::command
