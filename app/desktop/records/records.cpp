#include "app/desktop/records/records.h"

#include "app/desktop/records/records_window.h"

#include <QAction>
#include <QMenu>

namespace app::desktop {

Records::Records(const Theme& theme, session::Session& session,
                 std::shared_ptr<const core::measure::TimeZones> zones, QWidget& window)
    : QObject{&window}
    , m_theme{theme}
    , m_session{session}
    , m_zones{std::move(zones)}
    , m_window{window}
{
}

void Records::addTo(QMenu& menu)
{
    auto* action = new QAction{tr("Record &cards …"), &menu};
    action->setObjectName(QStringLiteral("fileRecords"));
    action->setShortcut(QKeySequence{Qt::CTRL | Qt::Key_R});
    connect(action, &QAction::triggered, this, &Records::open);
    menu.insertAction(menu.actions().constLast(), action);
}

/// Read anew each time: another run may have ended meanwhile.
void Records::open()
{
    if (m_records) {
        if (!m_isAside)
            m_records->readRuns();
    } else {
        m_records = new RecordsWindow{m_theme, m_session, m_zones, &m_window};
        connect(m_records, &RecordsWindow::startAgain, this, &Records::startAgain);
    }
    m_isAside = false;
    m_records->setAttribute(Qt::WA_DeleteOnClose);
    m_records->show();
    m_records->raise();
    m_records->activateWindow();
}

bool Records::putAside()
{
    if (!m_records || !m_records->isVisible())
        return false;
    m_isAside = true;
    m_records->hide();
    return true;
}

}  // namespace app::desktop
