#pragma once

#include "app/view/lane_view.h"
#include "app/view/now_view.h"
#include "core/run/run.h"
#include "core/stagger/choices.h"

#include <span>
#include <string>
#include <vector>

/// A run in words, for the terminal.
namespace app::command {

using Services = std::vector<core::service::Service>;

/// "14:16:05" by the clocks of the service.
std::string clockOf(const Services& services, const core::measure::TimeZones& zones,
                    core::measure::Instant moment);

/// "Apply Root", with the head before it where several are worked on.
std::string taskText(const Services& services, const core::stagger::TaskId& task);

/// "Start: Apply Root", "Has it ended? Apply Root", "Look: Mids (1st)"
std::string promptText(const Services& services, const core::run::Prompt& prompt);

/// "in 4:30", "now", "0:20 late"
std::string dueText(core::measure::Seconds left);

/// Of each coat that is over: what was said of how it turned out, or that nobody did.
std::vector<std::string> outcomeLines(const Services& services, const core::run::State& state,
                                      std::span<const core::run::Fact> facts);

/// "#12 finished Apply Root at 14:16:00", "#13 what is planned was changed at 14:17:00: Ada comes to help":
/// the fact at `place` of `facts`.
std::string factText(const core::run::Setup& setup, std::span<const core::run::Fact> facts, std::size_t place,
                     const core::measure::TimeZones& zones);

/// The last answers that stand, each as its first fact, when it really happened; the last first, `most` at
/// most.
std::vector<std::string> answerLines(const core::run::Setup& setup, std::span<const core::run::Fact> facts,
                                     const core::measure::TimeZones& zones, std::size_t most);

/// The lanes as lines, those of coats that were not begun left out.
std::vector<std::string> laneLines(const Services& services, const core::run::State& state,
                                   const core::measure::TimeZones& zones);

/// One line: what can be chosen, and what comes of it in zone-minutes.
std::string choiceText(const core::stagger::Choice& choice);

/// The one thing to do now and what comes next, numbered as the answers count them.
std::vector<std::string> nowLines(const Services& services, const core::run::State& state,
                                  const core::measure::TimeZones& zones);

/// What each zone got beside what was asked for, once the run is over.
std::string summary(const Services& services, const core::run::State& state);

}  // namespace app::command
