#pragma once

#include <QDBusConnection>
#include <QDBusUnixFileDescriptor>
#include <QObject>

#include <optional>

namespace app::desktop {

/// Asks the desktop not to lock the screen and the machine not to sleep, while lanes run. By the interfaces
/// that Linux desktops share: org.freedesktop.ScreenSaver (Idle Inhibition Service Draft of freedesktop.org)
/// and org.freedesktop.login1 (systemd's Inhibitor Locks). Where neither answers, nothing is held, and
/// nothing else happens.
class KeepAwake : public QObject {
    Q_OBJECT

public:
    KeepAwake(QDBusConnection session, QDBusConnection system, QObject* parent = nullptr);
    ~KeepAwake() override;

    /// Asks once; again after `letGo`. Does not wait for the answers.
    void hold(const QString& why);
    void letGo();

    /// As far as is known by now.
    [[nodiscard]] bool keepsScreenOn() const { return m_cookie.has_value(); }
    [[nodiscard]] bool keepsMachineUp() const { return m_lock.isValid(); }

private:
    void askScreen(const QString& why);
    void askMachine(const QString& why);
    void giveBack(quint32 cookie);

    QDBusConnection m_session;
    QDBusConnection m_system;
    bool m_holds = false;
    int m_asked = 0;  ///< How often: an answer to an earlier time of asking is let go at once.
    std::optional<quint32> m_cookie;
    QDBusUnixFileDescriptor m_lock;  ///< As long as it is open.
};

}  // namespace app::desktop
