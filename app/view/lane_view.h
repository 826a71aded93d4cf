#pragma once

#include "core/run/run.h"
#include "core/service/service.h"

#include <optional>
#include <string>
#include <vector>

namespace app::view {

using core::measure::Instant;
using core::measure::Seconds;
using core::stagger::TaskId;

enum class Urgency { Calm, Soon, Due, Late };

/// What a lane's digits count down to.
enum class CountsTo { Application, ApplicationEnd, Water, Nothing };

/// All that one lane shows at one moment. Built from the run's state by a pure
/// function and never changed afterwards; a later moment is a new LaneView.
struct LaneView {
    TaskId zone;  ///< The `Apply` of the zone.
    std::string title;
    core::run::Stage stage = core::run::Stage::Waiting;
    CountsTo countsTo = CountsTo::Nothing;
    Seconds left{0};  ///< Below zero once what it counts to is overdue.
    Urgency urgency = Urgency::Calm;
    std::optional<Seconds> untilLook;  ///< Below zero once the look is overdue.
    std::optional<TaskId> look;
    Seconds development{0};        ///< By now, or at water once there was water.
    core::service::Window window;  ///< As asked, for showing.
    Instant water;
    Instant mostAt;
    double filled = 0;  ///< Development over target, from 0; above 1 past the target.

    friend bool operator==(const LaneView&, const LaneView&) = default;
};

struct LanesView {
    std::size_t service = 0;
    std::size_t coat = 0;
    std::size_t coats = 0;  ///< How many there are in the service.
    std::string coatName;
    std::vector<LaneView> lanes;  ///< In the order of the service.

    friend bool operator==(const LanesView&, const LanesView&) = default;
};

/// A thing to do is `Soon` from this long before its moment.
constexpr Seconds soon{120};

/// How pressing something is that is due in `left`.
Urgency urgencyOf(Seconds left);

/// The coat that is worked on: the first with a lane that has had no rinse yet, else the last.
std::size_t currentCoat(const core::run::State& state, std::size_t service = 0);

/// The lanes of the coat that is worked on.
LanesView lanesView(const std::vector<core::service::Service>& services, const core::run::State& state);

}  // namespace app::view
