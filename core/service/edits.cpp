#include "core/service/edits.h"

#include <algorithm>

namespace core::service {

std::string freeName(const std::string& name, const std::vector<std::string>& taken)
{
    std::string free = name;
    for (int number = 2; std::ranges::find(taken, free) != taken.end(); ++number)
        free = name + " " + std::to_string(number);
    return free;
}

void giveOwnGroup(Coat& coat, std::size_t zone)
{
    Zone& leaving = coat.zones[zone];
    std::vector<std::string> taken;
    for (const RinseGroup& group : coat.groups)
        taken.push_back(group.name);
    RinseGroup own{.name = freeName(leaving.name + " alone", taken),
                   .rinse = coat.groups[leaving.group].rinse,
                   .waterEarliest = {},
                   .waterLatest = {}};
    leaving.group = coat.groups.size();
    leaving.reach = Seconds{0};
    coat.groups.push_back(std::move(own));
}

}  // namespace core::service
