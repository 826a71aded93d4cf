#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace core::service::json {

enum class Kind { Null, Boolean, Number, Text, List, Object };

/// A piece of JSON as it was written. Numbers keep their digits: 0.1 minutes
/// are 6 seconds, and no binary fraction comes in between.
struct Value {
    Kind kind = Kind::Null;
    bool boolean = false;
    std::string text;               ///< The text, or the digits of a number.
    std::vector<Value> items;       ///< What a list or an object holds.
    std::vector<std::string> keys;  ///< Of an object: `keys[i]` names `items[i]`.

    /// The value under `key`, or nothing.
    [[nodiscard]] const Value* find(std::string_view key) const;

    /// Adds a member to an object, or an item to a list.
    void add(std::string key, Value value);
    void add(Value value);
};

Value object();
Value list();
Value text(std::string words);
Value number(std::string digits);
Value boolean(bool value);

/// A value in a few words for a message: `12`, `"Ends"`, `a list`. Long texts are cut.
std::string described(const Value& value);

/// `words` between quotation marks, cut after 60 characters.
std::string quoted(std::string_view words);

}  // namespace core::service::json
