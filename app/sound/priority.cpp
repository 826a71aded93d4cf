#include "app/sound/priority.h"

#include <QDBusMessage>

#include <sys/resource.h>
#include <unistd.h>

namespace app::sound {

bool Priority::take()
{
    return ::setpriority(PRIO_PROCESS, 0, niceness) == 0;
}

void Priority::ask(QDBusConnection system)
{
    if (!system.isConnected())
        return;
    const QString service = QStringLiteral("org.freedesktop.RealtimeKit1");
    QDBusMessage message =
        QDBusMessage::createMethodCall(service, QStringLiteral("/org/freedesktop/RealtimeKit1"), service,
                                       QStringLiteral("MakeThreadHighPriority"));
    message << static_cast<quint64>(::gettid()) << static_cast<qint32>(niceness);
    system.send(message);
}

}  // namespace app::sound
