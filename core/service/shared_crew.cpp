#include "core/service/shared_crew.h"

namespace core::service {
using measure::Sentence;

bool namesNoCrew(const Crew& crew)
{
    return crew.basins == 1 && crew.hands.size() == 1 && crew.hands.front().away.empty()
        && crew.hands.front().kinds.empty();
}

/// Where nobody says more, the first one's word for the only pair of hands will do.
std::size_t whoseCrew(const std::vector<Service>& services)
{
    for (std::size_t place = 0; place < services.size(); ++place)
        if (!namesNoCrew(services[place].crew))
            return place;
    return 0;
}

Sentence crewDifference(const Crew& here, const Crew& there)
{
    if (here.hands.size() != there.hands.size())
        return here.hands.size() == 1
            ? Sentence::worded("1 pair of hands here, %1 there", there.hands.size())
            : Sentence::worded("%1 pairs of hands here, %2 there", here.hands.size(), there.hands.size());
    for (std::size_t place = 0; place < here.hands.size(); ++place) {
        const Hands& one = here.hands[place];
        const Hands& other = there.hands[place];
        if (one.name != other.name)
            return Sentence::worded("%1 here, %2 there", one.name, other.name);
        if (one.away != other.away)
            return Sentence::worded("%1 is away at other times", one.name);
        if (one.kinds != other.kinds)
            return Sentence::worded("%1 does other work", one.name);
    }
    if (here.basins != there.basins)
        return here.basins == 1 ? Sentence::worded("1 basin here, %1 there", there.basins)
                                : Sentence::worded("%1 basins here, %2 there", here.basins, there.basins);
    return {};
}

}  // namespace core::service
