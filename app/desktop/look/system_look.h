#pragma once

#include "app/desktop/look/theme.h"

#include <QDBusConnection>
#include <QDBusVariant>
#include <QObject>

namespace app::desktop {

/// What the desktop asks programs to look like, by its settings portal (XDG desktop portal,
/// org.freedesktop.portal.Settings): asked once, and followed. Where there is no portal nothing is told.
class SystemLook : public QObject {
    Q_OBJECT

public:
    explicit SystemLook(QDBusConnection bus, QObject* parent = nullptr);

Q_SIGNALS:
    void changed(const app::desktop::Theme::SystemLook& look);

private Q_SLOTS:
    void take(const QString& area, const QString& key, const QDBusVariant& value);

private:
    void ask();
    bool put(const QString& key, const QVariant& value);

    QDBusConnection m_bus;
    Theme::SystemLook m_look;
};

}  // namespace app::desktop
