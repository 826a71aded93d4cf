#pragma once

#include "core/measure/time.h"
#include "core/service/findings.h"
#include "core/service/minutes.h"

#include <optional>
#include <string>
#include <vector>

/// The limits that any length, moment, count or name has to keep.
namespace core::service::rules {

/// Not negative and at most a day. False where it is not.
bool checkLength(Findings& findings, const std::string& place, measure::Seconds length);

/// The same, and at least one second.
bool checkTask(Findings& findings, const std::string& place, measure::Seconds length);

void checkLength(Findings& findings, const std::string& place, std::optional<measure::Seconds> length);

void checkHarm(Findings& findings, const std::string& place, measure::HarmRate harm);

/// From the year 2000 to the end of 2099, whole clock times being what people write.
void checkMoment(Findings& findings, const std::string& place, measure::Instant moment);

/// At most `most`. `things` names them: "coats". False where there are more.
bool checkCount(Findings& findings, const std::string& place, std::size_t count, std::size_t most,
                const measure::Sentence& things);

/// Not empty, not too long, on one line, without spaces at either end.
void checkName(Findings& findings, const std::string& place, const std::string& name);

/// A text that may be empty; `lines` says whether it may have several lines.
void checkText(Findings& findings, const std::string& place, const std::string& text, std::size_t longest,
               bool lines);

/// No name twice. `place(i)` is where name i stands; `thing` is what bears it: "zone".
struct Named {
    std::string name;
    std::string place;
};
void checkUnique(Findings& findings, const std::vector<Named>& named, const measure::Sentence& thing);

}  // namespace core::service::rules
