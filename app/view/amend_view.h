#pragma once

#include "app/view/lane_view.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace app::view {

/// A zone that something can be said of, by its `Apply`.
struct ZoneOption {
    TaskId zone;
    std::string name;

    friend bool operator==(const ZoneOption&, const ZoneOption&) = default;
};

/// Somebody of the crew, by the place there.
struct HandsOption {
    std::size_t place = 0;
    std::string name;

    friend bool operator==(const HandsOption&, const HandsOption&) = default;
};

/// What can be said of a run beside what is asked for, at one moment.
struct AmendView {
    std::vector<ZoneOption> applying;   ///< Being applied, so that it can be stopped.
    std::vector<ZoneOption> dry;        ///< Still to be rinsed together with others of the coat.
    std::vector<ZoneOption> like;       ///< Still to be rinsed, so that there can be a zone more like it.
    std::vector<HandsOption> here;      ///< Who has not gone for good.
    std::optional<ZoneOption> givesUp;  ///< The coat that can be given up, by one of its tasks.
    std::vector<ZoneOption>
        heatOn;  ///< Heat that can be put on, for each head with mixture on the hair, and whose.
    std::vector<ZoneOption> heatOff;  ///< Heat that is on.

    friend bool operator==(const AmendView&, const AmendView&) = default;
};

AmendView amendView(const std::vector<core::service::Service>& services, const core::run::State& state);

}  // namespace app::view
