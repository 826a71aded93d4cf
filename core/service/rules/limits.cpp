#include "core/service/rules/limits.h"

#include "core/service/json/utf8.h"
#include "core/service/rules/rules.h"

#include <algorithm>
#include <map>

namespace core::service::rules {

using measure::HarmRate;
using measure::Instant;
using measure::Seconds;
using measure::Sentence;
namespace calendar = std::chrono;

bool checkLength(Findings& findings, const std::string& place, Seconds length)
{
    if (length < Seconds{0})
        findings.add(
            place,
            Sentence::worded("%1 is negative; lengths run from 0 to 1440 (24 h)", minutesText(length)));
    else if (length > longestLength)
        findings.add(place,
                     Sentence::worded("%1 is more than 1440 (24 h), the longest that is accepted",
                                      minutesText(length)));
    return length >= Seconds{0} && length <= longestLength;
}

bool checkTask(Findings& findings, const std::string& place, Seconds length)
{
    if (length == Seconds{0})
        findings.add(place, Sentence::worded("0 is too short; write at least one second, \"0:01\""));
    return checkLength(findings, place, length) && length > Seconds{0};
}

void checkLength(Findings& findings, const std::string& place, std::optional<Seconds> length)
{
    if (length)
        checkLength(findings, place, *length);
}

void checkHarm(Findings& findings, const std::string& place, HarmRate harm)
{
    const std::string written = harmValue(harm).text;
    if (harm < HarmRate{0})
        findings.add(place, Sentence::worded("%1 is negative; a harm runs from 0 to 1000", written));
    else if (harm > mostHarm)
        findings.add(place, Sentence::worded("%1 is more than 1000, the greatest harm", written));
}

void checkMoment(Findings& findings, const std::string& place, Instant moment)
{
    using calendar::January;
    constexpr calendar::sys_days earliest{calendar::year{2000} / January / 1};
    constexpr calendar::sys_days latest{calendar::year{2100} / January / 1};
    if (moment < earliest || moment >= latest)
        findings.add(place, Sentence::worded("is not between the years 2000 and 2099; mend the date"),
                     {"zone"});
}

bool checkCount(Findings& findings, const std::string& place, std::size_t count, std::size_t most,
                const Sentence& things)
{
    if (count > most)
        findings.add(
            place,
            Sentence::worded("%1 %2 are more than %3, the most that are accepted", count, things, most));
    return count <= most;
}

void checkText(Findings& findings, const std::string& place, const std::string& text, std::size_t longest,
               bool lines)
{
    const auto isControl = [lines](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return (byte < 0x20 && !(lines && c == '\n')) || byte == 0x7F;
    };
    if (json::firstInvalidUtf8(text))
        findings.add(place, Sentence::worded("is not UTF-8 text; write it again"));
    else if (std::ranges::any_of(text, isControl))
        findings.add(place, Sentence::worded("holds a control character, such as a tab; take it out"));
    else if (const std::size_t length = json::characters(text); length > longest)
        findings.add(place, Sentence::worded("has %1 characters; write at most %2", length, longest));
}

void checkName(Findings& findings, const std::string& place, const std::string& name)
{
    if (name.find_first_not_of(' ') == std::string::npos)
        findings.add(place, Sentence::worded("is empty; write a name"));
    else if (name.front() == ' ' || name.back() == ' ')
        findings.add(place, Sentence::worded("starts or ends with a space; take it out"));
    else
        checkText(findings, place, name, longestName, false);
}

void checkUnique(Findings& findings, const std::vector<Named>& named, const Sentence& thing)
{
    std::map<std::string_view, const Named*> seen;
    for (const Named& next : named) {
        if (next.name.empty())
            continue;
        const auto [earlier, isNew] = seen.emplace(next.name, &next);
        if (!isNew)
            findings.add(next.place,
                         Sentence::worded("%1 is the name of %2 too; give each %3 a name of its own",
                                          json::quoted(next.name), earlier->second->place, thing));
    }
}

}  // namespace core::service::rules
