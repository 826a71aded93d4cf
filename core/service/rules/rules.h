#pragma once

#include "core/service/findings.h"
#include "core/service/service.h"

#include <string>

/// What a service must fulfil, part by part. Every rule is in docs/service-file.md.
namespace core::service::rules {

inline constexpr std::size_t mostCoats = 50;
inline constexpr std::size_t mostZones = 200;  ///< In the whole service.
inline constexpr std::size_t mostBowls = 200;  ///< In a coat, like its rinse groups.
inline constexpr std::size_t mostHands = 20;
inline constexpr std::size_t mostBasins = 20;
inline constexpr std::size_t mostAway = 100;     ///< For one pair of hands.
inline constexpr std::size_t mostLateJobs = 20;  ///< For one zone.
inline constexpr std::size_t mostLooks = 100;    ///< For one zone.
inline constexpr std::size_t longestName = 100;  ///< Characters.
inline constexpr std::size_t longestNote = 1000;

/// All of them.
void applyRules(const Service& service, Findings& findings);

void checkCrew(const Service& service, Findings& findings);
void checkCoat(const Coat& coat, const std::string& place, Findings& findings);
void checkZone(const Coat& coat, const Zone& zone, const std::string& place, Findings& findings);

/// Zones that wait for themselves, directly or round a loop.
void checkOrder(const Coat& coat, const std::string& place, Findings& findings);

}  // namespace core::service::rules
