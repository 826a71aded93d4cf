#include "core/stagger/head_name.h"

namespace core::stagger {
namespace {

std::string ownName(const service::Service& service)
{
    return service.head.name.empty() ? service.name : service.head.name;
}

}  // namespace

std::string headName(const std::vector<service::Service>& services, std::size_t head)
{
    const std::string name = ownName(services.at(head));
    if (name.empty())
        return "Head " + std::to_string(head + 1);
    std::size_t before = 0;
    std::size_t all = 0;
    for (std::size_t place = 0; place < services.size(); ++place) {
        if (ownName(services[place]) != name)
            continue;
        ++all;
        before += place <= head ? 1 : 0;
    }
    return all == 1 ? name : name + " " + std::to_string(before);
}

}  // namespace core::stagger
