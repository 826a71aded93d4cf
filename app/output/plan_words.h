#pragma once

#include "core/stagger/plan.h"

#include <string>
#include <vector>

/// A plan in the trade's words.
namespace app::output {

using Services = std::vector<core::service::Service>;

/// "Harbour master, " where there are several heads, else nothing: to say whose a thing is.
std::string ofHead(const Services& services, std::size_t head);

/// Who does a task: the name of a pair of hands, or "Hands 2" where it has none.
std::string handsName(const Services& services, std::size_t hands);

const core::service::Zone& zoneOf(const Services& services, const core::stagger::PlannedZone& zone);

/// "7.5 zone-minutes": as many decimals as there are, two at most.
std::string zoneMinutes(core::measure::Harm harm);

/// "25 to 40 min, target 30 min"
std::string windowText(const core::service::Window& window);

/// "on target", "3 min short", "2 min 30 s over"
std::string deviationText(const core::service::Zone& zone, core::measure::Seconds development);

/// What the plan is worth, a sentence each: targets, how far it holds, time, bowls, and whether it is proved.
std::vector<std::string> worthSentences(const Services& services, const core::stagger::Plan& plan);

/// How much is said of the looks that do not fall due.
enum class Remarks { Counted, EveryLook };

/// Limits that the plan goes past and looks that it leaves out, a sentence each.
std::vector<std::string> remarks(const Services& services, const core::stagger::Plan& plan, Remarks wanted);

/// Why nothing fits: its text, and each demand on a line of its own.
std::string noPlanText(const core::stagger::NoPlan& noPlan);

}  // namespace app::output
