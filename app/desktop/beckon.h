#pragma once

#include "app/desktop/announcer.h"
#include "app/desktop/desktop_notice.h"
#include "app/session/session.h"

#include <QObject>
#include <QSystemTrayIcon>

namespace app::desktop {

class MainWindow;

/// Calls whoever does not look at the window: what is due or near a limit brings the window and its lanes to
/// the front, a notice of the desktop says it where the window has not the keyboard, it is spoken, and while
/// a run is under way an icon in the tray tells the most urgent lane.
class Beckon : public QObject {
    Q_OBJECT

public:
    Beckon(MainWindow& window, session::Session& session, Voice& voice, QDBusConnection bus,
           QObject* parent = nullptr);

    [[nodiscard]] Announcer& announcer() { return m_announcer; }
    [[nodiscard]] DesktopNotice& notice() { return m_notice; }
    [[nodiscard]] QSystemTrayIcon& tray() { return m_tray; }

private:
    void called(const core::alarm::Call& call);
    void followAlarms();
    void followRun();
    void comeToFront();
    void followWindow();
    [[nodiscard]] bool isNew(const core::alarm::Call& call) const;

    MainWindow& m_window;
    session::Session& m_session;
    Announcer m_announcer;
    DesktopNotice m_notice;
    QSystemTrayIcon m_tray;
    std::vector<core::alarm::Alarm> m_known;  ///< What stands and was called for.
};

}  // namespace app::desktop
