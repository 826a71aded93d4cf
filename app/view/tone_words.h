#pragma once

#include <array>
#include <string_view>

namespace app::view {

/// What is often said of a zone's tone at a look, to be picked instead of typed; any other words do as well.
/// Common practice, no source.
constexpr std::array<std::string_view, 8> toneWords{"still orange", "still yellow", "pale yellow",
                                                    "patchy",       "even",         "too warm",
                                                    "turning ashy", "turning green"};

/// What has to be said while heat is on: nothing is worked out from it.
constexpr std::string_view heatCaution = "The windows and alarms stay those without heat: what heat does to "
                                         "them only the product's leaflet says. Where "
                                         "it gives times with heat, go by those.";

}  // namespace app::view
