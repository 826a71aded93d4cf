#pragma once

#include "app/view/strand_picture.h"

#include <optional>
#include <string>
#include <vector>

namespace app::view {

/// What another start of one zone makes of a plan.
struct StartChange {
    struct Water {
        std::string group;
        Instant is;
        Instant was;

        friend bool operator==(const Water&, const Water&) = default;
    };
    struct Developed {
        std::string zone;  ///< "Ada, Root" where there are several heads.
        Seconds is{0};
        Seconds was{0};

        friend bool operator==(const Developed&, const Developed&) = default;
    };

    std::string zone;
    Instant is;  ///< Its start.
    Instant was;
    std::vector<Water> waters;  ///< Those of its coat that come at another time, in the order of the service.
    std::vector<Developed> developed;  ///< Zones that develop for another time, of all heads.
    Instant beginIs;
    Instant beginWas;
    Instant endIs;
    Instant endWas;
    core::measure::Harm offIs;  ///< Harm off the targets.
    core::measure::Harm offWas;
    bool holdsLess = false;  ///< For a smaller part of what applying may take.

    friend bool operator==(const StartChange&, const StartChange&) = default;
};

/// Both are plans of the same services; `zone` is an application of both.
StartChange startChange(const std::vector<core::service::Service>& services,
                        const core::stagger::PlanData& was, const core::stagger::PlanData& is,
                        const TaskId& zone);

}  // namespace app::view
