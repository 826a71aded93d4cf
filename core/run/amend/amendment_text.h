#pragma once

#include "core/run/run.h"

namespace core::run {

/// What the amendment at `place` of `facts` changed, in a few words each, joined by "; ": "Ada is away from
/// 14:10 to 14:30". `zones` must know the time zone of every service.
Sentence amendmentText(const Setup& setup, std::span<const Fact> facts, std::size_t place,
                       const measure::TimeZones& zones);

}  // namespace core::run
