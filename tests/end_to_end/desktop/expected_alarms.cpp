#include "tests/end_to_end/desktop/expected_alarms.h"

#include "core/alarm/call.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace desk {

using core::alarm::Alarm;
using core::alarm::Call;
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
        for (const Call& call : core::alarm::callsOf(core::alarm::alarmsAt(state, {}, now), {})) {
            const Alarm lead = call.lead();
            const bool repeats = lead.every > Seconds{0} && (now - lead.since) % lead.every == Seconds{0};
            const bool joins = std::ranges::find(call.alarms, now, &Alarm::since) != call.alarms.end();
            if (repeats || joins)
                expected.push_back({now, lead.kind, lead.subject, lead.voice});
        }
    }
    return expected;
}

std::string named(const Expected& expected, double at)
{
    return "voice " + std::to_string(expected.voice) + " kind "
        + std::to_string(static_cast<int>(expected.kind)) + " subject "
        + std::to_string(static_cast<int>(expected.subject)) + " at " + std::to_string(at) + " s";
}

std::string around(const std::vector<capture::Heard>& heard, double at)
{
    std::string text = "heard about then:";
    for (const capture::Heard& found : heard)
        if (std::abs(found.at - at) < 1.5)
            text += " [voice " + std::to_string(static_cast<int>(found.voice)) + " kind "
                + std::to_string(static_cast<int>(found.kind)) + " subject "
                + std::to_string(static_cast<int>(found.subject)) + " at " + std::to_string(found.at) + ']';
    return text;
}

}  // namespace desk
