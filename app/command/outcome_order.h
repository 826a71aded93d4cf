#pragma once

#include "app/command/answer_line.h"

namespace app::command {

/// Reads "out ZONE: WORDS" and "note: WORDS", which say how a zone turned out and what to think of next time,
/// and "out" alone; nothing where the line is none of them. The error says what can be typed.
std::optional<tl::expected<Order, std::string>>
readOutcome(const std::string& line, const std::vector<core::service::Service>& services,
            const core::run::State& state);

/// The words that can be picked, with their numbers.
std::string outcomeWordsText();

}  // namespace app::command
