#include "app/desktop/announcer.h"

#include "app/desktop/voice.h"
#include "core/alarm/pattern.h"

#include <algorithm>

namespace app::desktop {
namespace {

using core::alarm::Alarm;
using core::alarm::Call;
using namespace std::chrono_literals;

/// After a sound, and for the way of the sound through the device.
constexpr auto breath = 400ms;
constexpr core::measure::Seconds again{60};

bool isAbout(const Call& call, const Alarm& alarm)
{
    return std::ranges::any_of(call.alarms, [&](const Alarm& each) { return sameMatter(each, alarm); });
}

}  // namespace

Announcer::Announcer(Voice& voice, QObject* parent)
    : QObject{parent}
    , m_voice{voice}
{
    m_pause.setSingleShot(true);
    connect(&m_pause, &QTimer::timeout, this, &Announcer::speak);
}

void Announcer::setOn(bool on)
{
    m_on = on;
    if (!on)
        setAudible({});
}

std::chrono::milliseconds Announcer::lengthOf(const Call& call)
{
    const core::alarm::Pulse last = core::alarm::pulsesOf(core::alarm::signalOf(call.lead())).back();
    return std::chrono::ceil<std::chrono::milliseconds>(
        std::chrono::duration<double>{last.start + last.length});
}

/// Whether somebody who heard all that was said of it so far does not know, or may have forgotten.
bool Announcer::isNews(const Call& call, core::measure::Instant now) const
{
    const auto known = std::ranges::find_if(m_said, [&](const Said& said) {
        return std::ranges::all_of(call.alarms,
                                   [&](const Alarm& alarm) { return isAbout(said.call, alarm); });
    });
    return known == m_said.end() || known->call.lead().insistence != call.lead().insistence
        || now - known->at >= again;
}

void Announcer::called(const Call& call, const QString& text, core::measure::Instant now)
{
    if (!m_on)
        return;
    if (!m_pause.isActive())
        m_voice.stop();  // What was being said is over or has had its time.
    m_pause.start(std::max(m_pause.remainingTimeAsDuration(), lengthOf(call) + breath));
    if (!isNews(call, now))
        return;
    std::erase_if(m_said, [&](const Said& said) {
        return std::ranges::all_of(said.call.alarms,
                                   [&](const Alarm& alarm) { return isAbout(call, alarm); });
    });
    m_said.push_back({call, now});
    m_waiting.emplace_back(call, text);
}

void Announcer::setAudible(const std::vector<Alarm>& audible)
{
    const auto isOver = [&](const Call& call) {
        return std::ranges::none_of(audible, [&](const Alarm& alarm) { return isAbout(call, alarm); });
    };
    std::erase_if(m_waiting, [&](const auto& waiting) { return isOver(waiting.first); });
    if (std::erase_if(m_said, [&](const Said& said) { return isOver(said.call); }) > 0)
        m_voice.stop();
}

void Announcer::speak()
{
    for (const auto& [call, text] : m_waiting)
        m_voice.say(text);
    m_waiting.clear();
}

}  // namespace app::desktop
