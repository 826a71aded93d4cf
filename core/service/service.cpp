#include "core/service/service.h"

#include <algorithm>

namespace core::service {

std::vector<Seconds> Looks::moments() const
{
    std::vector<Seconds> moments;
    for (Seconds moment = first; moment < until && moments.size() < mostLooks; moment += *every) {
        moments.push_back(moment);
        if (!every)
            break;
    }
    return moments;
}

Seconds defaultTolerance(std::optional<Seconds> every)
{
    constexpr Seconds most{120};
    return every ? std::min(most, *every / 2) : most;
}

measure::Harm Zone::harmOf(Seconds development) const
{
    const std::int64_t past = (development - develop.target).count();
    return {past > 0 ? past * over.hundredths : -past * under.hundredths};
}

bool Coat::namesTimes() const
{
    return std::ranges::any_of(
               groups, [](const RinseGroup& group) { return group.waterEarliest || group.waterLatest; })
        || std::ranges::any_of(zones, [](const Zone& zone) { return zone.notBefore.has_value(); });
}

bool Hands::does(Work work) const
{
    return kinds.empty() || std::ranges::find(kinds, work) != kinds.end();
}

}  // namespace core::service
