#pragma once

#include "app/desktop/wall_clock.h"

#include "core/run/fact.h"
#include "core/run/run.h"

#include <QString>

namespace app::desktop {

/// The last fact that still counts, in words: "Apply Root: started 14:02". Empty where there is none.
QString lastAnswer(const std::vector<core::service::Service>& services,
                   const std::vector<core::run::Fact>& facts, const WallClock& clock);

}  // namespace app::desktop
