#include "core/stagger/task.h"

#include <array>
#include <charconv>
#include <tuple>

namespace core::stagger {
namespace {

struct KindWord {
    TaskKind kind;
    const char* word;
};

constexpr std::array kindWords = {
    KindWord{TaskKind::Apply, "apply"}, KindWord{TaskKind::Look, "look"},
    KindWord{TaskKind::Late, "late"},   KindWord{TaskKind::Mix, "mix"},
    KindWord{TaskKind::Rinse, "rinse"}, KindWord{TaskKind::RinseAlone, "rinse-alone"},
    KindWord{TaskKind::Dry, "dry"},     KindWord{TaskKind::Assess, "assess"},
    KindWord{TaskKind::Heat, "heat"},
};

/// Tasks of a zone come zone by zone, before those of the coat.
auto sortKey(const TaskId& id)
{
    const bool ofZone = id.kind == TaskKind::Apply || id.kind == TaskKind::Look || id.kind == TaskKind::Late;
    const std::size_t zone = ofZone ? id.item : static_cast<std::size_t>(-1);
    return std::tuple{id.service, id.coat, zone, id.kind, id.item, id.part};
}

bool readNumber(std::string_view text, std::size_t& number)
{
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc{} && end == text.data() + text.size();
}

Sentence lookName(const service::Zone& zone, std::size_t part)
{
    const bool several = zone.looks && zone.looks->moments().size() > 1;
    if (!several)
        return Sentence::worded("Look at %1", zone.name);
    return Sentence::worded("Look at %1 (%2)", zone.name, measure::ordinal(part + 1));
}

void appendZoneTasks(const service::Coat& coat, TaskId id, std::vector<TaskId>& tasks)
{
    for (id.item = 0; id.item < coat.zones.size(); ++id.item) {
        const service::Zone& zone = coat.zones[id.item];
        const auto append = [&](TaskKind kind, std::size_t count) {
            id.kind = kind;
            for (id.part = 0; id.part < count; ++id.part)
                tasks.push_back(id);
        };
        append(TaskKind::Apply, 1);
        append(TaskKind::Look, zone.looks ? zone.looks->moments().size() : 0);
        append(TaskKind::Late, zone.late.size());
    }
}

}  // namespace

std::strong_ordering operator<=>(const TaskId& a, const TaskId& b)
{
    return sortKey(a) <=> sortKey(b);
}

std::string taskIdText(const TaskId& id)
{
    std::string word;
    for (const KindWord& entry : kindWords) {
        if (entry.kind == id.kind)
            word = entry.word;
    }
    return std::to_string(id.service) + "." + std::to_string(id.coat) + "." + word + "."
        + std::to_string(id.item) + "." + std::to_string(id.part);
}

bool readTaskId(const std::string& text, TaskId& id)
{
    std::array<std::string, 5> parts;
    std::size_t part = 0;
    for (const char letter : text) {
        if (letter != '.')
            parts[part] += letter;
        else if (++part == parts.size())
            return false;
    }
    const bool numbers = part == 4 && readNumber(parts[0], id.service) && readNumber(parts[1], id.coat)
        && readNumber(parts[3], id.item) && readNumber(parts[4], id.part);
    for (const KindWord& entry : kindWords) {
        if (parts[2] != entry.word)
            continue;
        id.kind = entry.kind;
        return numbers;
    }
    return false;
}

bool isTaskOf(const service::Service& service, const TaskId& id)
{
    if (id.coat >= service.coats.size())
        return false;
    const service::Coat& coat = service.coats[id.coat];
    const auto zone = id.item < coat.zones.size() ? &coat.zones[id.item] : nullptr;
    switch (id.kind) {
    case TaskKind::Apply:
    case TaskKind::RinseAlone: return zone != nullptr && id.part == 0;
    case TaskKind::Look: return zone != nullptr && zone->looks && id.part < zone->looks->moments().size();
    case TaskKind::Late: return zone != nullptr && id.part < zone->late.size();
    case TaskKind::Mix:
        return id.item < coat.bowls.size() && id.part == 0 && coat.bowls[id.item].mix > Seconds{0};
    case TaskKind::Rinse: return id.item < coat.groups.size() && id.part == 0;
    case TaskKind::Dry:
        return id.item == 0 && id.part == 0 && coat.dryHands + coat.dryUnattended > Seconds{0};
    case TaskKind::Assess: return id.item == 0 && id.part == 0 && coat.assess > Seconds{0};
    case TaskKind::Heat: return id.item == 0;
    }
    return false;
}

Sentence taskName(const service::Service& service, const TaskId& id)
{
    const service::Coat& coat = service.coats.at(id.coat);
    switch (id.kind) {
    case TaskKind::Apply: return Sentence::worded("Apply %1", coat.zones.at(id.item).name);
    case TaskKind::Look: return lookName(coat.zones.at(id.item), id.part);
    case TaskKind::Late:
        return coat.zones.at(id.item).late.at(id.part).name + " " + coat.zones.at(id.item).name;
    case TaskKind::Mix: return Sentence::worded("Mix %1", coat.bowls.at(id.item).name);
    case TaskKind::Rinse: return Sentence::worded("Rinse %1", coat.groups.at(id.item).name);
    case TaskKind::RinseAlone: return Sentence::worded("Rinse %1 alone", coat.zones.at(id.item).name);
    case TaskKind::Dry: return Sentence::worded("Dry");
    case TaskKind::Assess: return Sentence::worded("Assess");
    case TaskKind::Heat: return Sentence::worded("Heat");
    }
    return {};
}

Seconds usualLength(const service::Service& service, const TaskId& id)
{
    const service::Coat& coat = service.coats.at(id.coat);
    switch (id.kind) {
    case TaskKind::Apply: return coat.zones.at(id.item).apply.usual;
    case TaskKind::Look: return coat.zones.at(id.item).looks->length;
    case TaskKind::Late: return coat.zones.at(id.item).late.at(id.part).length;
    case TaskKind::Mix: return coat.bowls.at(id.item).mix;
    case TaskKind::Rinse: return coat.groups.at(id.item).rinse;
    case TaskKind::RinseAlone: return coat.groups.at(coat.zones.at(id.item).group).rinse;
    case TaskKind::Dry: return coat.dryHands;
    case TaskKind::Assess: return coat.assess;
    case TaskKind::Heat: break;
    }
    return Seconds{0};
}

std::vector<TaskId> tasksOf(const service::Service& service, std::size_t serviceIndex)
{
    std::vector<TaskId> tasks;
    for (std::size_t coatIndex = 0; coatIndex < service.coats.size(); ++coatIndex) {
        const service::Coat& coat = service.coats[coatIndex];
        appendZoneTasks(coat, {.service = serviceIndex, .coat = coatIndex}, tasks);
        const auto append = [&](TaskKind kind, std::size_t count) {
            for (std::size_t item = 0; item < count; ++item) {
                const TaskId id{.service = serviceIndex, .coat = coatIndex, .kind = kind, .item = item};
                if (isTaskOf(service, id))
                    tasks.push_back(id);
            }
        };
        append(TaskKind::Mix, coat.bowls.size());
        append(TaskKind::Rinse, coat.groups.size());
        append(TaskKind::Dry, 1);
        append(TaskKind::Assess, 1);
    }
    return tasks;
}

bool isOfZone(const TaskId& id)
{
    return id.kind == TaskKind::Apply || id.kind == TaskKind::Look || id.kind == TaskKind::Late
        || id.kind == TaskKind::RinseAlone;
}

bool isWater(const TaskId& id)
{
    return id.kind == TaskKind::Rinse || id.kind == TaskKind::RinseAlone;
}

service::Work workOf(TaskKind kind)
{
    switch (kind) {
    case TaskKind::Apply: return service::Work::Apply;
    case TaskKind::Look: return service::Work::Look;
    case TaskKind::Late: return service::Work::Late;
    case TaskKind::Mix: return service::Work::Mix;
    case TaskKind::Rinse:
    case TaskKind::RinseAlone: return service::Work::Rinse;
    case TaskKind::Dry: return service::Work::Dry;
    case TaskKind::Assess: return service::Work::Assess;
    case TaskKind::Heat: break;
    }
    return service::Work::Apply;
}

}  // namespace core::stagger
