#pragma once

#include "core/service/service.h"
#include "core/stagger/plan.h"

#include <string>
#include <vector>

namespace app::view {

/// How long applying one zone may take so that the plan still holds.
struct HeldZone {
    std::string name;
    core::measure::Seconds quickest{0};
    core::measure::Seconds slowest{0};

    friend bool operator==(const HeldZone&, const HeldZone&) = default;
};

/// How far a plan holds where applying takes longer or shorter than usual.
struct GiveView {
    enum class Reach {
        Unknown,    ///< Not asked for, or nothing is uncertain.
        UsualOnly,  ///< For the usual lengths and no others.
        Part,       ///< For some of what the service says applying may take.
        All,        ///< For all of that.
    };

    Reach reach = Reach::Unknown;
    std::vector<HeldZone> zones;  ///< Those of the head that are uncertain, in the order of its service.
    bool proved = true;           ///< No plan holds further.

    friend bool operator==(const GiveView&, const GiveView&) = default;
};

/// For the zones of one head, whatever those of the others take meanwhile.
GiveView giveView(const std::vector<core::service::Service>& services, const core::stagger::PlanData& plan,
                  std::size_t head);

}  // namespace app::view
