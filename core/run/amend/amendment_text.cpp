#include "core/run/amend/amendment_text.h"

#include "core/run/amend/amend.h"
#include "core/run/amend/revisions.h"
#include "core/run/changes.h"
#include "core/stagger/head_name.h"

#include <algorithm>

namespace core::run {
namespace {

using measure::lengthText;
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
                m_all[mine] = stagger::headName(after, place) + ", " + m_all[mine];
        }
    }

    [[nodiscard]] std::vector<std::string> all() && { return std::move(m_all); }

private:
    [[nodiscard]] std::string clock(const Service& service, Instant moment) const
    {
        return clockTime(service, moment, m_zones);
    }

    void crew(const Service& before, const Service& after)
    {
        for (std::size_t place = 0; place < after.crew.hands.size(); ++place) {
            const Hands& hands = after.crew.hands[place];
            if (place >= before.crew.hands.size())
                m_all.push_back(hands.name + " comes to help");
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
                m_all.push_back(after.name + " has gone at " + clock(service, away.from));
            else
                m_all.push_back(after.name + " is away from " + clock(service, away.from) + " to "
                                + clock(service, away.until));
        }
    }

    void service(const Service& before, const Service& after)
    {
        if (before.readyBy != after.readyBy && after.readyBy)
            m_all.push_back("ready by " + clock(after, *after.readyBy));
        for (std::size_t place = 0; place < std::min(before.coats.size(), after.coats.size()); ++place)
            coat(after, before.coats[place], after.coats[place]);
    }

    void coat(const Service& service, const Coat& before, const Coat& after)
    {
        for (std::size_t place = 0; place < after.zones.size(); ++place) {
            if (place >= before.zones.size())
                m_all.push_back(after.zones[place].name + " is a zone more");
            else
                zone(after, before.zones[place], after.zones[place]);
        }
        for (std::size_t place = 0; place < std::min(before.bowls.size(), after.bowls.size()); ++place) {
            const auto& pot = after.bowls[place].potLife;
            if (pot != before.bowls[place].potLife && pot)
                m_all.push_back(after.bowls[place].name + ": used for up to " + lengthText(*pot));
        }
        for (std::size_t place = 0; place < std::min(before.groups.size(), after.groups.size()); ++place)
            water(service, before.groups[place], after.groups[place]);
    }

    void water(const Service& service, const service::RinseGroup& before, const service::RinseGroup& after)
    {
        if (before.waterEarliest != after.waterEarliest && after.waterEarliest)
            m_all.push_back("water of " + after.name + " from " + clock(service, *after.waterEarliest));
        if (before.waterLatest != after.waterLatest && after.waterLatest)
            m_all.push_back("water of " + after.name + " until " + clock(service, *after.waterLatest));
    }

    void zone(const Coat& coat, const Zone& before, const Zone& after)
    {
        const auto length = [&](const char* what, std::optional<Seconds> was, std::optional<Seconds> is) {
            if (was == is || !is)
                return;
            std::string text = after.name + ": " + what + " " + lengthText(*is);
            if (was)
                text += " instead of " + lengthText(*was);
            m_all.push_back(std::move(text));
        };
        if (before.group != after.group)
            m_all.push_back(after.name + " is rinsed as " + coat.groups.at(after.group).name);
        length("develops at least", before.develop.least, after.develop.least);
        length("target", before.develop.target, after.develop.target);
        length("develops at most", before.develop.most, after.develop.most);
        length("first strand at most", before.firstStrandMost, after.firstStrandMost);
        length("last strand at least", before.lastStrandLeast, after.lastStrandLeast);
        if (before.looks != after.looks)
            m_all.push_back(after.name + ": other times of looks");
        if (before.late != after.late)
            m_all.push_back(after.name + ": other times of its late jobs");
        if (before.after != after.after)
            m_all.push_back(after.name + ": another gap after the zone before");
    }

    const measure::TimeZones& m_zones;
    std::vector<std::string> m_all;
};

/// What the facts that were told with it say: applying that stopped, or what is left out.
std::string textOfFacts(const std::vector<Service>& services, std::span<const Fact> facts,
                        const Fact& amendment)
{
    const auto withIt = [&](FactKind kind, std::optional<stagger::TaskKind> task) {
        return std::ranges::find_if(facts, [&](const Fact& fact) {
            return fact.revision == amendment.revision && fact.kind == kind
                && (!task || fact.task.kind == *task);
        });
    };
    if (const auto stopped = withIt(FactKind::Finished, stagger::TaskKind::Apply); stopped != facts.end())
        return "applying "
            + services.at(stopped->task.service)
                  .coats.at(stopped->task.coat)
                  .zones.at(stopped->task.item)
                  .name
            + " stops before it is done";
    if (const auto dropped = withIt(FactKind::Dropped, std::nullopt); dropped != facts.end())
        return services.at(dropped->task.service).coats.at(dropped->task.coat).name
            + ": something is left out";
    return {};
}

}  // namespace

std::string amendmentText(const Setup& setup, std::span<const Fact> facts, std::size_t place,
                          const measure::TimeZones& zones)
{
    const Fact& amendment = facts[place];
    if (amendment.revision == 0 || amendment.revision > setup.revisions.size())
        return {};
    const std::vector<Service>& before = servicesAt(setup, facts.first(place));
    const std::vector<Service>& after = setup.revisions[amendment.revision - 1];
    std::string text = textOfFacts(after, facts, amendment);
    for (const std::string& each : Differences{before, after, zones}.all())
        text += (text.empty() ? "" : "; ") + each;
    return text;
}

}  // namespace core::run
