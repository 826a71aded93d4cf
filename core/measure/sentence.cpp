#include "core/measure/sentence.h"

#include <cctype>

namespace core::measure {
namespace {

std::string startingSmall(std::string text)
{
    if (!text.empty())
        text.front() = static_cast<char>(std::tolower(static_cast<unsigned char>(text.front())));
    return text;
}

std::string ordinalText(std::int64_t number)
{
    const std::int64_t lastTwo = number % 100;
    const bool teen = lastTwo >= 11 && lastTwo <= 13;
    const char* suffix = "th";
    if (!teen && number % 10 == 1)
        suffix = "st";
    if (!teen && number % 10 == 2)
        suffix = "nd";
    if (!teen && number % 10 == 3)
        suffix = "rd";
    return std::to_string(number) + suffix;
}

}  // namespace

Sentence::Sentence() = default;
Sentence::Sentence(std::string text)
    : m_text{std::move(text)}
{
}
Sentence::~Sentence() = default;
Sentence::Sentence(const Sentence& other) = default;
Sentence::Sentence(Sentence&& other) noexcept = default;
Sentence& Sentence::operator=(const Sentence& other) = default;
Sentence& Sentence::operator=(Sentence&& other) noexcept = default;

Sentence::operator std::string() const
{
    return text();
}

Sentence Sentence::joined(const std::vector<Sentence>& sentences, const char* between)
{
    Sentence all = worded("%1", Sentence{});
    all.m_parts.front().words = sentences;
    all.m_parts.front().between = between;
    return all;
}

std::string Sentence::text() const
{
    if (m_pattern == nullptr)
        return m_text;
    std::string text;
    for (const char* letter = m_pattern; *letter != '\0'; ++letter) {
        const char next = *letter == '%' ? letter[1] : '\0';
        const auto place = static_cast<std::size_t>(next - '1');
        if (next < '1' || next > '9' || place >= m_parts.size()) {
            text += *letter;
            continue;
        }
        text += m_parts[place].text();
        ++letter;
    }
    return text;
}

std::ostream& operator<<(std::ostream& out, const Sentence& sentence)
{
    return out << sentence.text();
}

std::string SentencePart::text() const
{
    switch (kind) {
    case Kind::Words:
    case Kind::Small: break;
    case Kind::Length: return lengthText(Seconds{value});
    case Kind::Clock: return clockText(LocalTime{Seconds{value}});
    case Kind::Number: return std::to_string(value);
    case Kind::Ordinal: return ordinalText(value);
    }
    std::string text;
    for (std::size_t place = 0; place < words.size(); ++place)
        text += (place == 0 ? "" : between) + words[place].text();
    return kind == Kind::Small ? startingSmall(std::move(text)) : text;
}

SentencePart ordinal(std::size_t number)
{
    SentencePart part{number};
    part.kind = SentencePart::Kind::Ordinal;
    return part;
}

SentencePart small(Sentence sentence)
{
    SentencePart part{std::move(sentence)};
    part.kind = SentencePart::Kind::Small;
    return part;
}

}  // namespace core::measure
