#include "app/desktop/keep_awake.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

namespace app::desktop {

namespace {

const QString us = QStringLiteral("Basinbell");

QDBusMessage toScreen(const QString& method)
{
    return QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.ScreenSaver"),
                                          QStringLiteral("/org/freedesktop/ScreenSaver"),
                                          QStringLiteral("org.freedesktop.ScreenSaver"), method);
}

/// Calls `then` with the reply, however it turns out.
template <class Then>
void ask(QObject* asker, QDBusConnection& bus, const QDBusMessage& message, const Then& then)
{
    if (!bus.isConnected())
        return;
    auto* const watcher = new QDBusPendingCallWatcher{bus.asyncCall(message), asker};
    QObject::connect(watcher, &QDBusPendingCallWatcher::finished, asker, [then, watcher] {
        then(*watcher);
        watcher->deleteLater();
    });
}

}  // namespace

KeepAwake::KeepAwake(QDBusConnection session, QDBusConnection system, QObject* parent)
    : QObject{parent}
    , m_session{std::move(session)}
    , m_system{std::move(system)}
{
}

KeepAwake::~KeepAwake()
{
    letGo();
}

void KeepAwake::hold(const QString& why)
{
    if (std::exchange(m_holds, true))
        return;
    ++m_asked;
    askScreen(why);
    askMachine(why);
}

void KeepAwake::askScreen(const QString& why)
{
    QDBusMessage message = toScreen(QStringLiteral("Inhibit"));
    message << us << why;
    ask(this, m_session, message, [this, asked = m_asked](const QDBusPendingReply<quint32>& reply) {
        if (reply.isError())
            return;
        if (m_holds && asked == m_asked)
            m_cookie = reply.value();
        else
            giveBack(reply.value());
    });
}

void KeepAwake::askMachine(const QString& why)
{
    QDBusMessage message = QDBusMessage::createMethodCall(
        QStringLiteral("org.freedesktop.login1"), QStringLiteral("/org/freedesktop/login1"),
        QStringLiteral("org.freedesktop.login1.Manager"), QStringLiteral("Inhibit"));
    message << QStringLiteral("sleep:idle") << us << why << QStringLiteral("block");
    ask(this, m_system, message,
        [this, asked = m_asked](const QDBusPendingReply<QDBusUnixFileDescriptor>& reply) {
            if (!reply.isError() && m_holds && asked == m_asked)
                m_lock = reply.value();
        });
}

void KeepAwake::letGo()
{
    m_holds = false;
    m_lock = {};
    if (m_cookie)
        giveBack(*m_cookie);
    m_cookie.reset();
}

void KeepAwake::giveBack(quint32 cookie)
{
    QDBusMessage message = toScreen(QStringLiteral("UnInhibit"));
    message << cookie;
    m_session.send(message);
}

}  // namespace app::desktop
