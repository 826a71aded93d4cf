#include "core/run/limits.h"

#include "core/run/zone_record.h"

#include <algorithm>
#include <tuple>

namespace core::run {
namespace {

std::optional<Instant> expectedWater(const std::vector<Service>& services, const std::vector<Prompt>& prompts,
                                     const TaskId& apply)
{
    const TaskId rinse = rinseOf(services, apply);
    const auto asked = std::ranges::find_if(prompts, [&](const Prompt& prompt) {
        return prompt.asks == Prompt::Asks::Start && prompt.task == rinse;
    });
    if (asked == prompts.end())
        return {};
    return asked->due + zoneOf(services, apply).reach;
}

}  // namespace

std::vector<LimitWatch> limitsAt(const std::vector<Service>& services, const Progress& progress,
                                 const std::vector<Prompt>& prompts, Instant now)
{
    std::vector<LimitWatch> limits;
    for (const TaskId& apply : zonesOf(services)) {
        const service::Zone& zone = zoneOf(services, apply);
        const ZoneRecord record = zoneRecord(services, progress, apply);
        if (!record.isOn(now))
            continue;
        const auto expected = record.water ? record.water : expectedWater(services, prompts, apply);
        const auto watch = [&](Instant at, Sentence what) {
            if (!record.water || *record.water > at)
                limits.push_back({.zone = apply, .at = at, .what = std::move(what), .expected = expected});
        };
        if (record.clockStart)
            watch(*record.clockStart + zone.develop.most,
                  Sentence::worded("at most %1 development", zone.develop.most));
        if (zone.firstStrandMost)
            watch(*record.firstContact + *zone.firstStrandMost,
                  Sentence::worded("first strand at most %1", *zone.firstStrandMost));
    }
    std::ranges::stable_sort(limits, {}, &LimitWatch::at);
    return limits;
}

}  // namespace core::run
