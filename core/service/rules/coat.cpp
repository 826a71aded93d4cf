#include "core/service/rules/limits.h"
#include "core/service/rules/rules.h"

#include <algorithm>

namespace core::service::rules {

using measure::Sentence;

namespace {

/// Whether no zone refers to `item`, one of `count`. A zone that refers to nothing
/// that is there has its own problem, and may have meant this one.
bool isUnused(const Coat& coat, std::size_t item, std::size_t count, std::size_t Zone::*reference)
{
    return !coat.zones.empty() && std::ranges::none_of(coat.zones, [&](const Zone& zone) {
        return zone.*reference == item || zone.*reference >= count;
    });
}

void checkBowls(const Coat& coat, const std::string& place, Findings& findings)
{
    const std::string list = inside(place, "bowls");
    if (coat.bowls.empty())
        findings.add(list,
                     Sentence::worded("is empty; list a bowl, or leave the key out for one without mixing"));
    if (!checkCount(findings, list, coat.bowls.size(), mostBowls, Sentence::worded("bowls")))
        return;
    std::vector<Named> named;
    for (std::size_t i = 0; i < coat.bowls.size(); ++i) {
        const Bowl& bowl = coat.bowls[i];
        const std::string at = nth(list, i);
        checkName(findings, inside(at, "name"), bowl.name);
        named.push_back({bowl.name, inside(at, "name")});
        checkLength(findings, inside(at, "mix"), bowl.mix);
        if (bowl.potLife)
            checkTask(findings, inside(at, "pot_life"), *bowl.potLife);
        checkText(findings, inside(at, "note"), bowl.note, longestNote, true);
        if (isUnused(coat, i, coat.bowls.size(), &Zone::bowl))
            findings.add(
                at, Sentence::worded("no zone is applied from this bowl; take it out, or name it in a zone"));
    }
    checkUnique(findings, named, Sentence::worded("bowl"));
}

void checkWater(const RinseGroup& group, const std::string& place, Findings& findings)
{
    if (group.waterEarliest)
        checkMoment(findings, inside(place, "earliest"), *group.waterEarliest);
    if (group.waterLatest)
        checkMoment(findings, inside(place, "latest"), *group.waterLatest);
    if (group.waterEarliest && group.waterLatest && *group.waterLatest < *group.waterEarliest)
        findings.add(inside(place, "latest"), Sentence::worded("is before earliest; swap them"),
                     {inside(place, "earliest"), "zone"});
}

void checkGroups(const Coat& coat, const std::string& place, Findings& findings)
{
    const std::string list = inside(place, "rinse");
    if (coat.groups.empty())
        findings.add(list,
                     Sentence::worded("is empty; list at least one rinse group, such as { \"length\": 5 }"));
    if (!checkCount(findings, list, coat.groups.size(), mostBowls, Sentence::worded("rinse groups")))
        return;
    std::vector<Named> named;
    for (std::size_t i = 0; i < coat.groups.size(); ++i) {
        const RinseGroup& group = coat.groups[i];
        const std::string at = nth(list, i);
        checkName(findings, inside(at, "name"), group.name);
        named.push_back({group.name, inside(at, "name")});
        checkTask(findings, inside(at, "length"), group.rinse);
        checkWater(group, inside(at, "water"), findings);
        if (isUnused(coat, i, coat.groups.size(), &Zone::group))
            findings.add(
                at, Sentence::worded("no zone is rinsed in this group; take it out, or name it in a zone"));
    }
    checkUnique(findings, named, Sentence::worded("rinse group"));
}

void checkZones(const Coat& coat, const std::string& place, Findings& findings)
{
    const std::string list = inside(place, "zones");
    if (coat.zones.empty())
        findings.add(list, Sentence::worded("is empty; list at least one zone"));
    std::vector<Named> named;
    for (std::size_t i = 0; i < coat.zones.size(); ++i) {
        const std::string at = nth(list, i);
        checkName(findings, inside(at, "name"), coat.zones[i].name);
        named.push_back({coat.zones[i].name, inside(at, "name")});
        checkZone(coat, coat.zones[i], at, findings);
    }
    checkUnique(findings, named, Sentence::worded("zone"));
    checkOrder(coat, place, findings);
}

}  // namespace

void checkCoat(const Coat& coat, const std::string& place, Findings& findings)
{
    checkBowls(coat, place, findings);
    checkZones(coat, place, findings);
    checkGroups(coat, place, findings);
    checkLength(findings, inside(place, "dry.hands"), coat.dryHands);
    checkLength(findings, inside(place, "dry.unattended"), coat.dryUnattended);
    checkLength(findings, inside(place, "assess"), coat.assess);
    checkLength(findings, inside(place, "gap.least"), coat.gapLeast);
    checkLength(findings, inside(place, "gap.most"), coat.gapMost);
    if (coat.gapLeast && coat.gapMost && *coat.gapMost < *coat.gapLeast)
        findings.add(inside(place, "gap.most"),
                     Sentence::worded("%1 is less than least %2; raise most or lower least",
                                      minutesText(*coat.gapMost), minutesText(*coat.gapLeast)),
                     {inside(place, "gap.least")});
}

}  // namespace core::service::rules
