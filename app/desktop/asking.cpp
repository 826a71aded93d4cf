#include "app/desktop/asking.h"

#include <QApplication>
#include <QDialog>
#include <QEventLoop>
#include <QScopedValueRollback>

#include <algorithm>

namespace app::desktop {
Asking::Asking(QWidget& window, std::function<bool()> lanesRun)
    : m_window{window}
    , m_lanesRun{std::move(lanesRun)}
{
}

int Asking::ask(QDialog& dialog)
{
    if (m_asked != nullptr) {
        m_asked->raise();
        m_asked->activateWindow();
        return QDialog::Rejected;
    }
    const QScopedValueRollback waiting{m_asked, &dialog};
    if (!m_lanesRun())
        return dialog.exec();
    QEventLoop untilAnswered;
    QObject::connect(&dialog, &QDialog::finished, &untilAnswered, &QEventLoop::quit);
    dialog.setModal(false);
    dialog.show();
    dialog.activateWindow();
    untilAnswered.exec();
    return dialog.result();
}

bool Asking::putAway() const
{
    bool any = closeMenus();
    auto dialogs = m_window.findChildren<QDialog*>();
    std::ranges::reverse(dialogs);  // What one asks comes before the one itself.
    for (QDialog* dialog : dialogs)
        if (dialog->isVisible()) {
            dialog->reject();
            any = true;
        }
    return any;
}

bool Asking::closeMenus()
{
    bool any = false;
    while (QWidget* const menu = QApplication::activePopupWidget()) {
        any = true;
        if (!menu->close())
            break;
    }
    return any;
}

}  // namespace app::desktop
