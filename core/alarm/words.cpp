#include "core/alarm/words.h"

#include <algorithm>

namespace core::alarm {
namespace {

using run::Prompt;
using stagger::TaskKind;

const service::Coat& coatOf(const std::vector<service::Service>& services, const stagger::TaskId& task)
{
    return services.at(task.service).coats.at(task.coat);
}

bool isOfCoat(const run::Lane& lane, const stagger::TaskId& task)
{
    return lane.service == task.service && lane.coat == task.coat;
}

/// Whether the zone of `lane` goes under the water of `rinse`. One that was rinsed alone has left its group.
bool goesUnder(const service::Zone& zone, const run::Lane& lane, const run::State& state,
               const stagger::TaskId& rinse)
{
    if (!isOfCoat(lane, rinse) || lane.stage == run::Stage::Dropped)
        return false;
    if (rinse.kind == TaskKind::RinseAlone)
        return lane.zone == rinse.item;
    stagger::TaskId alone = rinse;
    alone.kind = TaskKind::RinseAlone;
    alone.item = lane.zone;
    return zone.group == rinse.item && !state.progress.find(alone);
}

/// "Root, Mids, Ends"
std::string zonesUnder(const service::Coat& coat, const run::State& state, const stagger::TaskId& rinse)
{
    std::string names;
    for (const run::Lane& lane : state.lanes) {
        if (!isOfCoat(lane, rinse) || !goesUnder(coat.zones.at(lane.zone), lane, state, rinse))
            continue;
        names += (names.empty() ? "" : ", ") + coat.zones.at(lane.zone).name;
    }
    return names;
}

std::string waterText(const service::Coat& coat, const run::State& state, const Alarm& alarm)
{
    const std::string zones = zonesUnder(coat, state, alarm.task);
    if (alarm.asks == Prompt::Asks::Finish)
        return "Water off: " + zones;
    return (alarm.kind == Kind::GetReady ? "Water soon: " : "Water on: ") + zones;
}

std::string lookText(const std::string& zones, const Alarm& alarm)
{
    return zones + (alarm.kind == Kind::GetReady ? ": look soon" : ": look now");
}

std::string taskText(const service::Service& service, const Alarm& alarm)
{
    const std::string name = stagger::taskName(service, alarm.task).text();
    if (alarm.task.kind == TaskKind::Heat)
        return name + ": take it off";
    if (alarm.asks == Prompt::Asks::Finish)
        return name + ": has it ended?";
    return name + (alarm.kind == Kind::GetReady ? " soon" : " now");
}

/// "Ends: limit near (at most 45 min development)"
std::string limitText(const service::Zone& zone, const run::State& state, const Alarm& alarm)
{
    std::string text = zone.name + (alarm.kind == Kind::LimitNear ? ": limit near" : ": limit passed");
    const auto limit = std::ranges::find(state.limits, alarm.task, &run::LimitWatch::zone);
    if (limit != state.limits.end())
        text += " (" + limit->what.text() + ")";
    return text;
}

std::string textWithoutHead(const std::vector<service::Service>& services, const run::State& state,
                            const Alarm& alarm)
{
    const service::Coat& coat = coatOf(services, alarm.task);
    if (alarm.kind == Kind::LimitNear || alarm.kind == Kind::LimitPassed)
        return limitText(coat.zones.at(alarm.task.item), state, alarm);
    switch (alarm.subject) {
    case Subject::Water: return waterText(coat, state, alarm);
    case Subject::Look: return lookText(coat.zones.at(alarm.task.item).name, alarm);
    case Subject::Task: return taskText(services.at(alarm.task.service), alarm);
    }
    return {};
}

std::string withHead(const std::vector<service::Service>& services, const Alarm& alarm,
                     const std::string& text)
{
    return services.size() < 2 ? text : services.at(alarm.task.service).head.name + ": " + text;
}

bool areLooksAtOneHead(const Alarm& one, const Alarm& other)
{
    return one.subject == Subject::Look && other.subject == Subject::Look
        && one.task.service == other.task.service;
}

}  // namespace

std::string alarmText(const std::vector<service::Service>& services, const run::State& state,
                      const Alarm& alarm)
{
    return withHead(services, alarm, textWithoutHead(services, state, alarm));
}

std::string callText(const std::vector<service::Service>& services, const run::State& state, const Call& call)
{
    std::string text;
    for (std::size_t place = 0; place < call.alarms.size(); ++place) {
        const Alarm& alarm = call.alarms[place];
        const auto zone = [&](const Alarm& look) {
            return coatOf(services, look.task).zones.at(look.task.item).name;
        };
        std::string zones = alarm.subject == Subject::Look ? zone(alarm) : std::string{};
        while (place + 1 < call.alarms.size() && areLooksAtOneHead(alarm, call.alarms[place + 1]))
            zones += ", " + zone(call.alarms[++place]);
        text += (text.empty() ? "" : "; ")
            + (zones.empty() ? alarmText(services, state, alarm)
                             : withHead(services, alarm, lookText(zones, alarm)));
    }
    return text;
}

}  // namespace core::alarm
