#pragma once

#include "app/output/plan_words.h"
#include "core/measure/time.h"
#include "core/stagger/cures.h"
#include "core/stagger/holds.h"

#include <string>
#include <vector>

/// Why nothing fits and what would make it fit; or, where it fits, what keeps it from
/// being better. In words, and as JSON (docs/explanation-json.md, with its schema
/// resources/schema/basinbell-explanation-1.schema.json).
namespace app::output {

struct WhyNot {
    core::stagger::NoPlan reason;
    std::vector<core::stagger::Cure> cures;
    bool complete = true;  ///< The search for cures came to its end.
};

std::string explanationText(const Services& services, const WhyNot& whyNot,
                            const core::measure::TimeZones& zones);
std::string explanationJson(const Services& services, const WhyNot& whyNot,
                            const core::measure::TimeZones& zones);

struct WhySo {
    core::stagger::Plan plan;
    std::optional<core::stagger::Holding> holding;  ///< Absent where there was no time to find out.
};

std::string explanationText(const Services& services, const WhySo& whySo,
                            const core::measure::TimeZones& zones);
std::string explanationJson(const Services& services, const WhySo& whySo,
                            const core::measure::TimeZones& zones);

}  // namespace app::output
