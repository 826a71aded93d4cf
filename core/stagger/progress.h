#pragma once

#include "core/stagger/task.h"

#include <optional>
#include <vector>

/// What has happened so far, as the planner needs it. Facts are exempt from the
/// rules: they may contradict the plan and the limits.
namespace core::stagger {

struct TaskProgress {
    TaskId id;
    Instant start;
    std::optional<Instant> end;         ///< Absent while it runs. For `Dry`: the end of the hands-on part.
    std::optional<Instant> plannedEnd;  ///< While it runs: when it was expected to end, if that was known.

    friend bool operator==(const TaskProgress&, const TaskProgress&) = default;
};

struct Progress {
    /// Started or finished tasks, in any order, each at most once. A zone with a
    /// `RinseAlone` has left its rinse group: its water is that task's start.
    std::vector<TaskProgress> tasks;
    /// Tasks that will not be done any more: looks passed over, late jobs left out,
    /// a zone abandoned by its `Apply`.
    std::vector<TaskId> dropped;

    [[nodiscard]] const TaskProgress* find(const TaskId& id) const;
    [[nodiscard]] bool isDropped(const TaskId& id) const;
    [[nodiscard]] bool empty() const { return tasks.empty() && dropped.empty(); }

    friend bool operator==(const Progress&, const Progress&) = default;
};

}  // namespace core::stagger
