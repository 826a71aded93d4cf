#pragma once

#include "app/desktop/wall_clock.h"
#include "app/view/start_change.h"
#include "core/stagger/start_range.h"

#include <QString>

/// What is said of a start while it is being chosen.
namespace app::desktop::start_text {

/// "Root starts 14:10 instead of 14:00: water 14:50 instead of 14:45; Mids develop 22 min instead of 20 min;
/// done 15:20 instead of 15:15. Every zone gets its target."
QString change(const view::StartChange& change, const WallClock& clock);
/// The same without what becomes of each: "Root starts 14:10 instead of 14:00. Every zone gets its target."
QString briefly(const view::StartChange& change, const WallClock& clock);

/// Why it can go no further: "Root cannot start later than 14:20: ready by the promised time."
QString atLatest(const std::string& zone, const core::stagger::StartRange& range, const WallClock& clock);
QString atEarliest(const std::string& zone, const WallClock& clock, core::measure::Instant start);

/// "With Root not before 14:40 nothing fits: ..."
QString nothingFits(const std::string& zone, core::measure::Instant wanted,
                    const core::stagger::NoPlan& reason, const WallClock& clock);

/// "Root not before 14:10", as a change that can be undone is called; and one that takes that back.
QString kept(const std::string& zone, core::measure::Instant wanted, const WallClock& clock);
QString letGo(const std::string& zone);

}  // namespace app::desktop::start_text
