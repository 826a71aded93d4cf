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

bool Hands::does(Work work) const
{
    return kinds.empty() || std::ranges::find(kinds, work) != kinds.end();
}

}  // namespace core::service
