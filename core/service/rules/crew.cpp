#include "core/service/rules/limits.h"
#include "core/service/rules/rules.h"
#include "core/service/words.h"

#include <algorithm>

namespace core::service::rules {

using measure::Sentence;

namespace {

void checkAway(const Hands& hands, const std::string& place, Findings& findings)
{
    const std::string list = inside(place, "away");
    if (!checkCount(findings, list, hands.away.size(), mostAway, Sentence::worded("times away")))
        return;
    for (std::size_t i = 0; i < hands.away.size(); ++i) {
        const std::string at = nth(list, i);
        const Interval& away = hands.away[i];
        checkMoment(findings, inside(at, "from"), away.from);
        checkMoment(findings, inside(at, "until"), away.until);
        if (away.until <= away.from)
            findings.add(inside(at, "until"),
                         Sentence::worded("is not after from; a time away ends later than it starts"),
                         {inside(at, "from"), "zone"});
        if (i > 0 && away.from < hands.away[i - 1].until)
            findings.add(
                inside(at, "from"),
                Sentence::worded("is before the end of the time away above; list them in order, without "
                                 "overlap"),
                {nth(list, i - 1), "zone"});
    }
}

void checkKinds(const Hands& hands, const std::string& place, Findings& findings)
{
    for (std::size_t i = 0; i < hands.kinds.size(); ++i) {
        const auto earlier = hands.kinds.begin() + static_cast<std::ptrdiff_t>(i);
        if (std::find(hands.kinds.begin(), earlier, hands.kinds[i]) != earlier)
            findings.add(nth(inside(place, "does"), i),
                         Sentence::worded("%1 is listed twice; take one out",
                                          json::quoted(workWords[static_cast<std::size_t>(hands.kinds[i])])),
                         {inside(place, "does")});
    }
}

/// Looks are left out: hands that apply make those that fall due meanwhile.
bool isNeeded(const Service& service, Work work)
{
    return std::ranges::any_of(service.coats, [work](const Coat& coat) {
        switch (work) {
        case Work::Mix:
            return std::ranges::any_of(coat.bowls, [](const Bowl& bowl) { return bowl.mix > Seconds{0}; });
        case Work::Late:
            return std::ranges::any_of(coat.zones, [](const Zone& zone) { return !zone.late.empty(); });
        case Work::Dry: return coat.dryHands > Seconds{0};
        case Work::Assess: return coat.assess > Seconds{0};
        case Work::Apply: return !coat.zones.empty();
        case Work::Rinse: return !coat.groups.empty();
        case Work::Look: return false;
        }
        return false;
    });
}

void checkSomebodyDoesIt(const Service& service, Findings& findings)
{
    for (std::size_t kind = 0; kind < workWords.size(); ++kind) {
        const Work work = static_cast<Work>(kind);
        const bool isDone =
            std::ranges::any_of(service.crew.hands, [work](const Hands& hands) { return hands.does(work); });
        if (!isDone && isNeeded(service, work))
            findings.add(
                "crew.hands",
                Sentence::worded("nobody does %1, and the service needs it; add it to the does of somebody",
                                 json::quoted(workWords[kind])));
    }
}

}  // namespace

void checkCrew(const Service& service, Findings& findings)
{
    const Crew& crew = service.crew;
    if (crew.basins < 1)
        findings.add("crew.basins", Sentence::worded("0 is too few; at least one basin is needed"));
    checkCount(findings, "crew.basins", crew.basins, mostBasins, Sentence::worded("basins"));
    if (crew.hands.empty())
        findings.add("crew.hands", Sentence::worded("is empty; at least one pair of hands is needed"));
    if (crew.hands.empty()
        || !checkCount(findings, "crew.hands", crew.hands.size(), mostHands,
                       Sentence::worded("pairs of hands")))
        return;
    std::vector<Named> named;
    for (std::size_t i = 0; i < crew.hands.size(); ++i) {
        const std::string place = nth("crew.hands", i);
        checkName(findings, inside(place, "name"), crew.hands[i].name);
        named.push_back({crew.hands[i].name, inside(place, "name")});
        checkAway(crew.hands[i], place, findings);
        checkKinds(crew.hands[i], place, findings);
    }
    checkUnique(findings, named, Sentence::worded("pair of hands"));
    checkSomebodyDoesIt(service, findings);
}

}  // namespace core::service::rules
