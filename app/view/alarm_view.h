#pragma once

#include "app/view/lane_view.h"

#include "core/alarm/alarm.h"

#include <optional>
#include <string>
#include <vector>

namespace app::view {

/// What stands, as the screen shows it.
struct AlarmView {
    core::alarm::Alarm alarm;
    std::string head;                ///< Whose, where there are several heads.
    std::vector<std::string> zones;  ///< What it is about.
    Seconds standing{0};             ///< Since when.
    bool takesWindow = false;  ///< Water is due or a limit is near or passed: everything else steps back.

    friend bool operator==(const AlarmView&, const AlarmView&) = default;
};

/// The most urgent alarm that takes the window, else the most urgent of all, or nothing.
std::optional<AlarmView> alarmView(const std::vector<core::service::Service>& services,
                                   const core::run::State& state,
                                   const std::vector<core::alarm::Alarm>& alarms);

}  // namespace app::view
