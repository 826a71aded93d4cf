#include "core/service/rules/limits.h"
#include "core/service/rules/rules.h"

namespace core::service::rules {

using measure::Sentence;

namespace {

void checkPromise(const Service& service, Findings& findings)
{
    checkLength(findings, "buffer", service.buffer);
    if (service.notBefore)
        checkMoment(findings, "not_before", *service.notBefore);
    if (service.readyBy)
        checkMoment(findings, "ready_by", *service.readyBy);
    if (service.notBefore && service.readyBy && *service.readyBy - service.buffer <= *service.notBefore)
        findings.add("ready_by",
                     Sentence::worded("is not after not_before by more than the buffer; make it later"),
                     {"not_before", "buffer", "zone"});
}

void checkCoats(const Service& service, Findings& findings)
{
    if (service.coats.empty())
        findings.add("coats", Sentence::worded("is empty; list at least one coat"));
    if (!checkCount(findings, "coats", service.coats.size(), mostCoats, Sentence::worded("coats")))
        return;
    std::size_t zones = 0;
    for (const Coat& coat : service.coats)
        zones += coat.zones.size();
    if (!checkCount(findings, "coats", zones, mostZones, Sentence::worded("zones in all")))
        return;
    std::vector<Named> named;
    for (std::size_t i = 0; i < service.coats.size(); ++i) {
        const Coat& coat = service.coats[i];
        const std::string place = nth("coats", i);
        checkName(findings, inside(place, "name"), coat.name);
        named.push_back({coat.name, inside(place, "name")});
        checkCoat(coat, place, findings);
        if (i + 1 == service.coats.size() && (coat.gapLeast || coat.gapMost))
            findings.add(inside(place, "gap"),
                         Sentence::worded("leads to the next coat, and this is the last one; take it out"));
    }
    checkUnique(findings, named, Sentence::worded("coat"));
}

}  // namespace

void applyRules(const Service& service, Findings& findings)
{
    checkName(findings, "name", service.name);
    if (service.timeZone.empty())
        findings.add("zone", Sentence::worded("is empty; use an IANA name such as \"Europe/London\""));
    checkText(findings, "head.name", service.head.name, longestName, false);
    if (service.head.piecesComeApart && service.head.kind != HeadKind::Wefts)
        findings.add("head.comes_apart",
                     Sentence::worded("only wefts come apart; make it false, or the kind \"wefts\""),
                     {"head.kind"});
    checkCrew(service, findings);
    checkPromise(service, findings);
    checkCoats(service, findings);
}

}  // namespace core::service::rules
