#pragma once

#include <QDBusConnection>
#include <QObject>
#include <QString>

namespace app::desktop {

/// A notice of the desktop's own, for when the window is not in view (Desktop Notifications Specification of
/// freedesktop.org). There is one at a time. Where nothing shows such notices, nothing happens.
class DesktopNotice : public QObject {
    Q_OBJECT

public:
    explicit DesktopNotice(QDBusConnection session, QObject* parent = nullptr);
    ~DesktopNotice() override;

    /// In the place of the one before. `pressing` stays until it is pressed or closed. Does not wait.
    void show(const QString& title, const QString& text, bool pressing);
    void close();

    [[nodiscard]] bool isShown() const { return m_number != 0; }

Q_SIGNALS:
    void pressed();

private Q_SLOTS:
    void takeAction(quint32 number, const QString& action);
    void takeEnd(quint32 number, quint32 reason);

private:
    QDBusConnection m_session;
    quint32 m_number = 0;  ///< The desktop's, 0 while there is none.
    int m_asked = 0;       ///< How often: the answer to an earlier time of asking is closed at once.
    bool m_wanted = false;
};

}  // namespace app::desktop
