#pragma once

#include "core/measure/harm.h"
#include "core/measure/time.h"
#include "core/service/findings.h"
#include "core/service/json/value.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core::service::reading {

/// One object of the file, key by key. What is wrong with a key is added to the
/// findings at its place, and a stand-in is handed back so that reading goes on.
/// A key that nobody asked for by the time of `finish` is unknown.
class Fields {
public:
    /// Adds a problem where `value` is not an object; `meaning` says what it stands for: "a zone".
    Fields(const json::Value& value, std::string place, std::string_view meaning, Findings& findings);

    /// The value under `key`, or nothing. From now on `key` is known.
    const json::Value* optional(std::string_view key);

    /// The same; its absence is a problem, with `help` on how to mend it.
    const json::Value* required(std::string_view key, std::string_view help);

    std::optional<measure::Seconds> length(std::string_view key);
    measure::Seconds length(std::string_view key, measure::Seconds otherwise);
    measure::Seconds requiredLength(std::string_view key, std::string_view help);
    measure::HarmRate harm(std::string_view key, measure::HarmRate otherwise);
    std::string text(std::string_view key, std::string_view otherwise);
    std::string requiredText(std::string_view key, std::string_view help);
    bool truth(std::string_view key, bool otherwise);
    std::size_t count(std::string_view key, std::size_t otherwise);

    /// The place of the word under `key` in `words`. A word that is not there, or a
    /// value that is no text, is a problem.
    std::optional<std::size_t> choice(std::string_view key, const std::vector<std::string>& words);

    /// Hands each item of the list under `key` with its place to `read`. False where there is no such key.
    bool each(std::string_view key, const std::function<void(const json::Value&, const std::string&)>& read);

    /// Adds a problem for every key that nobody asked for.
    void finish();

    [[nodiscard]] std::string placeOf(std::string_view key) const { return inside(m_place, key); }
    [[nodiscard]] const std::string& place() const { return m_place; }
    [[nodiscard]] Findings& findings() { return m_findings; }

private:
    const json::Value& m_value;
    std::string m_place;
    Findings& m_findings;
    std::vector<std::string> m_known;
};

/// The place of `word` among `words`, or a problem at `place` with the nearest of them.
std::optional<std::size_t> choose(const json::Value& word, const std::vector<std::string>& words,
                                  const std::string& place, Findings& findings);

/// The length that `value` stands for, or a problem at `place`.
std::optional<measure::Seconds> readLength(const json::Value& value, const std::string& place,
                                           Findings& findings);

}  // namespace core::service::reading
