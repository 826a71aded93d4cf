#pragma once

#include "app/command/answer_line.h"

namespace app::command {

/// Reads a line that puts answers right: "u", "u #12", "m 2", "m 14:03 #12", "was Ends", "answers". Nothing
/// where it is none of these; the error says what can be typed.
std::optional<tl::expected<Order, std::string>>
readCorrection(std::vector<std::string> words, const std::vector<core::service::Service>& services,
               const core::run::State& state);

/// How long before `now`, a time of day in the last 24 hours, a clock shows "14:03" or "14:03:20". Nothing
/// where `text` is no time of day.
std::optional<core::measure::Seconds> agoOf(const std::string& text, core::measure::LocalTime now);

}  // namespace app::command
