#pragma once

#include "app/view/lane_view.h"

#include "core/alarm/alarm.h"

#include <optional>
#include <string>
#include <vector>

namespace app::view {

/// One alarm and what it is about.
struct AlarmAbout {
    core::alarm::Alarm alarm;
    std::string head;  ///< Whose, where there are several heads.
    std::vector<std::string> zones;

    friend bool operator==(const AlarmAbout&, const AlarmAbout&) = default;
};

/// What stands, as the screen shows it.
struct AlarmView {
    core::alarm::Alarm alarm;
    std::string head;                ///< Whose, where there are several heads.
    std::vector<std::string> zones;  ///< What it is about.
    Seconds standing{0};             ///< Since when.
    /// What stands besides and must be answered by itself: limits first, and then in order of harm.
    std::vector<AlarmAbout> also;
    bool takesWindow = false;  ///< Water is due or a limit is near or passed: everything else steps back.

    friend bool operator==(const AlarmView&, const AlarmView&) = default;
};

/// The most urgent alarm that takes the window, else the most urgent of all, or nothing.
std::optional<AlarmView> alarmView(const std::vector<core::service::Service>& services,
                                   const core::run::State& state,
                                   const std::vector<core::alarm::Alarm>& alarms);

AlarmAbout alarmAbout(const std::vector<core::service::Service>& services, const core::run::State& state,
                      const core::alarm::Alarm& alarm);

}  // namespace app::view
