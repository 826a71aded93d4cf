#include "core/run/amend/amendment_text.h"

#include "core/run/amend/amend.h"
#include "core/run/amend/revisions.h"
#include "core/run/changes.h"
#include "core/stagger/head_name.h"

#include <algorithm>

namespace core::run {
namespace {

using service::Coat;
using service::Hands;
using service::Service;
using service::Zone;

/// Gathers what differs between two states of the services.
class Differences {
public:
    Differences(const std::vector<Service>& before, const std::vector<Service>& after,
                const measure::TimeZones& zones)
        : m_zones{zones}
    {
        if (!before.empty() && !after.empty())
            crew(before.front(), after.front());
        for (std::size_t place = 0; place < std::min(before.size(), after.size()); ++place) {
            const std::size_t known = m_all.size();
            service(before[place], after[place]);
            for (std::size_t mine = known; after.size() > 1 && mine < m_all.size(); ++mine)
                m_all[mine] = Sentence::worded("%1, %2", stagger::headName(after, place), m_all[mine]);
        }
    }

    [[nodiscard]] std::vector<Sentence> all() && { return std::move(m_all); }

private:
    [[nodiscard]] measure::LocalTime clock(const Service& service, Instant moment) const
    {
        return clockTime(service, moment, m_zones);
    }

    void crew(const Service& before, const Service& after)
    {
        for (std::size_t place = 0; place < after.crew.hands.size(); ++place) {
            const Hands& hands = after.crew.hands[place];
            if (place >= before.crew.hands.size())
                m_all.push_back(Sentence::worded("%1 comes to help", hands.name));
            else
                away(after, before.crew.hands[place], hands);
        }
    }

    void away(const Service& service, const Hands& before, const Hands& after)
    {
        for (const measure::Interval& away : after.away) {
            if (std::ranges::find(before.away, away) != before.away.end())
                continue;
            if (hasGone({.name = {}, .away = {away}, .kinds = {}}, away.from))
                m_all.push_back(Sentence::worded("%1 has gone at %2", after.name, clock(service, away.from)));
            else
                m_all.push_back(Sentence::worded("%1 is away from %2 to %3", after.name,
                                                 clock(service, away.from), clock(service, away.until)));
        }
    }

    void service(const Service& before, const Service& after)
    {
        if (before.readyBy != after.readyBy && after.readyBy)
            m_all.push_back(Sentence::worded("ready by %1", clock(after, *after.readyBy)));
        for (std::size_t place = 0; place < std::min(before.coats.size(), after.coats.size()); ++place)
            coat(after, before.coats[place], after.coats[place]);
    }

    void coat(const Service& service, const Coat& before, const Coat& after)
    {
        for (std::size_t place = 0; place < after.zones.size(); ++place) {
            if (place >= before.zones.size())
                m_all.push_back(Sentence::worded("%1 is a zone more", after.zones[place].name));
            else
                zone(service, after, before.zones[place], after.zones[place]);
        }
        for (std::size_t place = 0; place < std::min(before.bowls.size(), after.bowls.size()); ++place) {
            const auto& pot = after.bowls[place].potLife;
            if (pot != before.bowls[place].potLife && pot)
                m_all.push_back(Sentence::worded("%1: used for up to %2", after.bowls[place].name, *pot));
        }
        for (std::size_t place = 0; place < std::min(before.groups.size(), after.groups.size()); ++place)
            water(service, before.groups[place], after.groups[place]);
    }

    void water(const Service& service, const service::RinseGroup& before, const service::RinseGroup& after)
    {
        if (before.waterEarliest != after.waterEarliest && after.waterEarliest)
            m_all.push_back(
                Sentence::worded("water of %1 from %2", after.name, clock(service, *after.waterEarliest)));
        if (before.waterLatest != after.waterLatest && after.waterLatest)
            m_all.push_back(
                Sentence::worded("water of %1 until %2", after.name, clock(service, *after.waterLatest)));
    }

    void zone(const Service& service, const Coat& coat, const Zone& before, const Zone& after)
    {
        const auto length = [&](const Sentence& what, std::optional<Seconds> was, std::optional<Seconds> is) {
            if (was == is || !is)
                return;
            m_all.push_back(was ? Sentence::worded("%1: %2 %3 instead of %4", after.name, what, *is, *was)
                                : Sentence::worded("%1: %2 %3", after.name, what, *is));
        };
        if (before.notBefore != after.notBefore)
            m_all.push_back(after.notBefore ? Sentence::worded("%1 not before %2", after.name,
                                                               clock(service, *after.notBefore))
                                            : Sentence::worded("%1 as soon as it is best", after.name));
        if (before.group != after.group)
            m_all.push_back(
                Sentence::worded("%1 is rinsed as %2", after.name, coat.groups.at(after.group).name));
        length(Sentence::worded("develops at least"), before.develop.least, after.develop.least);
        length(Sentence::worded("target"), before.develop.target, after.develop.target);
        length(Sentence::worded("develops at most"), before.develop.most, after.develop.most);
        length(Sentence::worded("first strand at most"), before.firstStrandMost, after.firstStrandMost);
        length(Sentence::worded("last strand at least"), before.lastStrandLeast, after.lastStrandLeast);
        if (before.looks != after.looks)
            m_all.push_back(Sentence::worded("%1: other times of looks", after.name));
        if (before.late != after.late)
            m_all.push_back(Sentence::worded("%1: other times of its late jobs", after.name));
        if (before.after != after.after)
            m_all.push_back(Sentence::worded("%1: another gap after the zone before", after.name));
    }

    const measure::TimeZones& m_zones;
    std::vector<Sentence> m_all;
};

/// What the facts that were told with it say: applying that stopped, or what is left out.
Sentence textOfFacts(const std::vector<Service>& services, std::span<const Fact> facts, const Fact& amendment)
{
    const auto withIt = [&](FactKind kind, std::optional<stagger::TaskKind> task) {
        return std::ranges::find_if(facts, [&](const Fact& fact) {
            return fact.revision == amendment.revision && fact.kind == kind
                && (!task || fact.task.kind == *task);
        });
    };
    if (const auto stopped = withIt(FactKind::Finished, stagger::TaskKind::Apply); stopped != facts.end())
        return Sentence::worded("applying %1 stops before it is done",
                                services.at(stopped->task.service)
                                    .coats.at(stopped->task.coat)
                                    .zones.at(stopped->task.item)
                                    .name);
    if (const auto dropped = withIt(FactKind::Dropped, std::nullopt); dropped != facts.end())
        return Sentence::worded("%1: something is left out",
                                services.at(dropped->task.service).coats.at(dropped->task.coat).name);
    return {};
}

}  // namespace

Sentence amendmentText(const Setup& setup, std::span<const Fact> facts, std::size_t place,
                       const measure::TimeZones& zones)
{
    const Fact& amendment = facts[place];
    if (amendment.revision == 0 || amendment.revision > setup.revisions.size())
        return {};
    const std::vector<Service>& before = servicesAt(setup, facts.first(place));
    const std::vector<Service>& after = setup.revisions[amendment.revision - 1];
    std::vector<Sentence> all = Differences{before, after, zones}.all();
    if (Sentence told = textOfFacts(after, facts, amendment); !told.empty())
        all.insert(all.begin(), std::move(told));
    return all.empty() ? Sentence{} : Sentence::joined(all, "; ");
}

}  // namespace core::run
