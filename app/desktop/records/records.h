#pragma once

#include "app/session/session.h"

#include <QObject>
#include <QPointer>

class QMenu;
class QWidget;

namespace app::desktop {

class RecordsWindow;
class Theme;

/// Opens the record cards from a menu, in one window.
class Records : public QObject {
    Q_OBJECT

public:
    Records(const Theme& theme, session::Session& session,
            std::shared_ptr<const core::measure::TimeZones> zones, QWidget& window);

    /// Puts the way to them into `menu`, before its last part.
    void addTo(QMenu& menu);
    void open();

    /// Out of sight, as it is, until it is opened again. False where nothing is in sight.
    bool putAside();

Q_SIGNALS:
    /// See `RecordsWindow::startAgain`.
    void startAgain(const std::vector<core::service::Service>& services, const QString& lastTime);

private:
    const Theme& m_theme;
    session::Session& m_session;
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    QWidget& m_window;
    QPointer<RecordsWindow> m_records;
    bool m_isAside = false;
};

}  // namespace app::desktop
