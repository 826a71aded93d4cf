#include "app/desktop/desktop_notice.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QVariantMap>

namespace app::desktop {
namespace {

const QString service = QStringLiteral("org.freedesktop.Notifications");
const QString noticePath = QStringLiteral("/org/freedesktop/Notifications");

/// What pressing the notice itself is called.
const QString pressing = QStringLiteral("default");

QDBusMessage toDesktop(const QString& method)
{
    return QDBusMessage::createMethodCall(service, noticePath, service, method);
}

}  // namespace

DesktopNotice::DesktopNotice(QDBusConnection session, QObject* parent)
    : QObject{parent}
    , m_session{std::move(session)}
{
    // From whoever it is: asking who has the name would wait for an answer.
    m_session.connect({}, noticePath, service, QStringLiteral("ActionInvoked"), this,
                      SLOT(takeAction(quint32, QString)));
    m_session.connect({}, noticePath, service, QStringLiteral("NotificationClosed"), this,
                      SLOT(takeEnd(quint32, quint32)));
}

DesktopNotice::~DesktopNotice()
{
    close();
}

void DesktopNotice::show(const QString& title, const QString& text, bool isPressing)
{
    m_wanted = true;
    if (!m_session.isConnected())
        return;
    constexpr int untilPressed = 0;
    constexpr int asTheDesktopLikes = -1;
    constexpr uchar low = 0;
    constexpr uchar critical = 2;
    QVariantMap hints;
    hints[QStringLiteral("urgency")] = QVariant::fromValue<uchar>(isPressing ? critical : low);
    hints[QStringLiteral("desktop-entry")] = QStringLiteral("basinbell");
    hints[QStringLiteral("suppress-sound")] = true;  // The alarm has a sound of its own.
    QDBusMessage message = toDesktop(QStringLiteral("Notify"));
    message << QStringLiteral("Basinbell") << m_number << QStringLiteral("basinbell") << title
            << text.toHtmlEscaped() << QStringList{pressing, tr("Show the lanes")} << hints
            << (isPressing ? untilPressed : asTheDesktopLikes);
    auto* const watcher = new QDBusPendingCallWatcher{m_session.asyncCall(message), this};
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, watcher, asked = ++m_asked] {
        const QDBusPendingReply<quint32> reply = *watcher;
        watcher->deleteLater();
        if (reply.isError() || asked != m_asked)
            return;
        m_number = reply.value();
        if (!m_wanted)
            close();
    });
}

void DesktopNotice::close()
{
    m_wanted = false;
    if (m_number == 0)
        return;
    QDBusMessage message = toDesktop(QStringLiteral("CloseNotification"));
    message << m_number;
    m_session.send(message);
    m_number = 0;
}

void DesktopNotice::takeAction(quint32 number, const QString& action)
{
    if (number == m_number && action == pressing)
        Q_EMIT pressed();
}

void DesktopNotice::takeEnd(quint32 number, quint32 /*reason*/)
{
    if (number == m_number)
        m_number = 0;
}

}  // namespace app::desktop
