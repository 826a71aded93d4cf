#include "app/desktop/look/system_look.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

namespace app::desktop {
namespace {

const QString service = QStringLiteral("org.freedesktop.portal.Desktop");
const QString path = QStringLiteral("/org/freedesktop/portal/desktop");
const QString interface = QStringLiteral("org.freedesktop.portal.Settings");
const QString appearance = QStringLiteral("org.freedesktop.appearance");

using Areas = QMap<QString, QVariantMap>;

/// A setting may come wrapped once more than it should.
QVariant unwrapped(QVariant value)
{
    while (value.canConvert<QDBusVariant>())
        value = value.value<QDBusVariant>().variant();
    return value;
}

}  // namespace

SystemLook::SystemLook(QDBusConnection bus, QObject* parent)
    : QObject{parent}
    , m_bus{std::move(bus)}
{
    if (!m_bus.isConnected())
        return;
    qRegisterMetaType<QDBusVariant>();  // Connecting by name finds no slot whose types are not known by name.
    m_bus.connect(service, path, interface, QStringLiteral("SettingChanged"), this,
                  SLOT(take(QString, QString, QDBusVariant)));
    ask();
}

void SystemLook::ask()
{
    QDBusMessage message =
        QDBusMessage::createMethodCall(service, path, interface, QStringLiteral("ReadAll"));
    message << QStringList{appearance};
    auto* const watcher = new QDBusPendingCallWatcher{m_bus.asyncCall(message), this};
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, watcher] {
        watcher->deleteLater();
        const QDBusMessage reply = watcher->reply();
        if (reply.type() != QDBusMessage::ReplyMessage || reply.signature() != QLatin1String{"a{sa{sv}}"})
            return;
        const Areas areas = qdbus_cast<Areas>(reply.arguments().value(0));
        bool changes = false;
        const QVariantMap settings = areas.value(appearance);
        for (auto setting = settings.begin(); setting != settings.end(); ++setting)
            changes = put(setting.key(), unwrapped(setting.value())) || changes;
        if (changes)
            Q_EMIT changed(m_look);
    });
}

void SystemLook::take(const QString& area, const QString& key, const QDBusVariant& value)
{
    if (area == appearance && put(key, unwrapped(value.variant())))
        Q_EMIT changed(m_look);
}

/// Values that are not known count as no preference.
bool SystemLook::put(const QString& key, const QVariant& value)
{
    constexpr uint dark = 1;
    constexpr uint light = 2;
    constexpr uint higher = 1;
    const Theme::SystemLook before = m_look;
    const uint number = value.toUInt();
    if (key == QLatin1String{"color-scheme"})
        m_look.dark = number == dark || number == light ? std::optional{number == dark} : std::nullopt;
    if (key == QLatin1String{"contrast"})
        m_look.highContrast = number == higher;
    return m_look != before;
}

}  // namespace app::desktop
