#pragma once

#include <QtGlobal>

#include <array>
#include <string_view>

namespace app::view {

/// What is often said of a zone's tone at a look, to be picked instead of typed; any other words do as well.
/// Common practice, no source.
constexpr std::array<std::string_view, 8> toneWords{
    QT_TRANSLATE_NOOP("Tones", "still orange"), QT_TRANSLATE_NOOP("Tones", "still yellow"),
    QT_TRANSLATE_NOOP("Tones", "pale yellow"),  QT_TRANSLATE_NOOP("Tones", "patchy"),
    QT_TRANSLATE_NOOP("Tones", "even"),         QT_TRANSLATE_NOOP("Tones", "too warm"),
    QT_TRANSLATE_NOOP("Tones", "turning ashy"), QT_TRANSLATE_NOOP("Tones", "turning green")};

/// What has to be said while heat is on: nothing is worked out from it.
constexpr std::string_view heatCaution = "The windows and alarms stay those without heat: what heat does to "
                                         "them only the product's leaflet says. Where "
                                         "it gives times with heat, go by those.";

}  // namespace app::view
