#include "app/desktop/beckon.h"

#include "app/desktop/main_window.h"
#include "app/desktop/words.h"
#include "app/view/alarm_view.h"
#include "app/view/lane_view.h"

#include <QApplication>
#include <QWindow>

#include <algorithm>

namespace app::desktop {
namespace {

using core::alarm::Alarm;
using core::alarm::Call;
using core::alarm::Kind;

bool isAmong(const std::vector<Alarm>& alarms, const Alarm& wanted)
{
    return std::ranges::any_of(alarms, [&](const Alarm& alarm) { return sameMatter(alarm, wanted); });
}

}  // namespace

Beckon::Beckon(MainWindow& window, session::Session& session, Voice& voice, QDBusConnection bus,
               QObject* parent)
    : QObject{parent}
    , m_window{window}
    , m_session{session}
    , m_announcer{voice}
    , m_notice{std::move(bus)}
    , m_tray{window.windowIcon()}
{
    connect(&session, &session::Session::called, this, &Beckon::called);
    connect(&session, &session::Session::alarmsChanged, this, &Beckon::followAlarms);
    connect(&session, &session::Session::settled, this, &Beckon::followRun);
    connect(&session, &session::Session::left, this, [this] {
        m_known.clear();
        m_announcer.setAudible({});
        m_notice.close();
        m_tray.hide();
    });
    connect(&m_notice, &DesktopNotice::pressed, this, &Beckon::comeToFront);
    connect(&m_tray, &QSystemTrayIcon::activated, this, &Beckon::comeToFront);
    connect(qApp, &QGuiApplication::focusWindowChanged, this, &Beckon::followWindow);
}

void Beckon::called(const Call& call)
{
    const auto& services = m_session.services();
    std::vector<view::AlarmAbout> about;
    for (const Alarm& alarm : call.alarms)
        about.push_back(view::alarmAbout(services, m_session.state(), alarm));
    const QString text = words::call(services, about);
    m_announcer.called(call, text, m_session.state().now);
    const bool pressing = call.lead().kind != Kind::GetReady;
    const bool seen = m_window.isActiveWindow() && m_window.showsLanes();
    const bool fresh = isNew(call);
    m_known.insert(m_known.end(), call.alarms.begin(), call.alarms.end());
    if (!seen && (fresh || (pressing && !m_notice.isShown())))
        m_notice.show(tr("Basinbell"), text, pressing);
    // Once: whoever goes back to something else on purpose is not pulled away again by each repeat.
    if (pressing && fresh)
        m_window.takeWindow();
}

/// A call that begins, or that another alarm joins: not one that sounds again.
bool Beckon::isNew(const Call& call) const
{
    return !std::ranges::all_of(call.alarms, [this](const Alarm& alarm) { return isAmong(m_known, alarm); });
}

void Beckon::followAlarms()
{
    std::erase_if(m_known, [this](const Alarm& alarm) { return !isAmong(m_session.alarms(), alarm); });
    const auto audible = m_session.audible();
    m_announcer.setAudible(audible);
    if (audible.empty())
        m_notice.close();
}

void Beckon::followRun()
{
    if (!m_session.current() || m_session.state().finished)
        return m_tray.hide();
    m_tray.setToolTip(words::mostUrgentLane(view::lanesView(m_session.services(), m_session.state()),
                                            view::nowView(m_session.services(), m_session.state())));
    if (!m_tray.isVisible() && QSystemTrayIcon::isSystemTrayAvailable())
        m_tray.show();
}

/// Whoever looks at the lanes needs no notice of them.
void Beckon::followWindow()
{
    if (m_window.isActiveWindow() && m_window.showsLanes())
        m_notice.close();
}

void Beckon::comeToFront()
{
    m_window.comeToFront();
    m_window.showLanes();
}

}  // namespace app::desktop
