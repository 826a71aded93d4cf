#pragma once

#include "core/alarm/call.h"

#include <cstdint>
#include <map>
#include <tuple>
#include <vector>

namespace app::session {

/// Remembers which alarms were heard and when, so that each call sounds once when it begins, once when
/// another alarm joins it and once for each of its repeats, however often one looks.
class Sounding {
public:
    /// Those of `standing` that begin now, or grow, or are due for another repeat.
    std::vector<core::alarm::Call> heardAt(core::measure::Instant now,
                                           const std::vector<core::alarm::Call>& standing);

    void forget() { m_heard.clear(); }

private:
    using Key =
        std::tuple<core::alarm::Kind, core::alarm::Subject, core::stagger::TaskId, core::run::Prompt::Asks>;
    struct Heard {
        core::measure::Instant since;  ///< What its repeats were counted from.
        core::measure::Instant last;
        std::int64_t repeats = 0;
    };
    [[nodiscard]] bool sounds(const core::alarm::Call& call, core::measure::Instant now) const;
    static Key keyOf(const core::alarm::Alarm& alarm);
    static bool isDueAgain(const core::alarm::Alarm& alarm, core::measure::Instant now, const Heard& before);

    std::map<Key, Heard> m_heard;  ///< Of what stands.
};

}  // namespace app::session
