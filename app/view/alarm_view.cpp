#include "app/view/alarm_view.h"

#include "app/view/now_view.h"
#include "core/alarm/call.h"

#include <algorithm>

namespace app::view {
namespace {

using core::alarm::Alarm;
using core::alarm::Kind;
using core::alarm::Subject;

bool takesTheWindow(const Alarm& alarm)
{
    const bool limit = alarm.kind == Kind::LimitNear || alarm.kind == Kind::LimitPassed;
    const bool water = alarm.subject == Subject::Water && alarm.asks == core::run::Prompt::Asks::Start;
    return limit || (alarm.kind == Kind::Due && water);
}

}  // namespace

AlarmAbout alarmAbout(const std::vector<core::service::Service>& services, const core::run::State& state,
                      const Alarm& alarm)
{
    const core::run::Prompt prompt{.asks = alarm.asks, .task = alarm.task, .due = alarm.since};
    return {alarm, headOf(services, alarm.task.service), stepView(services, state, prompt).zones};
}

std::optional<AlarmView> alarmView(const std::vector<core::service::Service>& services,
                                   const core::run::State& state, const std::vector<Alarm>& alarms)
{
    if (alarms.empty())
        return std::nullopt;
    const auto taking = std::ranges::find_if(alarms, takesTheWindow);
    const Alarm& alarm = taking != alarms.end() ? *taking : alarms.front();
    AlarmView view;
    view.alarm = alarm;
    view.head = headOf(services, alarm.task.service);
    view.zones = alarmAbout(services, state, alarm).zones;
    for (const core::alarm::Call& call : core::alarm::callsOf(alarms, {}))
        for (const Alarm& other : call.alarms)
            if (other != alarm && other.kind != Kind::GetReady)
                view.also.push_back(alarmAbout(services, state, other));
    view.standing = std::max(Seconds{0}, Seconds{state.now - alarm.since});
    view.takesWindow = takesTheWindow(alarm);
    return view;
}

}  // namespace app::view
