#include "core/stagger/cures/edit.h"

#include "core/service/edits.h"
#include "core/service/minutes.h"

#include <algorithm>

namespace core::stagger {
namespace {

/// How much a minute past each limit counts, in hundredths: as much as its harm
/// where limits may be broken, so that both put changes in the same order.
constexpr std::int64_t longer = 1000;
constexpr std::int64_t shorter = 400;
constexpr std::int64_t looser = 50;
/// Going on without waiting counts as much as twenty minutes of a looser gap.
constexpr std::int64_t outOfOrder = 20 * looser;
/// What somebody would like is given up before anything else.
constexpr std::int64_t soonerThanWanted = 25;
/// A rinse more: what it takes, a minute.
constexpr std::int64_t moreWork = 100;

service::Zone& zoneIn(Services& services, const TaskId& id)
{
    return services[id.service].coats[id.coat].zones[id.item];
}

const service::Zone& zoneIn(const Services& services, const TaskId& id)
{
    return services[id.service].coats[id.coat].zones[id.item];
}

Sentence leaflet()
{
    return Sentence::worded("Only if the product's leaflet allows it.");
}

TaskId applyOf(TaskId id)
{
    id.kind = TaskKind::Apply;
    id.part = 0;
    return id;
}

Edit windowEdit(const Question& question, const TaskId& zone, CureKind kind)
{
    const std::string name = zoneIn(question.services, zone).name;
    const bool isMost = kind == CureKind::LongerMost;
    return lengthEdit(question,
                      {.kind = kind,
                       .task = zone,
                       .grows = isMost,
                       .rate = isMost ? longer : shorter,
                       .length = [zone, isMost](Services& services) -> Seconds& {
                           service::Window& window = zoneIn(services, zone).develop;
                           return isMost ? window.most : window.least;
                       },
                       .words =
                           [name, isMost](Seconds wanted, Seconds now) {
                               return isMost
                                   ? Sentence::worded("Let %1 develop up to %2 (now %3)", name, wanted, now)
                                   : Sentence::worded("Let %1 be rinsed from %2 on (now from %3)", name,
                                                      wanted, now);
                           },
                       .note = leaflet()});
}

Edit strandEdit(const Question& question, const TaskId& zone, CureKind kind)
{
    const std::string name = zoneIn(question.services, zone).name;
    const bool isFirst = kind == CureKind::LongerFirstStrand;
    return lengthEdit(
        question,
        {.kind = kind,
         .task = zone,
         .grows = isFirst,
         .rate = isFirst ? longer : shorter,
         .length = [zone, isFirst](Services& services) -> Seconds& {
             service::Zone& asked = zoneIn(services, zone);
             return isFirst ? *asked.firstStrandMost : *asked.lastStrandLeast;
         },
         .words =
             [name, isFirst](Seconds wanted, Seconds now) {
                 return isFirst
                     ? Sentence::worded("Let the first strand of %1 carry the mixture up to %2 (now %3)",
                                        name, wanted, now)
                     : Sentence::worded("Let the last strand of %1 carry the mixture at least %2 (now %3)",
                                        name, wanted, now);
             },
         .note = leaflet()});
}

/// A look that was over before the application ended may come to be due with a larger
/// tolerance, so what fits with less may not fit with more.
Edit looksEdit(const Question& question, const TaskId& zone)
{
    constexpr Seconds longestTried{30 * 60};
    const service::Zone& asked = zoneIn(question.services, zone);
    const bool mayComeDue = asked.clock == service::ClockStart::FirstContact;
    const Seconds longest = mayComeDue ? asked.looks->tolerance + longestTried : service::longestLength;
    Edit edit = lengthEdit(
        question,
        {.kind = CureKind::LooserLooks,
         .task = zone,
         .rate = looser,
         .length = [zone](Services& services) -> Seconds& { return zoneIn(services, zone).looks->tolerance; },
         .words =
             [name = asked.name](Seconds wanted, Seconds now) {
                 return Sentence::worded("Look at %1 up to %2 early or late (now %3)", name, wanted, now);
             },
         .longest = std::min(longest, asked.looks->every.value_or(longest))});
    edit.tryEach = mayComeDue;
    return edit;
}

Edit lateEdit(const Question& question, const TaskId& late)
{
    const service::Zone& asked = zoneIn(question.services, late);
    return lengthEdit(
        question,
        {.kind = CureKind::LooserLateJob,
         .task = late,
         .rate = looser,
         .length = [late](Services& services) -> Seconds& {
             return zoneIn(services, late).late[late.part].tolerance;
         },
         .words =
             [name = asked.late[late.part].name + " " + asked.name](Seconds wanted, Seconds now) {
                 return Sentence::worded("Let %1 be up to %2 early or late (now %3)", name, wanted, now);
             }});
}

Edit orderEdit(const Question& question, const TaskId& zone, std::size_t place)
{
    const service::Zone& asked = zoneIn(question.services, zone);
    const std::string& before =
        question.services[zone.service].coats[zone.coat].zones[asked.after[place].zone].name;
    const Sentence words = Sentence::worded("Apply %1 without waiting for %2", asked.name, before);
    return plainEdit({.kind = CureKind::LetGoOrder,
                      .service = zone.service,
                      .task = zone,
                      .what = placed(question.services, zone, words)},
                     perMinute(outOfOrder, std::chrono::minutes{1}), [zone, place](Services& services) {
                         auto& after = zoneIn(services, zone).after;
                         after.erase(after.begin() + static_cast<std::ptrdiff_t>(place));
                     });
}

Edit gapEdit(const Question& question, const TaskId& zone, std::size_t place)
{
    const service::Zone& asked = zoneIn(question.services, zone);
    const std::string before =
        question.services[zone.service].coats[zone.coat].zones[asked.after[place].zone].name;
    return lengthEdit(question,
                      {.kind = CureKind::LongerBlendGap,
                       .task = zone,
                       .rate = looser,
                       .length = [zone, place](Services& services) -> Seconds& {
                           return *zoneIn(services, zone).after[place].longestGap;
                       },
                       .words =
                           [name = asked.name, before](Seconds wanted, Seconds now) {
                               return Sentence::worded("Apply %1 up to %2 after %3 (now %4)", name, wanted,
                                                       before, now);
                           },
                       .note = Sentence::worded("See that the blend line can wait that long.")});
}

/// Whether the zone could still leave its group, and would leave it to somebody.
bool canBeRinsedAlone(const Question& question, const TaskId& zone)
{
    const service::Zone& asked = zoneIn(question.services, zone);
    const service::Coat& coat = question.services[zone.service].coats[zone.coat];
    const auto sharing = std::ranges::count(coat.zones, asked.group, &service::Zone::group);
    TaskId rinse = zone;
    rinse.kind = TaskKind::Rinse;
    rinse.item = asked.group;
    TaskId alone = zone;
    alone.kind = TaskKind::RinseAlone;
    return asked.alone && sharing > 1 && question.progress.find(rinse) == nullptr
        && question.progress.find(alone) == nullptr;
}

Edit aloneEdit(const Question& question, const TaskId& zone)
{
    const service::Coat& coat = question.services[zone.service].coats[zone.coat];
    const service::Zone& asked = zoneIn(question.services, zone);
    return plainEdit(
        {.kind = CureKind::RinseAlone,
         .service = zone.service,
         .task = zone,
         .what = placed(question.services, zone, Sentence::worded("Rinse %1 on its own", asked.name)),
         .note = Sentence::worded("Its neighbours have to stay dry.")},
        perMinute(moreWork, coat.groups[asked.group].rinse), [zone](Services& services) {
            service::giveOwnGroup(services[zone.service].coats[zone.coat], zone.item);
        });
}

/// Nothing where the time has come already: then it holds nothing up.
std::optional<Edit> wishEdit(const Question& question, const TaskId& zone)
{
    const service::Zone& asked = zoneIn(question.services, zone);
    if (question.now && *question.now >= *asked.notBefore)
        return std::nullopt;
    Edit edit;
    edit.most =
        question.now ? std::min<Seconds>(*asked.notBefore - *question.now, furthestMove) : furthestMove;
    edit.apply = [zone](Services& services, Seconds by) { *zoneIn(services, zone).notBefore -= by; };
    edit.change = [](Seconds by) { return perMinute(soonerThanWanted, by); };
    edit.step = [zone, services = question.services, name = asked.name](Seconds by) {
        return CureStep{.kind = CureKind::EarlierApply,
                        .service = zone.service,
                        .task = zone,
                        .what =
                            placed(services, zone,
                                   Sentence::worded("Let %1 start %2 earlier than was set for it", name, by)),
                        .by = by};
    };
    return edit;
}

}  // namespace

void addZoneEdits(const Question& question, const Demand& demand, std::vector<Edit>& edits)
{
    if (!demand.task)
        return;
    const TaskId& id = *demand.task;
    switch (demand.kind) {
    case DemandKind::Least: edits.push_back(windowEdit(question, id, CureKind::ShorterLeast)); break;
    case DemandKind::Most: edits.push_back(windowEdit(question, id, CureKind::LongerMost)); break;
    case DemandKind::FirstStrand:
        edits.push_back(strandEdit(question, id, CureKind::LongerFirstStrand));
        break;
    case DemandKind::LastStrand:
        edits.push_back(strandEdit(question, id, CureKind::ShorterLastStrand));
        break;
    case DemandKind::Looks: edits.push_back(looksEdit(question, id)); break;
    case DemandKind::LateJob: edits.push_back(lateEdit(question, id)); break;
    case DemandKind::Order: edits.push_back(orderEdit(question, id, demand.place)); return;
    case DemandKind::BlendGap: edits.push_back(gapEdit(question, id, demand.place)); return;
    case DemandKind::NotBefore:
        if (auto edit = wishEdit(question, id))
            edits.push_back(*std::move(edit));
        return;
    default: return;
    }
    if (canBeRinsedAlone(question, applyOf(id)))
        edits.push_back(aloneEdit(question, applyOf(id)));
}

}  // namespace core::stagger
