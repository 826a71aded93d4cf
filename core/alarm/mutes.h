#pragma once

#include "core/alarm/alarm.h"

#include <map>
#include <tuple>

namespace core::alarm {

/// Which alarms are silenced for a while. Each by itself, never for longer than `length`, and only until it
/// becomes another kind: what was muted as a limit that is near sounds once that is passed. What is muted
/// stands and is shown; only its sound waits.
class Mutes {
public:
    /// How long a mute lasts. Half as long for a limit that is passed.
    static constexpr Seconds length{120};
    static Seconds lengthFor(Kind kind);

    /// Whether it was muted: what is muted already is not muted for longer, so it sounds again in between.
    bool mute(const Alarm& alarm, Instant now);
    void unmute(const Alarm& alarm);

    /// When it sounds again; nothing where it is not muted at `now`.
    [[nodiscard]] std::optional<Instant> until(const Alarm& alarm, Instant now) const;

    /// Those of `alarms` that sound.
    [[nodiscard]] std::vector<Alarm> audible(const std::vector<Alarm>& alarms, Instant now) const;

    void forget() { m_until.clear(); }

private:
    using Key = std::tuple<Kind, Subject, stagger::TaskId, run::Prompt::Asks>;
    static Key keyOf(const Alarm& alarm);

    std::map<Key, Instant> m_until;
};

}  // namespace core::alarm
