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
    TaskId zone;       ///< The `Apply` of the zone.
    std::string head;  ///< Whose zone it is; empty where there is one head.
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
    double filled = 0;                        ///< Development over target, from 0; above 1 past the target.
    std::optional<core::run::SeenTone> tone;  ///< As it was seen last.

    friend bool operator==(const LaneView&, const LaneView&) = default;
};

/// One head of a run.
struct HeadView {
    std::string name;       ///< Of the service.
    std::size_t coat = 0;   ///< The one that is worked on.
    std::size_t coats = 0;  ///< How many there are in the service.
    std::string coatName;

    friend bool operator==(const HeadView&, const HeadView&) = default;
};

/// Heat that is over a head. The windows of the lanes are those without heat, whatever heat does.
struct HeatView {
    std::string head;  ///< Whose, where there are several heads.
    Instant since;
    std::optional<Instant> offDue;  ///< Where somebody said how long it stays.

    friend bool operator==(const HeatView&, const HeatView&) = default;
};

struct LanesView {
    std::vector<HeadView> heads;
    std::vector<LaneView> lanes;  ///< In the order of the services: of each, its coat that is worked on.
    std::vector<HeatView> heats;  ///< At most one a head.

    friend bool operator==(const LanesView&, const LanesView&) = default;
};

/// A thing to do is `Soon` from this long before its moment.
constexpr Seconds soon{120};

/// The places of the `most` lanes that press most, in the order in which they stand: what is late before what
/// is due and what is soon, what comes first before what comes later, and what is rinsed last.
std::vector<std::size_t> mostPressing(const std::vector<LaneView>& lanes, std::size_t most);

/// How long until something is asked for in the lane, a look or what it counts to; below zero once it is
/// overdue. Nothing where nothing more is asked for.
std::optional<Seconds> untilAsked(const LaneView& lane);

/// How pressing something is that is due in `left`.
Urgency urgencyOf(Seconds left);

/// The coat that is worked on: the first with a lane that has had no rinse yet, else the last.
std::size_t currentCoat(const core::run::State& state, std::size_t service = 0);

/// What a head is called among several; empty where there is one.
std::string headOf(const std::vector<core::service::Service>& services, std::size_t head);

/// The lanes of the coats that are worked on, one coat of each head.
LanesView lanesView(const std::vector<core::service::Service>& services, const core::run::State& state);

}  // namespace app::view
