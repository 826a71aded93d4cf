#include "app/desktop/asking.h"

#include <QApplication>
#include <QDialog>
#include <QEventLoop>

#include <algorithm>

namespace app::desktop {
namespace {

/// Of those that wait for an answer.
const char* const asked = "asked";

}  // namespace

Asking::Asking(QWidget& window, std::function<bool()> lanesRun)
    : m_window{window}
    , m_lanesRun{std::move(lanesRun)}
{
}

int Asking::ask(QDialog& dialog) const
{
    const auto others = m_window.findChildren<QDialog*>();
    const auto open = std::ranges::find_if(others, [&](const QDialog* other) {
        return other != &dialog && other->isVisible() && other->property(asked).toBool();
    });
    if (open != others.end()) {
        (*open)->raise();
        (*open)->activateWindow();
        return QDialog::Rejected;
    }
    dialog.setProperty(asked, true);
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
    bool any = false;
    while (QWidget* const menu = QApplication::activePopupWidget())
        if (any = true; !menu->close())
            break;
    auto dialogs = m_window.findChildren<QDialog*>();
    std::ranges::reverse(dialogs);  // What one asks comes before the one itself.
    for (QDialog* dialog : dialogs)
        if (dialog->isVisible()) {
            dialog->reject();
            any = true;
        }
    return any;
}

}  // namespace app::desktop
