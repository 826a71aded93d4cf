#pragma once

#include "core/temporal/uncertain.h"
#include "tests/oracle/plan_view.h"

#include <map>
#include <vector>

/// The order that a plan fixes, and the network with uncertain lengths that it is the solution of. Written
/// from the rules (docs/method.md), apart from the planner's.
namespace oracle {

/// One thing that an order fixes. Whoever keeps it keeps its lags.
struct Choice {
    enum class Kind {
        Before,    ///< `first` is over when `second` starts: they share hands, a basin or a head at a basin.
        Clear,     ///< The look `first` starts sooner than the application `second`, with no other under way.
        Within,    ///< The look `first` starts while `second` is applied, by the hands that apply.
        Due,       ///< The look `first` is made.
        NotDue,    ///< The look `first` is not made, for the water comes too soon.
        Leave,     ///< `first` is over when its hands go away at `moment`.
        Back,      ///< `first` starts when its hands are back, at `moment`.
        WithinGap  ///< `second` starts within the longest gap after `first`, with which the coat before ends.
    };

    Kind kind = Kind::Before;
    TaskId first;
    TaskId second;
    std::size_t hands = 0;  ///< Only where the hands are away.
    Instant moment{};

    friend bool operator==(const Choice&, const Choice&) = default;
};

using Order = std::vector<Choice>;

/// What a plan for usual lengths fixes, gaps between coats apart. Its hands and basins must be set. What has
/// happened fixes nothing more.
Order orderOf(const PlanView& view);

/// For each longest gap between coats the ways to see to it: some application of the next coat comes soon
/// enough after some end of the coat before, and the first one after the last end comes no later than that.
/// Where one has been begun there is nothing left to see to.
std::vector<Order> gapsOf(const PlanView& view);

/// The points of a network: 0 is the origin, then the start of each task and the end of each application.
/// Tasks are those that stand: what has happened is among them.
class Points {
public:
    explicit Points(const Question& question);

    [[nodiscard]] const Question& question() const { return m_question; }
    /// Where point 0 lies: before anything can start.
    [[nodiscard]] static Instant origin() { return std::chrono::sys_days{std::chrono::year{2026} / 1 / 1}; }
    [[nodiscard]] const std::vector<TaskId>& tasks() const { return m_tasks; }
    [[nodiscard]] core::temporal::Point count() const { return m_count; }
    [[nodiscard]] core::temporal::Point start(const TaskId& id) const { return m_starts.at(id); }
    [[nodiscard]] bool has(const TaskId& id) const { return m_starts.contains(id); }
    /// Of what has happened, as long as it took or is taken to.
    [[nodiscard]] Seconds length(const TaskId& id) const;
    /// An application of that coat has been begun.
    [[nodiscard]] bool isBegun(std::size_t head, std::size_t coat) const;

    /// Where each point lies when `plan` is followed and every length is usual; what is not done lies at 0.
    [[nodiscard]] std::vector<core::temporal::Time> timesOf(const PlanView& view) const;

private:
    const Question& m_question;
    std::vector<TaskId> m_tasks;
    std::map<TaskId, core::temporal::Point> m_starts;
    core::temporal::Point m_count = 1;
};

/// Every application in `[usual - share * (usual - quickest), usual + share * (slowest - usual)]`, ends
/// rounded outwards; `share` in percent. The lags are the rules that bind whatever the order, and those of
/// `order`.
core::temporal::UncertainNetwork networkOf(const Points& points, const Order& order, int share);

/// Whether the order of `plan` can be kept whatever the lengths within `share`, and `plan` is what a strategy
/// that does so comes to where all of them are usual.
bool holdsFor(const PlanView& view, int share);

}  // namespace oracle
