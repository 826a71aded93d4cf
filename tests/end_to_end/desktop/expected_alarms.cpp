#include "tests/end_to_end/desktop/expected_alarms.h"

#include <span>

namespace desk {

using core::alarm::Alarm;
using core::measure::Instant;
using core::measure::Seconds;

std::vector<Expected> alarmsOf(const core::run::Setup& setup, const std::vector<core::run::Fact>& facts,
                               Instant end)
{
    std::vector<Expected> expected;
    std::size_t known = 0;
    for (Instant now = setup.began; now <= end; now += Seconds{1}) {
        while (known < facts.size() && facts[known].recorded <= now)
            ++known;
        const core::run::State state = stateAt(setup, std::span{facts}.first(known), now);
        for (const Alarm& alarm : core::alarm::alarmsAt(state, {}, now)) {
            const Seconds standing = now - alarm.since;
            const bool sounds =
                standing == Seconds{0} || (alarm.every > Seconds{0} && standing % alarm.every == Seconds{0});
            if (sounds)
                expected.push_back({now, alarm.kind, alarm.subject});
        }
    }
    return expected;
}

}  // namespace desk
