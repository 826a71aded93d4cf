#pragma once

#include "app/session/journal.h"
#include "app/view/erased_run.h"
#include "app/view/record_card.h"

#include <string>

namespace app::command {

/// A record card in lines, as somebody reads it on a terminal. `run` is its number in the journal.
std::string cardText(const view::RecordCard& card, std::int64_t run, const core::measure::TimeZones& zones);

/// What is left of a run that was erased, in the time zone of this machine.
std::string erasedText(const view::ErasedRun& run, const session::StoredRun& stored,
                       const core::measure::TimeZones& zones);

}  // namespace app::command
