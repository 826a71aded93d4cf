#include "app/sound/priority.h"

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QObject>
#include <QProcess>

#include <gtest/gtest.h>

#include <unistd.h>

namespace app::sound {
namespace {

/// The system's service that hands out priorities, stood in for.
class Kit : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.RealtimeKit1")

public:
    quint64 thread = 0;
    qint32 niceness = 0;

public Q_SLOTS:
    void MakeThreadHighPriority(quint64 asked, qint32 wanted)
    {
        thread = asked;
        niceness = wanted;
    }
};

TEST(SoundPriority, IsAskedOfTheSystemForThisThread)
{
    QProcess daemon;
    daemon.start(
        QStringLiteral("dbus-daemon"),
        {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
    ASSERT_TRUE(daemon.waitForReadyRead(10'000)) << "dbus-daemon is needed for this test";
    const QString address = QString::fromUtf8(daemon.readLine().trimmed());
    auto service = QDBusConnection::connectToBus(address, QStringLiteral("kit"));
    Kit kit;
    ASSERT_TRUE(service.registerService(QStringLiteral("org.freedesktop.RealtimeKit1")));
    ASSERT_TRUE(service.registerObject(QStringLiteral("/org/freedesktop/RealtimeKit1"), &kit,
                                       QDBusConnection::ExportAllSlots));
    Priority::ask(QDBusConnection::connectToBus(address, QStringLiteral("asker")));
    const QDeadlineTimer deadline{5000};
    while (kit.thread == 0 && !deadline.hasExpired())
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    EXPECT_EQ(kit.thread, static_cast<quint64>(::gettid()));
    EXPECT_EQ(kit.niceness, Priority::niceness);
    QDBusConnection::disconnectFromBus(QStringLiteral("kit"));
    QDBusConnection::disconnectFromBus(QStringLiteral("asker"));
    daemon.kill();
    daemon.waitForFinished();
}

TEST(SoundPriority, DoesWithoutTheService)
{
    Priority::ask(QDBusConnection{QStringLiteral("no such bus")});
}

}  // namespace
}  // namespace app::sound

#include "priority_test.moc"
