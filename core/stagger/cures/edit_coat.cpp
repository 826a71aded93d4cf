#include "core/stagger/cures/edit.h"

#include "core/service/edits.h"
#include "core/service/minutes.h"

#include <algorithm>

namespace core::stagger {
namespace {

using measure::Harm;
using measure::lengthText;

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

/// How far a clock time is moved at most.
constexpr Seconds furthest{24 * 3600};

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
                           [name = coatIn(question, mix).bowls[mix.item].name](const std::string& wanted,
                                                                               const std::string& now) {
                               return "Use " + name + " up to " + wanted + " after it is mixed (now " + now
                                   + ")";
                           },
                       .note = "Only if the product's leaflet allows it."});
}

/// A bowl of the same mixture for one of the zones that share it.
Edit bowlEdit(const Question& question, const TaskId& mix, std::size_t zone)
{
    const service::Coat& coat = coatIn(question, mix);
    service::Bowl own = coat.bowls[mix.item];
    std::vector<std::string> taken;
    for (const service::Bowl& bowl : coat.bowls)
        taken.push_back(bowl.name);
    const std::string words = "Mix another bowl of " + own.name + " for " + coat.zones[zone].name;
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
    edit.most = furthest;
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
        const std::string words = "Have the basin for " + name + " " + lengthText(by)
            + (isEarlier ? " earlier than it is booked" : " later than it is booked");
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
    return lengthEdit(question,
                      {.kind = kind,
                       .task = before,
                       .grows = isLonger,
                       .rate = clock,
                       .length = [before, isLonger](Services& services) -> Seconds& {
                           service::Coat& changed = coatIn(services, before);
                           return isLonger ? *changed.gapMost : *changed.gapLeast;
                       },
                       .words =
                           [=](const std::string& wanted, const std::string& now) {
                               return "Begin to apply " + next + (isLonger ? " up to " : " at least ")
                                   + wanted + " after the end of " + first + " (now " + now + ")";
                           },
                       .note = "Only if the product's leaflet allows it."});
}

/// What there is to spare goes first.
Edit promiseEdit(const Question& question, std::size_t index)
{
    const Seconds buffer = question.services[index].buffer;
    Edit edit;
    edit.most = buffer + furthest;
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
    const std::string whose =
        question.services.size() > 1 ? " for " + question.services[index].head.name : std::string{};
    edit.step = [index, buffer, whose](Seconds by) {
        CureStep step{.service = index, .by = by};
        if (by <= buffer) {
            step.what = "Keep " + lengthText(buffer - by) + " to spare before the promised time" + whose
                + " (now " + lengthText(buffer) + ")";
            return step;
        }
        step.kind = CureKind::LaterPromise;
        step.by = by - buffer;
        step.what = "Promise it" + whose + " " + lengthText(by - buffer) + " later";
        if (buffer > Seconds{0})
            step.note = "The " + lengthText(buffer) + " to spare are used up as well.";
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
    edit.most = question.now ? std::min<Seconds>(*notBefore - *question.now, furthest) : furthest;
    edit.apply = [index](Services& services, Seconds by) { *services[index].notBefore -= by; };
    edit.change = [](Seconds by) { return perMinute(promise, by); };
    const std::string whose =
        question.services.size() > 1 ? " with " + question.services[index].head.name : std::string{};
    edit.step = [index, whose](Seconds by) {
        return CureStep{.kind = CureKind::StartEarlier,
                        .service = index,
                        .what = "Begin" + whose + " " + lengthText(by) + " earlier",
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
        const std::string when = by == length ? " not be away at all"
            : kind == CureKind::LeaveLater    ? " leave " + lengthText(by) + " later"
                                              : " come back " + lengthText(by) + " earlier";
        return CureStep{.kind = kind, .what = "Let " + name + when, .by = by, .when = away};
    };
    return edit;
}

Edit handsEdit(const Question& question)
{
    std::vector<std::string> taken;
    for (const service::Hands& hands : question.services.front().crew.hands)
        taken.push_back(hands.name);
    Edit edit = plainEdit({.kind = CureKind::AnotherHands, .what = "Call another pair of hands"},
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
        {.kind = CureKind::AnotherBasin, .what = "Use another basin (now " + std::to_string(now) + ")"},
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
