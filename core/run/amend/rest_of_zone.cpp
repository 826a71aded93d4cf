#include "core/run/amend/rest_of_zone.h"

#include "core/service/edits.h"

#include <algorithm>

namespace core::run {
namespace {

using measure::Seconds;

/// Nobody knows how much of a zone is left. It is taken to be what is left of the time, but going on takes a
/// minute at the least.
constexpr Seconds leastLeft{60};

service::Application leftOf(const service::Application& whole, Seconds done)
{
    service::Application left;
    left.quickest = std::max(leastLeft, whole.quickest - done);
    left.usual = std::max(left.quickest, whole.usual - done);
    left.slowest = std::max(left.usual, whole.slowest - done);
    return left;
}

}  // namespace

std::vector<service::Service> withRestOf(std::vector<service::Service> services,
                                         const stagger::Progress& progress, const stagger::TaskId& apply,
                                         measure::Instant until)
{
    service::Coat& coat = services[apply.service].coats[apply.coat];
    const stagger::TaskProgress* begun = progress.find(apply);
    service::Zone rest = coat.zones[apply.item];
    std::vector<std::string> taken;
    for (const service::Zone& zone : coat.zones)
        taken.push_back(zone.name);
    rest.name = service::freeName(rest.name + ", the rest", taken);
    rest.apply = leftOf(rest.apply, begun ? until - begun->start : Seconds{0});
    rest.after = {{.zone = apply.item, .longestGap = {}}};
    rest.late.clear();
    rest.notBefore.reset();  // It has been begun.
    coat.zones.push_back(std::move(rest));
    return services;
}

}  // namespace core::run
