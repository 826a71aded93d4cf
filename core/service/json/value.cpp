#include "core/service/json/value.h"

#include "core/service/json/utf8.h"

#include <algorithm>

namespace core::service::json {
namespace {

constexpr std::size_t mostQuoted = 60;

Value ofKind(Kind kind)
{
    Value value;
    value.kind = kind;
    return value;
}

}  // namespace

const Value* Value::find(std::string_view key) const
{
    const auto found = std::ranges::find(keys, key);
    return found == keys.end() ? nullptr : &items[static_cast<std::size_t>(found - keys.begin())];
}

void Value::add(std::string key, Value value)
{
    keys.push_back(std::move(key));
    items.push_back(std::move(value));
}

void Value::add(Value value)
{
    items.push_back(std::move(value));
}

Value object()
{
    return ofKind(Kind::Object);
}

Value list()
{
    return ofKind(Kind::List);
}

Value text(std::string words)
{
    Value value = ofKind(Kind::Text);
    value.text = std::move(words);
    return value;
}

Value number(std::string digits)
{
    Value value = ofKind(Kind::Number);
    value.text = std::move(digits);
    return value;
}

Value boolean(bool truth)
{
    Value value = ofKind(Kind::Boolean);
    value.boolean = truth;
    return value;
}

std::string quoted(std::string_view words)
{
    return '"' + clipped(words, mostQuoted) + '"';
}

std::string described(const Value& value)
{
    switch (value.kind) {
    case Kind::Null: return "null";
    case Kind::Boolean: return value.boolean ? "true" : "false";
    case Kind::Number: return clipped(value.text, mostQuoted);
    case Kind::Text: return json::quoted(value.text);
    case Kind::List: return "a list";
    case Kind::Object: return "an object";
    }
    return {};
}

}  // namespace core::service::json
