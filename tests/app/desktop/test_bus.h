#pragma once

#include <QDBusConnection>
#include <QProcess>
#include <QStringList>

namespace app::desktop {

/// A message bus of the test's own.
class TestBus {
public:
    ~TestBus()
    {
        for (const QString& name : m_names)
            QDBusConnection::disconnectFromBus(name);
        m_daemon.kill();
        m_daemon.waitForFinished();
    }

    [[nodiscard]] bool start()
    {
        m_daemon.start(
            QStringLiteral("dbus-daemon"),
            {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
        if (!m_daemon.waitForReadyRead(10'000))
            return false;
        m_address = QString::fromUtf8(m_daemon.readLine().trimmed());
        return connection("probe").isConnected();
    }

    /// The same for the same name.
    QDBusConnection connection(const char* name)
    {
        m_names << QString::fromUtf8(name);
        return QDBusConnection::connectToBus(m_address, m_names.back());
    }

private:
    QProcess m_daemon;
    QString m_address;
    QStringList m_names;
};

}  // namespace app::desktop
