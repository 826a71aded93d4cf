#pragma once

#include "app/view/record_card.h"

#include <string>

namespace app::command {

/// A record card in lines, as somebody reads it on a terminal. `run` is its number in the journal.
std::string cardText(const view::RecordCard& card, std::int64_t run, const core::measure::TimeZones& zones);

}  // namespace app::command
