#include "core/service/shared_crew.h"

namespace core::service {
namespace {

std::string counted(std::size_t count, const std::string& one, const std::string& many)
{
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

}  // namespace

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

std::string crewDifference(const Crew& here, const Crew& there)
{
    if (here.hands.size() != there.hands.size())
        return counted(here.hands.size(), "pair of hands", "pairs of hands") + " here, "
            + std::to_string(there.hands.size()) + " there";
    for (std::size_t place = 0; place < here.hands.size(); ++place) {
        const Hands& one = here.hands[place];
        const Hands& other = there.hands[place];
        if (one.name != other.name)
            return one.name + " here, " + other.name + " there";
        if (one.away != other.away)
            return one.name + " is away at other times";
        if (one.kinds != other.kinds)
            return one.name + " does other work";
    }
    if (here.basins != there.basins)
        return counted(here.basins, "basin", "basins") + " here, " + std::to_string(there.basins) + " there";
    return {};
}

}  // namespace core::service
