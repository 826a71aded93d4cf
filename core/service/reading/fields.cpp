#include "core/service/reading/fields.h"

#include "core/service/json/decimal.h"
#include "core/service/json/utf8.h"
#include "core/service/minutes.h"
#include "core/service/reading/suggestion.h"

#include <algorithm>

namespace core::service::reading {

using json::Kind;
using json::Value;
using measure::HarmRate;
using measure::Seconds;

Fields::Fields(const Value& value, std::string place, std::string_view meaning, Findings& findings)
    : m_value{value}
    , m_place{std::move(place)}
    , m_findings{findings}
{
    if (value.kind != Kind::Object)
        m_findings.add(m_place,
                       json::described(value) + " is not " + std::string{meaning}
                           + ", which is an object: { ... }");
}

const Value* Fields::optional(std::string_view key)
{
    if (std::ranges::find(m_known, key) == m_known.end())
        m_known.emplace_back(key);
    return m_value.find(key);
}

const Value* Fields::required(std::string_view key, std::string_view help)
{
    const Value* value = optional(key);
    if (value == nullptr && m_value.kind == Kind::Object)
        m_findings.add(placeOf(key), "is missing; " + std::string{help});
    return value;
}

std::optional<Seconds> Fields::length(std::string_view key)
{
    const Value* value = optional(key);
    if (value == nullptr)
        return {};
    return readLength(*value, placeOf(key), m_findings).value_or(Seconds{0});
}

Seconds Fields::length(std::string_view key, Seconds otherwise)
{
    return length(key).value_or(otherwise);
}

Seconds Fields::requiredLength(std::string_view key, std::string_view help)
{
    const Value* value = required(key, help);
    if (value == nullptr)
        return {};
    return readLength(*value, placeOf(key), m_findings).value_or(Seconds{0});
}

HarmRate Fields::harm(std::string_view key, HarmRate otherwise)
{
    const Value* value = optional(key);
    if (value == nullptr)
        return otherwise;
    const auto harm = readHarm(*value);
    if (!harm)
        m_findings.add(placeOf(key), harm.error());
    return harm.value_or(otherwise);
}

std::string Fields::text(std::string_view key, std::string_view otherwise)
{
    const Value* value = optional(key);
    if (value != nullptr && value->kind != Kind::Text)
        m_findings.add(placeOf(key),
                       json::described(*value) + " is not a text; write it between quotation marks");
    return value != nullptr ? value->text : std::string{otherwise};
}

std::string Fields::requiredText(std::string_view key, std::string_view help)
{
    required(key, help);
    return text(key, "");
}

bool Fields::truth(std::string_view key, bool otherwise)
{
    const Value* value = optional(key);
    if (value == nullptr)
        return otherwise;
    if (value->kind != Kind::Boolean)
        m_findings.add(placeOf(key), json::described(*value) + " is neither true nor false");
    return value->boolean;
}

std::size_t Fields::count(std::string_view key, std::size_t otherwise)
{
    const Value* value = optional(key);
    if (value == nullptr)
        return otherwise;
    const json::Scaled whole = value->kind == Kind::Number ? json::scaled(value->text, 1)
                                                           : json::Scaled{json::Exactness::NotWhole, 0};
    if (whole.exactness == json::Exactness::Exact && whole.value >= 0)
        return static_cast<std::size_t>(whole.value);
    m_findings.add(placeOf(key), json::described(*value) + " is not a count; write a whole number");
    return otherwise;
}

std::optional<std::size_t> Fields::choice(std::string_view key, const std::vector<std::string>& words)
{
    const Value* value = optional(key);
    if (value == nullptr)
        return {};
    return choose(*value, words, placeOf(key), m_findings);
}

bool Fields::each(std::string_view key, const std::function<void(const Value&, const std::string&)>& read)
{
    const Value* value = optional(key);
    if (value == nullptr)
        return false;
    if (value->kind != Kind::List) {
        m_findings.add(placeOf(key), json::described(*value) + " is not a list: [ ... ]");
        return true;
    }
    for (std::size_t i = 0; i < value->items.size(); ++i)
        read(value->items[i], nth(placeOf(key), i));
    return true;
}

void Fields::finish()
{
    for (const std::string& key : m_value.keys) {
        if (std::ranges::find(m_known, key) == m_known.end())
            m_findings.add(placeOf(json::clipped(key, 60)),
                           "there is no such key; " + suggestion(key, m_known));
    }
}

std::optional<std::size_t> choose(const Value& word, const std::vector<std::string>& words,
                                  const std::string& place, Findings& findings)
{
    const auto found = word.kind == Kind::Text ? std::ranges::find(words, word.text) : words.end();
    if (found != words.end())
        return static_cast<std::size_t>(found - words.begin());
    findings.add(place,
                 json::described(word) + " is not known; "
                     + suggestion(word.kind == Kind::Text ? word.text : "", words));
    return {};
}

std::optional<Seconds> readLength(const Value& value, const std::string& place, Findings& findings)
{
    const auto length = readMinutes(value);
    if (!length) {
        findings.add(place, length.error());
        return {};
    }
    return *length;
}

}  // namespace core::service::reading
