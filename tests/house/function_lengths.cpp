#include "tests/house/function_lengths.h"

#include <algorithm>
#include <cctype>
#include <regex>

namespace house {
namespace {

std::string joined(const std::vector<std::string>& lines)
{
    std::string text;
    for (const std::string& line : lines)
        text += line + '\n';
    return text;
}

/// The end of the comment, text or character constant that starts at `at`, or `at` when none does.
std::size_t endOfUnread(const std::string& text, std::size_t at)
{
    const auto after = [&](const std::string& mark, std::size_t from) {
        const std::size_t found = text.find(mark, from);
        return found == std::string::npos ? text.size() : found + mark.size();
    };
    if (text.compare(at, 2, "//") == 0)
        return after("\n", at) - 1;
    if (text.compare(at, 2, "/*") == 0)
        return after("*/", at + 2);
    if (text.compare(at, 2, "R\"") == 0) {
        const std::size_t open = text.find('(', at);
        return after(')' + text.substr(at + 2, open - at - 2) + '"', open);
    }
    const bool digitSeparator = at > 0 && std::isdigit(static_cast<unsigned char>(text[at - 1])) != 0;
    if (text[at] != '"' && (text[at] != '\'' || digitSeparator))
        return at;
    std::size_t end = at + 1;
    while (end < text.size() && text[end] != text[at])
        end += text[end] == '\\' ? 2U : 1U;
    return end + 1;
}

/// The text with comments, text constants and preprocessor lines blanked out; every line keeps its number.
std::string bareCode(const std::string& text)
{
    std::string bare;
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t end = std::min(endOfUnread(text, at), text.size());
        if (end == at)
            bare += text[at++];
        for (; at < end; ++at)
            bare += text[at] == '\n' ? '\n' : '_';
    }
    static const std::regex directive{R"(\n[ \t]*#(\\\n|[^\n])*)"};
    return std::regex_replace(bare, directive, "\n");
}

bool opensFunction(const std::string& head)
{
    static const std::regex named{R"(^\s*((inline|export)\s+)*(namespace|enum|union|extern)\b)"};
    static const std::regex type{R"(^\s*(template\s*<[^;]*>\s*)?(class|struct)\s+\w+[^()]*$)"};
    static const std::regex initialiser{R"(=\s*$)"};
    if (head.find('(') == std::string::npos)
        return false;
    return !std::regex_search(head, named) && !std::regex_search(head, type)
        && !std::regex_search(head, initialiser);
}

bool opensInitialiser(const std::string& code, std::size_t brace)
{
    return brace > 0 && std::isspace(static_cast<unsigned char>(code[brace - 1])) == 0;
}

/// The brace that closes the one at `brace`.
std::size_t closing(const std::string& code, std::size_t brace)
{
    int depth = 0;
    for (std::size_t at = brace; at < code.size(); ++at) {
        depth += code[at] == '{' ? 1 : code[at] == '}' ? -1 : 0;
        if (depth == 0)
            return at;
    }
    return code.size();
}

std::size_t linesBetween(const std::string& code, std::size_t from, std::size_t to)
{
    std::size_t count = 0;
    for (std::size_t at = from; at < to; ++at)
        count += code[at] == '\n' ? 1U : 0U;
    return count;
}

std::string trimmed(const std::string& head)
{
    static const std::regex spaces{R"(\s+)"};
    return std::regex_replace(head, spaces, " ");
}

}  // namespace

std::vector<FunctionLength> functionsIn(const std::vector<std::string>& lines)
{
    const std::string code = bareCode(joined(lines));
    std::vector<FunctionLength> functions;
    std::string head;
    for (std::size_t at = 0; at < code.size(); ++at) {
        const bool opens = code[at] == '{';
        if (opens && opensInitialiser(code, at)) {
            at = closing(code, at);
        } else if (opens && opensFunction(head)) {
            const std::size_t end = closing(code, at);
            functions.push_back(
                {linesBetween(code, 0, at) + 1, linesBetween(code, at, end) + 1, trimmed(head)});
            at = end;
            head.clear();
        } else if (opens || code[at] == '}' || code[at] == ';') {
            head.clear();
        } else {
            head += code[at];
        }
    }
    return functions;
}

}  // namespace house
