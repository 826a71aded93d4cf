#pragma once

#include <QCoreApplication>
#include <QDBusConnection>
#include <QDeadlineTimer>
#include <QProcess>
#include <QString>

#include <gtest/gtest.h>

namespace app::desktop {

/// A message bus that nobody else is on.
class PrivateBus : public testing::Test {
protected:
    void SetUp() override
    {
        daemon.start(
            QStringLiteral("dbus-daemon"),
            {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
        ASSERT_TRUE(daemon.waitForReadyRead(10'000)) << "dbus-daemon is needed for this test";
        address = QString::fromUtf8(daemon.readLine().trimmed());
        ASSERT_TRUE(bus("services").isConnected());
    }

    void TearDown() override
    {
        for (const char* const name : {"services", "asker"})
            QDBusConnection::disconnectFromBus(QString::fromUtf8(name));
        daemon.kill();
        daemon.waitForFinished();
    }

    /// A connection of its own for each name, which is "services" or "asker".
    QDBusConnection bus(const char* name)
    {
        return QDBusConnection::connectToBus(address, QString::fromUtf8(name));
    }

    template <class Condition>
    static bool waitUntil(const Condition& condition)
    {
        const QDeadlineTimer deadline{5000};
        while (!condition() && !deadline.hasExpired())
            QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        return condition();
    }

    QProcess daemon;
    QString address;
};

}  // namespace app::desktop
