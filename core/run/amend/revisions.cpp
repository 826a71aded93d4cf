#include "core/run/amend/revisions.h"

#include "core/run/standing.h"
#include "core/run/zone_record.h"
#include "core/service/check.h"

#include <algorithm>

namespace core::run {
namespace {

using service::Coat;

/// Whether nothing that facts could name has gone.
bool hasAllOf(const Coat& coat, const Coat& amended)
{
    if (amended.zones.size() < coat.zones.size() || amended.bowls.size() < coat.bowls.size()
        || amended.groups.size() < coat.groups.size())
        return false;
    for (std::size_t zone = 0; zone < coat.zones.size(); ++zone) {
        if (amended.zones[zone].late.size() < coat.zones[zone].late.size())
            return false;
    }
    return true;
}

bool hasAllOf(const Service& service, const Service& amended)
{
    if (amended.coats.size() < service.coats.size() || amended.crew.hands.size() < service.crew.hands.size())
        return false;
    return std::ranges::equal(service.coats, std::span{amended.coats}.first(service.coats.size()),
                              [](const Coat& coat, const Coat& after) { return hasAllOf(coat, after); });
}

/// The zone of `apply` as it was when it first came up.
const service::Zone& firstOf(const Setup& setup, const TaskId& apply, const service::Zone& now)
{
    if (exists(setup.services, apply))
        return zoneOf(setup.services, apply);
    const auto first = std::ranges::find_if(
        setup.revisions, [&](const std::vector<Service>& services) { return exists(services, apply); });
    return first == setup.revisions.end() ? now : zoneOf(*first, apply);
}

}  // namespace

const std::vector<Service>& servicesAt(const Setup& setup, std::span<const Fact> facts)
{
    if (setup.revisions.empty())
        return setup.services;
    const std::vector<Fact> standing = standingFacts(facts);
    for (std::size_t place = standing.size(); place-- > 0;) {
        const Fact& fact = standing[place];
        const bool known = fact.revision > 0 && fact.revision <= setup.revisions.size();
        if (fact.kind == FactKind::Amended && known)
            return setup.revisions[fact.revision - 1];
    }
    return setup.services;
}

std::vector<Service> withFirstLimits(const Setup& setup, std::vector<Service> services)
{
    for (const TaskId& apply : zonesOf(services)) {
        service::Zone& zone = services[apply.service].coats[apply.coat].zones[apply.item];
        const service::Zone& first = firstOf(setup, apply, zone);
        zone.develop.least = first.develop.least;
        zone.develop.most = first.develop.most;
        zone.firstStrandMost = first.firstStrandMost;
        zone.lastStrandLeast = first.lastStrandLeast;
    }
    return services;
}

std::optional<Sentence> whyNoAmendment(const std::vector<Service>& services,
                                       const std::vector<Service>& amended)
{
    for (const Service& service : amended) {
        if (const std::vector<service::Problem> problems = service::checkService(service); !problems.empty())
            return problems.front().place.empty()
                ? problems.front().what
                : Sentence::worded("%1: %2", problems.front().place, problems.front().what);
    }
    const bool all = amended.size() >= services.size()
        && std::ranges::equal(
                         services, std::span{amended}.first(services.size()),
                         [](const Service& before, const Service& after) { return hasAllOf(before, after); });
    if (!all)
        return Sentence::worded("What a run has begun with cannot be taken out of it. Leave it out instead.");
    return {};
}

}  // namespace core::run
