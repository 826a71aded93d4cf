#include "core/stagger/cures/edit.h"

#include "core/service/edits.h"
#include "core/service/minutes.h"

#include <algorithm>

namespace core::stagger {
namespace {

using measure::Harm;

/// Hundredths of change a minute, as in edit_zone.cpp.
constexpr std::int64_t lessToSpare = 10;
constexpr std::int64_t promise = 50;
constexpr std::int64_t clock = 100;
constexpr std::int64_t somebodyMore = 100;
/// Whoever is called has to come: as much as ten minutes of their time. A basin more
/// is as much as twenty.
constexpr std::int64_t calling = 10 * somebodyMore;
constexpr std::int64_t basin = 20 * somebodyMore;
constexpr Seconds minute{60};

service::Coat& coatIn(Services& services, const TaskId& id)
{
    return services[id.service].coats[id.coat];
}

const service::Coat& coatIn(const Question& question, const TaskId& id)
{
    return question.services[id.service].coats[id.coat];
}

Edit potLifeEdit(const Question& question, const TaskId& mix)
{
    return lengthEdit(question,
                      {.kind = CureKind::LongerPotLife,
                       .task = mix,
                       .rate = clock,
                       .length = [mix](Services& services) -> Seconds& {
                           return *coatIn(services, mix).bowls[mix.item].potLife;
                       },
                       .words =
                           [name = coatIn(question, mix).bowls[mix.item].name](Seconds wanted, Seconds now) {
                               return Sentence::worded("Use %1 up to %2 after it is mixed (now %3)", name,
                                                       wanted, now);
                           },
                       .note = Sentence::worded("Only if the product's leaflet allows it.")});
}

/// A bowl of the same mixture for one of the zones that share it.
Edit bowlEdit(const Question& question, const TaskId& mix, std::size_t zone)
{
    const service::Coat& coat = coatIn(question, mix);
    service::Bowl own = coat.bowls[mix.item];
    std::vector<std::string> taken;
    for (const service::Bowl& bowl : coat.bowls)
        taken.push_back(bowl.name);
    const Sentence words = Sentence::worded("Mix another bowl of %1 for %2", own.name, coat.zones[zone].name);
    own.name = service::freeName(own.name, taken);
    TaskId apply = mix;
    apply.kind = TaskKind::Apply;
    apply.item = zone;
    return plainEdit({.kind = CureKind::SecondBowl,
                      .service = mix.service,
                      .task = apply,
                      .what = placed(question.services, mix, words)},
                     perMinute(somebodyMore, own.mix + minute), [mix, zone, own](Services& services) {
                         service::Coat& changed = coatIn(services, mix);
                         changed.zones[zone].bowl = changed.bowls.size();
                         changed.bowls.push_back(own);
                     });
}

void addBowlEdits(const Question& question, TaskId mix, std::size_t bowl, std::vector<Edit>& edits)
{
    mix.kind = TaskKind::Mix;
    mix.item = bowl;
    edits.push_back(potLifeEdit(question, mix));
    const service::Coat& coat = coatIn(question, mix);
    if (std::ranges::count(coat.zones, bowl, &service::Zone::bowl) < 2)
        return;
    for (std::size_t zone = 0; zone < coat.zones.size(); ++zone) {
        TaskId apply = mix;
        apply.kind = TaskKind::Apply;
        apply.item = zone;
        if (coat.zones[zone].bowl == bowl && question.progress.find(apply) == nullptr)
            edits.push_back(bowlEdit(question, mix, zone));
    }
}

Edit waterEdit(const Question& question, const TaskId& rinse, CureKind kind)
{
    const bool isEarlier = kind == CureKind::EarlierWater;
    Edit edit;
    edit.most = furthestMove;
    edit.apply = [rinse, isEarlier](Services& services, Seconds by) {
        service::RinseGroup& group = coatIn(services, rinse).groups[rinse.item];
        if (isEarlier)
            *group.waterEarliest -= by;
        else
            *group.waterLatest += by;
    };
    edit.change = [](Seconds by) { return perMinute(clock, by); };
    edit.step = [=, services = question.services,
                 name = coatIn(question, rinse).groups[rinse.item].name](Seconds by) {
        const Sentence words = isEarlier
            ? Sentence::worded("Have the basin for %1 %2 earlier than it is booked", name, by)
            : Sentence::worded("Have the basin for %1 %2 later than it is booked", name, by);
        return CureStep{.kind = kind,
                        .service = rinse.service,
                        .task = rinse,
                        .what = placed(services, rinse, words),
                        .by = by};
    };
    return edit;
}

/// The gap belongs to the coat before the one that the demand names.
Edit coatGapEdit(const Question& question, const TaskId& coat, CureKind kind)
{
    TaskId before = coat;
    --before.coat;
    const bool isLonger = kind == CureKind::LongerCoatGap;
    const std::string first = coatIn(question, before).name;
    const std::string next = coatIn(question, coat).name;
    return lengthEdit(
        question,
        {.kind = kind,
         .task = before,
         .grows = isLonger,
         .rate = clock,
         .length = [before, isLonger](Services& services) -> Seconds& {
             service::Coat& changed = coatIn(services, before);
             return isLonger ? *changed.gapMost : *changed.gapLeast;
         },
         .words =
             [=](Seconds wanted, Seconds now) {
                 return isLonger
                     ? Sentence::worded("Begin to apply %1 up to %2 after the end of %3 (now %4)", next,
                                        wanted, first, now)
                     : Sentence::worded("Begin to apply %1 at least %2 after the end of %3 (now %4)", next,
                                        wanted, first, now);
             },
         .note = Sentence::worded("Only if the product's leaflet allows it.")});
}

/// Whose, where there are several heads; else nothing.
std::string headAmongSeveral(const Question& question, std::size_t index)
{
    return question.services.size() > 1 ? question.services[index].head.name : std::string{};
}

Sentence lessToSpareText(const std::string& head, Seconds left, Seconds now)
{
    if (head.empty())
        return Sentence::worded("Keep %1 to spare before the promised time (now %2)", left, now);
    return Sentence::worded("Keep %1 to spare before the promised time for %2 (now %3)", left, head, now);
}

/// What there is to spare goes first.
Edit promiseEdit(const Question& question, std::size_t index)
{
    const Seconds buffer = question.services[index].buffer;
    Edit edit;
    edit.most = buffer + furthestMove;
    edit.apply = [index](Services& services, Seconds by) {
        service::Service& changed = services[index];
        const Seconds spared = std::min(by, changed.buffer);
        changed.buffer -= spared;
        *changed.readyBy += by - spared;
    };
    edit.change = [buffer](Seconds by) {
        const Seconds spared = std::min(by, buffer);
        return perMinute(lessToSpare, spared) + perMinute(promise, by - spared);
    };
    edit.step = [index, buffer, head = headAmongSeveral(question, index)](Seconds by) {
        if (by <= buffer)
            return CureStep{.service = index, .what = lessToSpareText(head, buffer - by, buffer), .by = by};
        CureStep step{.kind = CureKind::LaterPromise, .service = index, .by = by - buffer};
        step.what = head.empty() ? Sentence::worded("Promise it %1 later", step.by)
                                 : Sentence::worded("Promise it for %1 %2 later", head, step.by);
        if (buffer > Seconds{0})
            step.note = Sentence::worded("The %1 to spare are used up as well.", buffer);
        return step;
    };
    return edit;
}

/// Where the service waits for its `not_before` though the clock would let it begin.
std::optional<Edit> startEdit(const Question& question, std::size_t index)
{
    const auto& notBefore = question.services[index].notBefore;
    if (!notBefore || (question.now && *question.now >= *notBefore))
        return std::nullopt;
    Edit edit;
    edit.most = question.now ? std::min<Seconds>(*notBefore - *question.now, furthestMove) : furthestMove;
    edit.apply = [index](Services& services, Seconds by) { *services[index].notBefore -= by; };
    edit.change = [](Seconds by) { return perMinute(promise, by); };
    edit.step = [index, head = headAmongSeveral(question, index)](Seconds by) {
        return CureStep{.kind = CureKind::StartEarlier,
                        .service = index,
                        .what = head.empty() ? Sentence::worded("Begin %1 earlier", by)
                                             : Sentence::worded("Begin with %1 %2 earlier", head, by),
                        .by = by};
    };
    return edit;
}

/// Away from both ends: to leave later, or to come back earlier. What is left of it may be nothing.
Edit awayEdit(const Question& question, std::size_t hands, std::size_t place, CureKind kind)
{
    const service::Hands& whose = question.services.front().crew.hands[hands];
    const Interval away = whose.away[place];
    const Seconds length = away.until - away.from;
    Edit edit;
    edit.most = length;
    edit.apply = [=](Services& services, Seconds by) {
        Interval& changed = services.front().crew.hands[hands].away[place];
        if (kind == CureKind::LeaveLater)
            changed.from += by;
        else
            changed.until -= by;
    };
    edit.change = [](Seconds by) { return perMinute(clock, by); };
    edit.step = [=, name = whose.name](Seconds by) {
        const Sentence what = by == length ? Sentence::worded("Let %1 not be away at all", name)
            : kind == CureKind::LeaveLater ? Sentence::worded("Let %1 leave %2 later", name, by)
                                           : Sentence::worded("Let %1 come back %2 earlier", name, by);
        return CureStep{.kind = kind, .what = what, .by = by, .when = away};
    };
    return edit;
}

Edit handsEdit(const Question& question)
{
    std::vector<std::string> taken;
    for (const service::Hands& hands : question.services.front().crew.hands)
        taken.push_back(hands.name);
    Edit edit =
        plainEdit({.kind = CureKind::AnotherHands, .what = Sentence::worded("Call another pair of hands")},
                  perMinute(calling, minute),
                  [name = service::freeName("Another pair of hands", taken)](Services& services) {
                      services.front().crew.hands.push_back({.name = name, .away = {}, .kinds = {}});
                  });
    edit.isForHands = true;
    edit.change = [](Seconds length) { return perMinute(calling, minute) + perMinute(somebodyMore, length); };
    return edit;
}

Edit basinEdit(const Question& question)
{
    const std::size_t now = question.services.front().crew.basins;
    return plainEdit(
        {.kind = CureKind::AnotherBasin, .what = Sentence::worded("Use another basin (now %1)", now)},
        perMinute(basin, minute), [](Services& services) { ++services.front().crew.basins; });
}

}  // namespace

void addCoatEdits(const Question& question, const Demand& demand, std::vector<Edit>& edits)
{
    switch (demand.kind) {
    case DemandKind::PotLife: addBowlEdits(question, *demand.task, demand.place, edits); break;
    case DemandKind::WaterEarliest:
        edits.push_back(waterEdit(question, *demand.task, CureKind::EarlierWater));
        break;
    case DemandKind::WaterLatest:
        edits.push_back(waterEdit(question, *demand.task, CureKind::LaterWater));
        break;
    case DemandKind::CoatGapLeast:
        edits.push_back(coatGapEdit(question, *demand.task, CureKind::ShorterCoatGap));
        break;
    case DemandKind::CoatGapMost:
        edits.push_back(coatGapEdit(question, *demand.task, CureKind::LongerCoatGap));
        break;
    case DemandKind::Promise:
        edits.push_back(promiseEdit(question, demand.place));
        if (auto edit = startEdit(question, demand.place))
            edits.push_back(std::move(*edit));
        break;
    case DemandKind::Hands: edits.push_back(handsEdit(question)); break;
    case DemandKind::Basins: edits.push_back(basinEdit(question)); break;
    case DemandKind::Away:
        for (const CureKind kind : {CureKind::LeaveLater, CureKind::ReturnEarlier})
            edits.push_back(awayEdit(question, demand.place / 1000, demand.place % 1000, kind));
        break;
    default: break;
    }
}

}  // namespace core::stagger
