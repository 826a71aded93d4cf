#pragma once

#include "core/measure/sentence.h"
#include "core/service/service.h"

#include <compare>
#include <cstddef>
#include <string>
#include <vector>

/// What is planned and what is recorded: the tasks of a service.
namespace core::stagger {

using measure::Instant;
using measure::Interval;
using measure::Seconds;
using measure::Sentence;

enum class TaskKind {
    Apply,       ///< `item` is the zone.
    Look,        ///< `item` is the zone, `part` the number of the look, from 0.
    Late,        ///< `item` is the zone, `part` the late job.
    Mix,         ///< `item` is the bowl.
    Rinse,       ///< `item` is the rinse group.
    RinseAlone,  ///< `item` is the zone. Never planned by itself: only where somebody chose it.
    Dry,         ///< `item` and `part` are 0.
    Assess,      ///< `item` and `part` are 0.
    Heat,        ///< Heat over the head; `item` is 0, `part` how often there was some before. Never planned:
                 ///< somebody says that it was put on and taken off, and nothing is worked out from it.
};

/// Names one task for good, by places in the service; it holds no name of a
/// person, so it can be written into a journal. `service` is the place of the
/// service among those planned together, 0 where there is one.
///
/// The order of ids is the order of the service: coat by coat, zone by zone with
/// application, looks and late jobs, then mixes, rinses, drying, assessing.
struct TaskId {
    std::size_t service = 0;
    std::size_t coat = 0;
    TaskKind kind = TaskKind::Apply;
    std::size_t item = 0;
    std::size_t part = 0;

    friend bool operator==(const TaskId&, const TaskId&) = default;
    friend std::strong_ordering operator<=>(const TaskId& a, const TaskId& b);
};

/// Stable text for files and journals: "0.0.apply.2.0".
std::string taskIdText(const TaskId& id);

/// The reverse; false where `text` is not such an id.
bool readTaskId(const std::string& text, TaskId& id);

/// A task in the trade's words, "Apply Root", "Look at Ends (2nd)", "Mix Toner bowl",
/// "Rinse All together", "Dry", "Assess". `id` must belong to `service`.
Sentence taskName(const service::Service& service, const TaskId& id);

/// Whether `id` points at something that exists in `service`, or, for heat, at something that may be.
bool isTaskOf(const service::Service& service, const TaskId& id);

/// Hands-on length for the usual run of things. For `Dry` the hands-on part alone.
Seconds usualLength(const service::Service& service, const TaskId& id);

/// Every task that exists (length above 0), in the order of ids, looks included
/// whether or not they fall due; without `RinseAlone` and `Heat`.
std::vector<TaskId> tasksOf(const service::Service& service, std::size_t serviceIndex = 0);

/// Whether it is about one zone: `Apply`, `Look`, `Late`, `RinseAlone`.
bool isOfZone(const TaskId& id);

/// Whether it is water: of a rinse group, or of a zone alone.
bool isWater(const TaskId& id);

/// The kind of work a task is, for who may do it. Heat takes no hands, so anything may be said of it.
service::Work workOf(TaskKind kind);

}  // namespace core::stagger
