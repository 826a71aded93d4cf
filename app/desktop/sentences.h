#pragma once

#include "core/measure/sentence.h"

#include <QString>

namespace app::desktop {

/// What core says, in the language of the window: its pattern from the catalogue, and lengths, clock times
/// and numbers put in as the language writes them.
[[nodiscard]] QString inWords(const core::measure::Sentence& sentence);

}  // namespace app::desktop
