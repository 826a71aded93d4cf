#pragma once

#include "core/alarm/alarm.h"
#include "tests/app/sound/capture/heard.h"

#include <QString>

#include <string>
#include <vector>

namespace desk {

/// At this speed a minute is four seconds, and an alarm that is not answered repeats after four thirds of
/// one: whoever has the window read aloud, or must not press twice, has answered by then.
constexpr double speed = 15;
inline const QString speedText = QStringLiteral("15");

struct Expected {
    core::measure::Instant at;
    core::alarm::Kind kind = core::alarm::Kind::GetReady;
    core::alarm::Subject subject = core::alarm::Subject::Task;
    int voice = 0;
};

/// Every alarm that a run with these facts sounds, from its beginning until `end`,
/// by asking the core second by second: no word of the program that ran is trusted.
std::vector<Expected> alarmsOf(const core::run::Setup& setup, const std::vector<core::run::Fact>& facts,
                               core::measure::Instant end);

/// For a message; `at` in seconds of the recording.
std::string named(const Expected& expected, double at);

/// What was heard about then, in words, to see what went wrong.
std::string around(const std::vector<capture::Heard>& heard, double at);

}  // namespace desk
