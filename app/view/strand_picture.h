#pragma once

#include "core/run/run.h"
#include "core/service/service.h"
#include "core/stagger/forecast.h"
#include "core/stagger/plan.h"

#include <optional>
#include <string>
#include <vector>

/// The picture the program is built on: every zone a strand that flows towards
/// the rinse line. Moments and states only; shapes and colours are the
/// desktop's, so the same picture can be drawn on a screen, on paper or in words.
namespace app::view {

using core::measure::Instant;
using core::measure::Seconds;
using core::stagger::TaskId;

struct Span {
    Instant from;
    Instant until;

    friend bool operator==(const Span&, const Span&) = default;
};

/// A look, at its moment. One that is not due, or was passed over, is left out.
struct LookMark {
    TaskId task;
    Instant at;
    bool made = false;

    friend bool operator==(const LookMark&, const LookMark&) = default;
};

/// A hands-on job tied to the rinse.
struct JobMark {
    TaskId task;
    Span span;
    std::string name;

    friend bool operator==(const JobMark&, const JobMark&) = default;
};

/// What a strand comes to where applying takes as long as it happens to take.
struct StrandForecast {
    int inside = 0;  ///< In so many runs the zone stays inside its limits.
    int runs = 0;
    Span water;  ///< In nine runs of ten water comes within that.

    friend bool operator==(const StrandForecast&, const StrandForecast&) = default;
};

/// Where a strand was to be by an earlier plan, to be shown behind what happened.
struct PlannedStrand {
    Span application;
    Instant water;

    friend bool operator==(const PlannedStrand&, const PlannedStrand&) = default;
};

/// A start that somebody wants, and, while it is being chosen, how far it can go.
struct WantedStart {
    Instant at;  ///< Not before.
    std::optional<Instant> earliest{};
    std::optional<Instant> latest{};

    friend bool operator==(const WantedStart&, const WantedStart&) = default;
};

struct Strand {
    TaskId zone;  ///< The `Apply` of the zone.
    std::string name;
    core::run::Stage stage = core::run::Stage::Waiting;
    Span application;
    Instant clockStart;
    Instant water;
    Instant rinseEnd;
    Instant leastAt;  ///< The three marks of the window.
    Instant targetAt;
    Instant mostAt;  ///< The tighter of most and the first strand's limit.
    std::vector<LookMark> looks;
    std::vector<JobMark> late;
    std::optional<StrandForecast> forecast{};
    std::optional<PlannedStrand> planned{};
    std::optional<WantedStart> wanted{};

    [[nodiscard]] Seconds development() const { return water - clockStart; }
    [[nodiscard]] bool keepsItsWindow() const { return leastAt <= water && water <= mostAt; }
    friend bool operator==(const Strand&, const Strand&) = default;
};

/// The moment strands end at. One for each rinse group, and one for a zone rinsed alone.
struct RinseLine {
    Instant at;
    std::string name;

    friend bool operator==(const RinseLine&, const RinseLine&) = default;
};

/// What one pair of hands does.
struct HandsJob {
    TaskId task;
    Span span;
    bool elsewhere = false;  ///< On a head, or a coat, whose strands are not in the picture.

    friend bool operator==(const HandsJob&, const HandsJob&) = default;
};

struct HandsRow {
    std::string name;
    std::vector<HandsJob> jobs;  ///< By start.

    friend bool operator==(const HandsRow&, const HandsRow&) = default;
};

struct StrandPicture {
    std::vector<Strand> strands;        ///< In the order of the service.
    std::vector<RinseLine> rinseLines;  ///< By moment.
    std::vector<HandsRow> hands;
    Span reach;                  ///< From the first thing drawn to the last.
    std::optional<Instant> now;  ///< Only while it runs.

    friend bool operator==(const StrandPicture&, const StrandPicture&) = default;
};

/// One coat of one head.
struct CoatPlace {
    std::size_t service = 0;
    std::size_t coat = 0;

    friend auto operator<=>(const CoatPlace&, const CoatPlace&) = default;
};

/// What one coat will look like. Empty where the plan has none of it.
StrandPicture plannedPicture(const std::vector<core::service::Service>& services,
                             const core::stagger::PlanData& plan, CoatPlace coat);

/// What one coat would look like with another start of `zone`: `would` is the plan for that, `now` the plan
/// as it is, which is shown behind it where it differs. Reaches as far as both, and as the room for the
/// start.
StrandPicture changedPicture(const std::vector<core::service::Service>& services,
                             const core::stagger::PlanData& now, const core::stagger::PlanData& would,
                             const TaskId& zone, const WantedStart& wanted);

/// What the coats look like at `state.now`: what happened, and what is planned for the rest. Their strands
/// are named with their heads where there are several.
StrandPicture livePicture(const std::vector<core::service::Service>& services, const core::run::State& state,
                          const std::vector<CoatPlace>& coats);

/// Marks on the strands what they come to. Nothing is marked where no length of applying is uncertain.
void addForecast(StrandPicture& picture, const std::vector<core::service::Service>& services,
                 const core::stagger::Forecast& forecast);

/// Makes room in the picture for what was planned.
void widenByPlanned(StrandPicture& picture);

/// The four moments that a strand is drawn from.
struct StrandTimes {
    Instant firstContact;
    Instant applicationEnd;
    Instant clockStart;
    Instant water;
};

/// Puts a strand together; `tasks` are those of the plan, for looks, late jobs and the rinse's end.
Strand makeStrand(const core::service::Service& service, const TaskId& zone, const StrandTimes& times,
                  const std::vector<core::stagger::PlannedTask>& tasks);

/// Adds the rows of the hands, the rinse lines and the reach; `coats` are those that the strands belong to.
void completePicture(StrandPicture& picture, const std::vector<core::service::Service>& services,
                     const std::vector<core::stagger::PlannedTask>& tasks,
                     const std::vector<CoatPlace>& coats);

}  // namespace app::view
