#pragma once

#include "core/run/run.h"

#include <cstdint>
#include <string>
#include <vector>

/// What is heard: which alarms stand at a moment. Pure, so a restarted program
/// sounds exactly what the killed one would have.
namespace core::alarm {

using measure::Instant;
using measure::Seconds;

/// By urgency, least first.
enum class Kind { GetReady, Due, LimitNear, LimitPassed };

/// What the sound is about; each has a pattern of its own.
enum class Subject { Task, Look, Water };

struct Alarm {
    Kind kind = Kind::GetReady;
    Subject subject = Subject::Task;
    stagger::TaskId task{};                             ///< For limits the zone's `Apply`.
    run::Prompt::Asks asks = run::Prompt::Asks::Start;  ///< What is to be answered. Not used by limits.
    Instant since{};                                    ///< When it first sounds.
    Seconds every{0};    ///< How often it repeats until it is answered; 0 means once.
    int insistence = 0;  ///< 0 at first, up to `mostInsistence`, louder each time.
    int voice = 0;  ///< Of the lane: from 0 up to `voices`, exclusive. A rinse has that of its coat's first.

    friend bool operator==(const Alarm&, const Alarm&) = default;
};

/// Whether both are about the same, however long they have stood.
[[nodiscard]] inline bool sameMatter(const Alarm& one, const Alarm& other)
{
    return one.kind == other.kind && one.subject == other.subject && one.task == other.task
        && one.asks == other.asks;
}

constexpr int mostInsistence = 3;

/// So many lanes sound different; the next sounds like the first again.
constexpr int voices = 6;

/// How far ahead, how often, how fast it grows.
struct Manners {
    Seconds notice{120};  ///< GetReady sounds that long before a task is due.
    Seconds repeatDue{20};
    Seconds repeatLimit{10};
    Seconds limitNotice{120};  ///< LimitNear sounds that long before a limit.
    Seconds growEvery{40};     ///< Insistence rises by one each.
    Seconds together{60};      ///< What begins so soon after another is one prompt with it; see call.h.
};

/// All that stand at `now`, most urgent first. A notice sounds with one that comes no more than
/// `Manners::together` before it, so that two are not announced one after the other.
std::vector<Alarm> alarmsAt(const run::State& state, const Manners& manners, Instant now);

/// When the set or an insistence next changes, or the next repeat sounds: the
/// caller sleeps until then, and asks for a new state. Always after `now`.
/// Nothing when nothing is to come.
std::optional<Instant> nextChange(const run::State& state, const Manners& manners, Instant now);

}  // namespace core::alarm
