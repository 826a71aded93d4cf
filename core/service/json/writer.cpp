#include "core/service/json/writer.h"

#include "core/service/json/utf8.h"

#include <array>
#include <ostream>

namespace core::service::json {
namespace {

constexpr std::size_t lineWidth = 100;

void appendControl(std::string& out, unsigned char byte)
{
    static constexpr std::array<char, 17> digits{"0123456789abcdef"};
    out += "\\u00";
    out += digits[byte >> 4U];
    out += digits[byte & 0xFU];
}

std::string escaped(std::string_view words)
{
    std::string out = "\"";
    for (const char c : words) {
        if (c == '"' || c == '\\')
            (out += '\\') += c;
        else if (c == '\n')
            out += "\\n";
        else if (static_cast<unsigned char>(c) < 0x20)
            appendControl(out, static_cast<unsigned char>(c));
        else
            out += c;
    }
    return out + '"';
}

std::string onOneLine(const Value& value)
{
    if (value.kind == Kind::Text)
        return escaped(value.text);
    if (value.kind != Kind::Object && value.kind != Kind::List)
        return value.kind == Kind::Number ? value.text : described(value);
    const bool isObject = value.kind == Kind::Object;
    std::string inner;
    for (std::size_t i = 0; i < value.items.size(); ++i) {
        inner += i == 0 ? "" : ", ";
        if (isObject)
            inner += escaped(value.keys[i]) + ": ";
        inner += onOneLine(value.items[i]);
    }
    if (!isObject)
        return "[" + inner + "]";
    return inner.empty() ? "{}" : "{ " + inner + " }";
}

void write(std::ostream& out, const Value& value, std::size_t indent, std::size_t column)
{
    const std::string line = onOneLine(value);
    if (value.items.empty() || (indent > 0 && column + line.size() <= lineWidth)) {
        out << line;
        return;
    }
    const bool isObject = value.kind == Kind::Object;
    const std::string margin(indent + 2, ' ');
    out << (isObject ? "{" : "[");
    for (std::size_t i = 0; i < value.items.size(); ++i) {
        const std::string label = isObject ? escaped(value.keys[i]) + ": " : "";
        out << (i == 0 ? "\n" : ",\n") << margin << label;
        write(out, value.items[i], indent + 2, margin.size() + label.size());
    }
    out << '\n' << std::string(indent, ' ') << (isObject ? "}" : "]");
}

}  // namespace

void writeJson(std::ostream& out, const Value& value)
{
    write(out, value, 0, 0);
    out << '\n';
}

}  // namespace core::service::json
