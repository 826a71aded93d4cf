#pragma once

#include <QDBusUnixFileDescriptor>
#include <QMap>
#include <QObject>
#include <QStringList>
#include <QVariantMap>

#include <fcntl.h>
#include <unistd.h>

/// The services of a desktop that are asked, stood in for.
namespace app::desktop::fake {

class Screen : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.ScreenSaver")

public:
    QStringList asked;       ///< Who, and why.
    QList<quint32> letGo{};  ///< Cookies that were given back.

public Q_SLOTS:
    quint32 Inhibit(const QString& who, const QString& why)
    {
        asked << who + QStringLiteral(": ") + why;
        return 40 + static_cast<quint32>(asked.size());
    }
    void UnInhibit(quint32 cookie) { letGo << cookie; }
};

class Machine : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.login1.Manager")

public:
    ~Machine() override
    {
        if (m_end >= 0)
            close(m_end);
    }

    QStringList asked;  ///< What, who, why, how.

    /// Whether somebody still holds the lock that was given out.
    [[nodiscard]] bool isHeld() const
    {
        char byte = 0;
        return m_end >= 0 && read(m_end, &byte, 1) != 0;
    }

public Q_SLOTS:
    QDBusUnixFileDescriptor Inhibit(const QString& what, const QString& who, const QString& why,
                                    const QString& mode)
    {
        asked << what << who << why << mode;
        int ends[2] = {-1, -1};
        if (pipe2(ends, O_NONBLOCK | O_CLOEXEC) != 0)
            return {};
        m_end = ends[0];
        const QDBusUnixFileDescriptor lock{ends[1]};
        close(ends[1]);
        return lock;
    }

private:
    int m_end = -1;
};

/// The settings portal. Its answers have the shape a{sa{sv}}.
class Portal : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Settings")

public:
    uint scheme = 0;
    uint contrast = 0;

public Q_SLOTS:
    QMap<QString, QVariantMap> ReadAll(const QStringList& areas)
    {
        const QString appearance = QStringLiteral("org.freedesktop.appearance");
        if (!areas.contains(appearance))
            return {};
        return {
            {appearance, {{QStringLiteral("color-scheme"), scheme}, {QStringLiteral("contrast"), contrast}}}};
    }
};

class Notices : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.Notifications")

public:
    QStringList shown;        ///< The text of each.
    QList<quint32> closed{};  ///< By whoever had them shown.
    quint32 last = 0;

public Q_SLOTS:
    quint32 Notify(const QString&, quint32 replaces, const QString&, const QString&, const QString& text,
                   const QStringList&, const QVariantMap&, int)
    {
        shown << text;
        last = replaces != 0 ? replaces : static_cast<quint32>(shown.size());
        return last;
    }
    void CloseNotification(quint32 number) { closed << number; }

Q_SIGNALS:
    void ActionInvoked(quint32 number, const QString& action);
    void NotificationClosed(quint32 number, quint32 reason);
};

}  // namespace app::desktop::fake
