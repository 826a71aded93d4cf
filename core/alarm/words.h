#pragma once

#include "core/alarm/call.h"

#include <string>
#include <vector>

namespace core::alarm {

/// What an alarm says, for the screen and to be spoken: "Ends: look now", "Water on: Root, Mids, Ends".
/// The alarm must be one of `state`, and `state` one of a run of `services`. Where several heads are
/// worked on together the head comes first.
std::string alarmText(const std::vector<service::Service>& services, const run::State& state,
                      const Alarm& alarm);

/// The same of all alarms of a call, in order of harm: "Water on: Root; Mids, Ends: look now".
std::string callText(const std::vector<service::Service>& services, const run::State& state,
                     const Call& call);

}  // namespace core::alarm
