#pragma once

#include "app/desktop/setup/preparation.h"
#include "app/desktop/wall_clock.h"
#include "core/stagger/plan.h"

/// The list before the start, in words.
namespace app::desktop::preparation_text {

/// "Skin and strand tests"; on wigs and wefts there is no skin.
QString name(Preparing what, const std::vector<core::service::Service>& services);

/// "heard", "skipped"
QString state(const Prepared& said);

/// "Sound: heard", one line.
QString line(const Prepared& said, const std::vector<core::service::Service>& services);

/// Why it was skipped, and when that or the other was said; empty while it is open.
QString detail(const Prepared& said, const WallClock& clock);

/// What it is about, a sentence or two; `order` is that of `mixingOrder`.
QString about(Preparing what, const std::vector<core::service::Service>& services, const QString& order);

/// What the button says that answers it.
QString done(Preparing what);

/// "Root colour 08:00, then Mids toner 08:04": as the plan has them mixed. A bowl without a time for mixing
/// is named at the first application that uses it, as "ready for".
QString mixingOrder(const std::vector<core::service::Service>& services, const core::stagger::PlanData& plan,
                    const WallClock& clock);

/// What is still open, in one sentence; empty where nothing is.
QString open(const Preparation& preparation, const std::vector<core::service::Service>& services);

}  // namespace app::desktop::preparation_text
