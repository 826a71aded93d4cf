#pragma once

#include "core/measure/time.h"

#include <concepts>
#include <cstdint>
#include <ostream>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace core::measure {

struct SentencePart;

/// Something said to somebody, in British English, that can be said in other languages too: a pattern with
/// markers
/// ("%1 moves to %2") and what is put in for them (names, lengths, clock times, numbers, other sentences).
/// `text` says it in English; whoever knows the pattern in another language puts the same parts into that. A
/// sentence made of text alone, such as the name of a zone, is said as it is in every language.
class Sentence {
public:
    Sentence();
    /// Said as it is. Implicit: a name is a sentence wherever one is wanted.
    Sentence(std::string text);  // NOLINT(google-explicit-constructor)
    // Where parts are not known yet, not even a destructor can be made.
    ~Sentence();
    Sentence(const Sentence& other);
    Sentence(Sentence&& other) noexcept;
    Sentence& operator=(const Sentence& other);
    Sentence& operator=(Sentence&& other) noexcept;

    /// `pattern` is a literal with the markers %1 to %9. Catalogues of other languages are made of what
    /// stands here, so it has to stand here itself: no name of a constant, no choice between two.
    template <typename... Parts>
    static Sentence worded(const char* pattern, Parts&&... parts);

    /// One after the other, with `between` in between, which is the same in every language: ", ".
    static Sentence joined(const std::vector<Sentence>& sentences, const char* between);

    [[nodiscard]] bool empty() const { return m_pattern == nullptr && m_text.empty(); }

    /// In English.
    [[nodiscard]] std::string text() const;
    operator std::string() const;  // NOLINT(google-explicit-constructor): for those who write English.

    /// Null where it is said as it is: then `text` is all there is.
    [[nodiscard]] const char* pattern() const { return m_pattern; }
    [[nodiscard]] const std::vector<SentencePart>& parts() const { return m_parts; }

    /// The same words say the same.
    friend bool operator==(const Sentence& one, const Sentence& other) { return one.text() == other.text(); }
    template <typename Text>
    requires std::convertible_to<const Text&, std::string_view>
    friend bool operator==(const Sentence& one, const Text& other)
    {
        return one.text() == std::string_view{other};
    }
    friend std::ostream& operator<<(std::ostream& out, const Sentence& sentence);

private:
    const char* m_pattern = nullptr;
    std::string m_text;
    std::vector<SentencePart> m_parts;
};

/// What is put in for one marker.
struct SentencePart {
    enum class Kind {
        Words,    ///< A sentence, or several with `between` in between.
        Small,    ///< One that begins a line of its own elsewhere: with a small letter here, in English.
        Length,   ///< `value` in seconds.
        Clock,    ///< What a wall clock shows: `value` in seconds as of `LocalTime`.
        Number,   ///< `value`.
        Ordinal,  ///< `value`: 2nd.
    };

    SentencePart(
        Sentence sentence)  // NOLINT(google-explicit-constructor): so that parts can be listed as they are.
        : words{std::move(sentence)}
    {
    }
    SentencePart(std::string name)  // NOLINT(google-explicit-constructor)
        : words{Sentence{std::move(name)}}
    {
    }
    SentencePart(Seconds length)  // NOLINT(google-explicit-constructor)
        : kind{Kind::Length}
        , value{length.count()}
    {
    }
    SentencePart(LocalTime clock)  // NOLINT(google-explicit-constructor)
        : kind{Kind::Clock}
        , value{clock.time_since_epoch().count()}
    {
    }
    template <std::integral Whole>
    SentencePart(Whole number)  // NOLINT(google-explicit-constructor)
        : kind{Kind::Number}
        , value{static_cast<std::int64_t>(number)}
    {
    }

    [[nodiscard]] std::string text() const;

    Kind kind = Kind::Words;
    std::int64_t value = 0;
    std::vector<Sentence> words;
    const char* between = "";
};

/// "2nd"
SentencePart ordinal(std::size_t number);

/// `sentence` as a part of another that goes on with a small letter.
SentencePart small(Sentence sentence);

template <typename... Parts>
Sentence Sentence::worded(const char* pattern, Parts&&... parts)
{
    Sentence sentence;
    sentence.m_pattern = pattern;
    sentence.m_parts.reserve(sizeof...(parts));
    (sentence.m_parts.push_back(SentencePart{std::forward<Parts>(parts)}), ...);
    return sentence;
}

}  // namespace core::measure
