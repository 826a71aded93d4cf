#pragma once

#include "core/stagger/progress.h"

#include <optional>
#include <vector>

/// What has happened to one zone, and which tasks that leaves without an object.
namespace core::run {

using measure::Instant;
using measure::Seconds;
using service::Service;
using stagger::Progress;
using stagger::TaskId;
using stagger::TaskKind;

struct ZoneRecord {
    std::optional<Instant> firstContact{};
    std::optional<Instant> applicationEnd{};
    std::optional<Instant> clockStart{};
    std::optional<Instant> water{};  ///< Once its rinse has begun; with a reach it may be still to come.
    bool rinsed = false;             ///< The water has been turned off.
    bool dropped = false;

    /// The mixture is on the hair at `now`.
    [[nodiscard]] bool isOn(Instant now) const { return firstContact && !rinsed && (!water || *water > now); }
};

/// The `Apply` of the zone that a task of a zone (`isOfZone`) is about.
TaskId applyOf(const TaskId& id);

/// `apply` must be the `Apply` of a zone of `services`.
ZoneRecord zoneRecord(const std::vector<Service>& services, const Progress& progress, const TaskId& apply);

/// The `Apply` of every zone, in the order of the services.
std::vector<TaskId> zonesOf(const std::vector<Service>& services);

const service::Zone& zoneOf(const std::vector<Service>& services, const TaskId& apply);
TaskId rinseOf(const std::vector<Service>& services, const TaskId& apply);

/// The zones that go under the water with `rinse`, a `Rinse` or `RinseAlone`:
/// those of the group that were not dropped and have not left it.
std::vector<TaskId> zonesUnder(const std::vector<Service>& services, const Progress& progress,
                               const TaskId& rinse);

/// Whether `id` is a task of one of `services`.
bool exists(const std::vector<Service>& services, const TaskId& id);

/// Whether `id`, which has not begun, has nothing left to be done to: it or its zone was
/// dropped, its zone has met the water, all zones left its group, or its bowl is in use.
bool isPointless(const std::vector<Service>& services, const Progress& progress, const TaskId& id);

}  // namespace core::run
