#include "core/service/json/reader.h"

#include "core/service/json/utf8.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdint>
#include <optional>

namespace core::service::json {
namespace {

/// Builds the tree from what the parser reports.
class Builder final : public nlohmann::json_sax<nlohmann::json> {
public:
    explicit Builder(std::string_view text)
        : m_text{text}
    {
    }

    bool null() override { return leaf({}); }
    bool boolean(bool value) override { return leaf(json::boolean(value)); }
    bool number_integer(std::int64_t value) override { return leaf(number(std::to_string(value))); }
    bool number_unsigned(std::uint64_t value) override { return leaf(number(std::to_string(value))); }
    bool number_float(double /*value*/, const std::string& digits) override;
    bool string(std::string& value) override { return leaf(json::text(std::move(value))); }
    bool binary(binary_t& /*value*/) override { return false; }
    bool start_object(std::size_t /*size*/) override { return open(object()); }
    bool start_array(std::size_t /*size*/) override { return open(list()); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool key(std::string& name) override;
    bool parse_error(std::size_t position, const std::string& token,
                     const nlohmann::detail::exception& error) override;

    tl::expected<Document, Problem> result();

private:
    bool leaf(Value value) { return place(std::move(value)) != nullptr; }
    bool open(Value value);
    bool close();
    Value* place(Value value);
    [[nodiscard]] std::string path() const;

    std::string_view m_text;
    Document m_document;
    std::vector<Value*> m_open;  // an open value's own list grows only while it is the last here
    std::size_t m_count = 0;
    std::optional<Problem> m_problem;
};

Value* Builder::place(Value value)
{
    if (++m_count > mostValues) {
        m_problem = Problem{path(),
                            "there are more than " + std::to_string(mostValues)
                                + " values up to here; this is no service file"};
        return nullptr;
    }
    if (m_open.empty())
        return &(m_document.root = std::move(value));
    auto& items = m_open.back()->items;
    items.push_back(std::move(value));
    return &items.back();
}

bool Builder::open(Value value)
{
    Value* placed = place(std::move(value));
    if (placed == nullptr)
        return false;
    m_open.push_back(placed);
    return true;
}

bool Builder::close()
{
    m_open.pop_back();
    return true;
}

bool Builder::number_float(double /*value*/, const std::string& digits)
{
    // The parser hands the digits over with the decimal mark of the locale the program runs in.
    std::string asWritten = digits;
    std::ranges::replace(asWritten, ',', '.');
    return leaf(number(asWritten));
}

bool Builder::key(std::string& name)
{
    auto& keys = m_open.back()->keys;
    const std::string at = path();
    if (keys.size() == mostKeys) {
        m_problem = Problem{
            at, "one object holds more than " + std::to_string(mostKeys) + " keys; this is no service file"};
        return false;
    }
    if (std::ranges::find(keys, name) != keys.end())
        m_document.repeatedKeys.push_back(
            {inside(at, clipped(name, 60)), std::string{"this key is there twice; keep one of them"}});
    keys.push_back(std::move(name));
    return true;
}

std::string Builder::path() const
{
    std::string path;
    for (std::size_t level = 0; level + 1 < m_open.size(); ++level) {
        const Value& parent = *m_open[level];
        const std::size_t child = parent.items.size() - 1;
        path = parent.kind == Kind::List ? nth(path, child) : inside(path, clipped(parent.keys[child], 60));
    }
    return path;
}

/// What the parser says after its own prefix: "unexpected ']'; expected ...".
std::string plainWords(std::string_view what)
{
    const std::size_t dash = what.find(" - ");
    if (dash != std::string_view::npos)
        what.remove_prefix(dash + 3);
    return clipped(what, 160);
}

bool Builder::parse_error(std::size_t position, const std::string& token,
                          const nlohmann::detail::exception& error)
{
    constexpr int numberOverflow = 406;
    const std::string where = lineAndColumn(m_text, position == 0 ? 0 : position - 1);
    if (error.id == numberOverflow)
        m_problem = Problem{where, clipped(token, 60) + " is too large a number"};
    else
        m_problem = Problem{where, "this is not JSON: " + plainWords(error.what())};
    return false;
}

tl::expected<Document, Problem> Builder::result()
{
    if (m_problem)
        return tl::make_unexpected(*m_problem);
    return std::move(m_document);
}

/// Where the text first goes deeper than allowed.
std::optional<std::size_t> firstTooDeep(std::string_view text)
{
    std::size_t depth = 0;
    bool inText = false;
    for (std::size_t offset = 0; offset < text.size(); ++offset) {
        const char c = text[offset];
        if (c == '"')
            inText = !inText;
        else if (inText && c == '\\')
            ++offset;
        else if (!inText && (c == '[' || c == '{') && ++depth > mostDepth)
            return offset;
        else if (!inText && (c == ']' || c == '}') && depth > 0)
            --depth;
    }
    return {};
}

}  // namespace

tl::expected<Document, Problem> readJson(std::string_view text)
{
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
        return tl::make_unexpected(
            Problem{"", std::string{"the file is empty; a service file starts with { \"basinbell\": 1"}});
    if (const auto invalid = firstInvalidUtf8(text))
        return tl::make_unexpected(
            Problem{lineAndColumn(text.substr(0, *invalid), *invalid),
                    std::string{"this is not UTF-8 text; save the file in the encoding UTF-8"}});
    if (const auto deep = firstTooDeep(text))
        return tl::make_unexpected(Problem{lineAndColumn(text, *deep),
                                           "brackets are nested more than " + std::to_string(mostDepth)
                                               + " deep; this is no service file"});
    Builder builder{text};
    nlohmann::json::sax_parse(text, &builder);
    return builder.result();
}

}  // namespace core::service::json
