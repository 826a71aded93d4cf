#pragma once

#include "core/measure/harm.h"
#include "core/stagger/progress.h"

#include <tl/expected.hpp>

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

/// The face of the planner: from what is wanted and what has happened to what
/// should happen. A pure function: the same question has the same answer, on
/// every machine. The rules and the proof are in docs/method.md.
namespace core::stagger {

enum class TaskState { Open, Running, Done };

struct PlannedTask {
    TaskId id;
    Instant start;
    Instant end;  ///< Of the hands-on part.
    TaskState state = TaskState::Open;
    std::optional<std::size_t> hands;  ///< Which pair of hands, a place in the crew. Absent for what is past.
    std::optional<std::size_t> basin;  ///< For rinses, from 0.
    std::optional<TaskId> madeWhile;   ///< A look made by the hands that apply this zone.

    friend bool operator==(const PlannedTask&, const PlannedTask&) = default;
};

/// What one zone will get.
struct PlannedZone {
    std::size_t service = 0;
    std::size_t coat = 0;
    std::size_t zone = 0;
    Instant firstContact;  ///< The first strand is covered.
    Instant applicationEnd;
    Instant clockStart;
    Instant water;
    bool rinsedAlone = false;
    /// The plan holds as long as applying takes no less and no more than this; both
    /// as planned where only usual lengths are covered.
    Seconds quickestHeld{0};
    Seconds slowestHeld{0};

    [[nodiscard]] Seconds development() const { return water - clockStart; }
    friend bool operator==(const PlannedZone&, const PlannedZone&) = default;
};

/// What the plan is worth, level by level; less is better.
struct Worth {
    measure::Harm breach;     ///< Harm past the limits; above 0 only where facts left no choice.
    measure::Harm deviation;  ///< Short of and past the targets.
    Seconds waste{0};         ///< Before the promise, or until the end.
    Seconds staleness{0};     ///< Of the bowls when application starts, summed over zones.

    friend auto operator<=>(const Worth&, const Worth&) = default;
};

/// A limit that the plan (or what already happened) goes past.
struct BrokenLimit {
    TaskId task;
    Sentence what;  ///< "Root: 47 min development, at most 45 min"
    Seconds by{0};
    bool already = false;  ///< It has happened; nothing still open could keep it.

    friend bool operator==(const BrokenLimit&, const BrokenLimit&) = default;
};

struct PlanData {
    std::vector<PlannedTask> tasks;  ///< By start, then by id. What is done or runs is included.
    std::vector<PlannedZone> zones;  ///< In the order of the service.
    std::vector<TaskId> looksNotDue;
    std::vector<BrokenLimit> broken;
    Worth worth;
    bool proved = false;  ///< Nothing better exists. Otherwise the search was stopped.
    Worth provedBound;    ///< Nothing can be better than this.
    /// The give in percent, in steps of 10: so much of the room between usual and
    /// quickest, usual and slowest may applying take, and some way to go on keeps every
    /// limit. 100: guaranteed. Absent where no guarantee was asked for, nothing is
    /// uncertain, or limits had to be broken.
    std::optional<int> give;
    bool giveProved = true;  ///< No plan has a greater one.
    Instant start;           ///< Of the first task.
    Instant end;             ///< Of the last, drying unattended included.

    friend bool operator==(const PlanData&, const PlanData&) = default;
};

struct Question;

/// A finished plan. Only the planner makes one.
class Plan {
public:
    [[nodiscard]] const PlanData& data() const { return m_data; }
    [[nodiscard]] const PlanData* operator->() const { return &m_data; }

    /// The task with this id, or nothing.
    [[nodiscard]] const PlannedTask* find(const TaskId& id) const;
    [[nodiscard]] const PlannedZone* zone(std::size_t service, std::size_t coat, std::size_t zone) const;

    friend bool operator==(const Plan&, const Plan&) = default;

private:
    friend class PlanBuilder;
    friend class PlanForTests;
    friend Plan carriedOn(const Plan& plan, const Question& question);
    explicit Plan(PlanData data)
        : m_data{std::move(data)}
    {
    }
    PlanData m_data;
};

/// What a demand is about, for whoever looks for a cure.
enum class DemandKind {
    Least,
    Most,
    FirstStrand,
    LastStrand,
    Looks,
    LateJob,
    PotLife,
    WaterEarliest,
    WaterLatest,
    Order,
    BlendGap,  ///< The longest gap after a zone that it goes on after.
    CoatGapLeast,
    CoatGapMost,
    NotBefore,  ///< A start that is wanted for a zone.
    Promise,
    Hands,
    Basins,
    HeadAtBasin,
    Away,
};

/// One demand in a reason: dropping it would let the others hold together.
struct Demand {
    std::optional<TaskId> task;  ///< The zone, group or task it belongs to, where it has one.
    Sentence what;               ///< "Root: at most 31 min development"
    DemandKind kind = DemandKind::Promise;
    /// Which of several: for Order and BlendGap the place in the zone's `after`, for Promise
    /// the service, for Away the pair of hands * 1000 + the time away, for PotLife the bowl.
    std::size_t place = 0;

    friend bool operator==(const Demand&, const Demand&) = default;
};

/// Why nothing fits.
struct NoPlan {
    std::vector<Demand> demands;  ///< They cannot all hold together.
    bool minimal = false;         ///< Dropping any one of them makes the rest fit.
    bool stopped = false;         ///< Not known whether anything fits: the search was stopped.
    Sentence text;                ///< One or two sentences in the trade's words.

    friend bool operator==(const NoPlan&, const NoPlan&) = default;
};

/// What counts as waste.
enum class Preference {
    AsAsked,    ///< Start late where there is a promise and nothing has started, else end early.
    StartLate,  ///< Needs a promise; without one as AsAsked.
    EndEarly,
};

struct Question {
    std::vector<service::Service> services;  ///< Planned together with the crew of the first.
    Progress progress;
    /// Nothing that is open starts before this, whatever a service says.
    std::optional<Instant> now;
    Preference preference = Preference::AsAsked;
    /// If limits cannot all hold: break them by the least harm instead of answering
    /// that nothing fits. For a run that is under way.
    bool mayBreakLimits = false;
    /// Seek the greatest give before all else.
    bool guarantee = true;

    /// What differs most often is compared first; the services are the same all through a run.
    friend bool operator==(const Question& one, const Question& other)
    {
        return one.now == other.now && one.mayBreakLimits == other.mayBreakLimits
            && one.guarantee == other.guarantee && one.progress == other.progress
            && one.preference == other.preference && one.services == other.services;
    }
};

struct Budget {
    std::uint64_t conflicts = 2'000'000;  ///< After that many dead ends the search ends with the best so far.
    std::function<bool()> stop;           ///< Asked now and then; true ends the search at once.
    /// Where many heads are planned: told of each plan that is better than the one before. How far it
    /// holds may not have been looked at then: its `give` is absent.
    std::function<void(const Plan&)> better{};
};

/// Plans what is asked. Exact: the plan is proved best (the greatest give, then the
/// levels of `Worth` in turn, then the earliest starts in the order of the service, then the lowest
/// hands and basins) unless `proved` says otherwise. The services must have
/// passed `checkService`.
tl::expected<Plan, NoPlan> plan(const Question& question, const Budget& budget = {});

}  // namespace core::stagger
