#pragma once

#include "core/stagger/plan.h"

#include <optional>
#include <vector>

/// The greatest give by trying everything: every whole second for every start, every sharing out of hands.
/// For services of one coat with one bowl, one rinse group and windows from the end of application, a few
/// seconds long. The network of each is written here from the rules, apart from the planner's.
namespace core::stagger {

struct TriedOut {
    int give = 0;  ///< In percent.
    Worth worth;
    std::vector<int> starts;  ///< In the order of tasks; looks that are not due are left out.
};

/// The best plan, or none.
std::optional<TriedOut> giveByTrying(const service::Service& service);

}  // namespace core::stagger
