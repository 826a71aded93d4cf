#include "app/sound/message.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstddef>
#include <vector>

namespace app::sound {
namespace {

using core::alarm::Kind;
using core::alarm::Subject;

// Each in the order of its enumeration.
constexpr std::array<std::string_view, 4> kinds{"get-ready", "due", "limit-near", "limit-passed"};
constexpr std::array<std::string_view, 3> subjects{"task", "look", "water"};
constexpr std::array<std::string_view, 4> healths{"starting", "working", "no-device", "stalled"};
constexpr std::array<std::string_view, 2> answers{"no", "yes"};

template <std::size_t Size>
std::string nameOf(const std::array<std::string_view, Size>& names, std::size_t value)
{
    return std::string{names.at(value)};
}

template <typename Enumeration, std::size_t Size>
std::optional<Enumeration> named(const std::array<std::string_view, Size>& names, std::string_view name)
{
    const auto found = std::ranges::find(names, name);
    if (found == names.end())
        return std::nullopt;
    return static_cast<Enumeration>(found - names.begin());
}

template <typename Number>
std::optional<Number> numberOf(std::string_view text)
{
    Number value{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size())
        return std::nullopt;
    return value;
}

std::vector<std::string_view> wordsOf(std::string_view line)
{
    std::vector<std::string_view> words;
    while (!line.empty()) {
        const std::size_t end = std::min(line.find(' '), line.size());
        words.push_back(line.substr(0, end));
        line.remove_prefix(std::min(end + 1, line.size()));
    }
    return words;
}

std::optional<Order> playOf(const std::vector<std::string_view>& words)
{
    const auto ticket = numberOf<std::uint64_t>(words[1]);
    const auto kind = named<Kind>(kinds, words[2]);
    const auto subject = named<Subject>(subjects, words[3]);
    const auto voice = numberOf<int>(words[4]);
    const auto insistence = numberOf<int>(words[5]);
    if (!ticket || !kind || !subject || !voice || !insistence)
        return std::nullopt;
    if (*voice < 0 || *voice >= core::alarm::voices || *insistence < 0
        || *insistence > core::alarm::mostInsistence)
        return std::nullopt;
    return Play{*ticket, {*kind, *subject, *voice}, *insistence};
}

std::string lineOfPlay(const Play& play)
{
    return "play " + std::to_string(play.ticket) + ' '
        + nameOf(kinds, static_cast<std::size_t>(play.signal.kind)) + ' '
        + nameOf(subjects, static_cast<std::size_t>(play.signal.subject)) + ' '
        + std::to_string(play.signal.voice) + ' ' + std::to_string(play.insistence);
}

/// Not by std::to_string, which writes the decimal comma of the user's country.
std::string lineOfVolume(Volume volume)
{
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), volume.of).ptr;
    return "volume " + std::string{digits.data(), end};
}

}  // namespace

std::string lineOf(const Order& order)
{
    if (const auto* play = std::get_if<Play>(&order))
        return lineOfPlay(*play);
    if (const auto* volume = std::get_if<Volume>(&order))
        return lineOfVolume(*volume);
    if (const auto* ready = std::get_if<Ready>(&order))
        return "ready " + nameOf(answers, ready->kept ? 1 : 0);
    return "silence";
}

std::string lineOf(const Report& report)
{
    if (const auto* heard = std::get_if<Heard>(&report))
        return "heard " + std::to_string(heard->ticket);
    return "health " + nameOf(healths, static_cast<std::size_t>(std::get<Health>(report)));
}

std::optional<Order> orderOf(std::string_view line)
{
    const auto words = wordsOf(line);
    if (words.size() == 6 && words[0] == "play")
        return playOf(words);
    if (words.size() == 1 && words[0] == "silence")
        return Silence{};
    if (words.size() == 2 && words[0] == "volume") {
        if (const auto of = numberOf<float>(words[1]))
            return Volume{*of};
    }
    if (words.size() == 2 && words[0] == "ready") {
        if (const auto kept = named<int>(answers, words[1]))
            return Ready{*kept == 1};
    }
    return std::nullopt;
}

std::optional<Report> reportOf(std::string_view line)
{
    const auto words = wordsOf(line);
    if (words.size() != 2)
        return std::nullopt;
    if (words[0] == "health") {
        if (const auto health = named<Health>(healths, words[1]))
            return *health;
    }
    if (words[0] == "heard") {
        if (const auto ticket = numberOf<std::uint64_t>(words[1]))
            return Heard{*ticket};
    }
    return std::nullopt;
}

}  // namespace app::sound
