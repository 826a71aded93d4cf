#pragma once

#include "core/alarm/alarm.h"

#include <vector>

namespace core::alarm {

/// Alarms that are one prompt: somebody is called once for all of them, and each is answered by itself.
struct Call {
    std::vector<Alarm> alarms;  ///< At least one, all of one kind, in order of harm: what cannot wait first.

    /// How all of them sound: as the first, as long and as loud as the one that has waited longest.
    [[nodiscard]] Alarm lead() const;

    friend bool operator==(const Call&, const Call&) = default;
};

/// The calls that `alarms` make, the most urgent first: those of one kind that began within
/// `Manners::together` of the first of them are one. Limits are therefore never in a call with anything less,
/// nor a passed one with one that is near.
std::vector<Call> callsOf(const std::vector<Alarm>& alarms, const Manners& manners);

}  // namespace core::alarm
