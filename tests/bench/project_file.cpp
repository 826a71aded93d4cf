#include "tests/bench/project_file.h"

#include <algorithm>
#include <charconv>
#include <sstream>
#include <vector>

namespace bench {
namespace {

using core::temporal::Project;
using core::temporal::startOf;
using core::temporal::Time;

/// The numbers of one line after another; remembers the first thing that is wrong.
class Lines {
public:
    explicit Lines(std::istream& in)
        : m_in{in}
    {
    }

    /// Goes on to the next line that is not blank.
    void next(const char* what)
    {
        std::string text;
        do {
            if (!std::getline(m_in, text)) {
                fail(std::string{"the file ends before "} + what);
                text = "0";
                break;
            }
            ++m_line;
        } while (text.find_first_not_of(" \t\r") == std::string::npos);
        m_words.clear();
        m_words.str(text);
    }

    int number(int least, int most, const char* what)
    {
        std::string word;
        m_words >> word;
        if (word.size() > 2 && word.front() == '[' && word.back() == ']')
            word = word.substr(1, word.size() - 2);
        int value = 0;
        const char* end = word.data() + word.size();
        const auto [stop, code] = std::from_chars(word.data(), end, value);
        if (code != std::errc{} || stop != end || value < least || value > most) {
            fail(std::string{what} + ": a number from " + std::to_string(least) + " to "
                 + std::to_string(most) + " expected, not '" + word + "'");
            return least;
        }
        return value;
    }

    [[nodiscard]] bool isFine() const { return m_error.empty(); }
    [[nodiscard]] const std::string& error() const { return m_error; }

private:
    void fail(const std::string& what)
    {
        if (m_error.empty())
            m_error = "line " + std::to_string(m_line) + ": " + what;
    }

    std::istream& m_in;
    std::istringstream m_words;
    int m_line = 0;
    std::string m_error;
};

constexpr int longest = 1'000'000;

void readLags(Lines& lines, int activities, Project& project)
{
    for (int activity = 0; activity < activities && lines.isFine(); ++activity) {
        lines.next("the lags of every activity");
        lines.number(activity, activity, "activity");
        lines.number(1, 1, "modes");
        std::vector<int> others(
            static_cast<std::size_t>(lines.number(0, activities, "activities that follow")));
        for (int& other : others)
            other = lines.number(0, activities - 1, "activity that follows");
        for (const int other : others) {
            const Time least = lines.number(-longest, longest, "lag");
            project.lags.push_back({startOf(static_cast<std::size_t>(other)),
                                    startOf(static_cast<std::size_t>(activity)), -least});
        }
    }
}

void readActivities(Lines& lines, int resources, Project& project)
{
    for (std::size_t activity = 0; activity < project.activities.size() && lines.isFine(); ++activity) {
        lines.next("the demands of every activity");
        lines.number(static_cast<int>(activity), static_cast<int>(activity), "activity");
        lines.number(1, 1, "mode");
        project.activities[activity].duration = lines.number(0, longest, "length");
        for (int resource = 0; resource < resources; ++resource)
            project.activities[activity].demands.push_back(lines.number(0, longest, "demand"));
    }
}

}  // namespace

ReadProject readProject(std::istream& in)
{
    Lines lines{in};
    ReadProject read;
    lines.next("the first line");
    const int activities = lines.number(1, 10'000, "number of activities") + 2;
    const int resources = lines.number(0, 1'000, "number of resources");
    read.project.activities.resize(static_cast<std::size_t>(activities));
    readLags(lines, activities, read.project);
    readActivities(lines, resources, read.project);
    if (resources > 0)
        lines.next("the capacities");
    for (int resource = 0; resource < resources && lines.isFine(); ++resource)
        read.project.capacities.push_back(lines.number(0, longest, "capacity"));
    read.error = lines.error();
    return read;
}

std::map<std::string, std::optional<Time>> readTable(std::istream& in)
{
    std::map<std::string, std::optional<Time>> table;
    for (std::string line; std::getline(in, line);) {
        while (!line.empty() && (line.back() == '\r' || line.back() == ' '))
            line.pop_back();
        const std::size_t comma = line.find(',');
        if (comma == std::string::npos)
            continue;
        const std::string value = line.substr(comma + 1);
        if (value == "unsat")
            table[line.substr(0, comma)] = std::nullopt;
        else if (!value.empty() && std::ranges::all_of(value, [](char c) { return c >= '0' && c <= '9'; }))
            table[line.substr(0, comma)] = std::stoi(value);
    }
    return table;
}

}  // namespace bench
