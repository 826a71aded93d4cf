#include "app/desktop/help/help_menu.h"

namespace app::desktop {

HelpMenu::HelpMenu(QWidget* parent)
    : QMenu{tr("&Help"), parent}
    , m_tour{nullptr}
{
    QAction* page = addAction(tr("This &page"), this, &HelpMenu::pageWanted);
    page->setObjectName(QStringLiteral("pageHelp"));
    page->setShortcut(QKeySequence{Qt::Key_F1});
    m_tour = addAction({}, this, &HelpMenu::tourWanted);
    m_tour->setObjectName(QStringLiteral("tourMenu"));
    m_tour->setShortcut(QKeySequence{Qt::SHIFT | Qt::Key_F1});
    setRunning(false);
    QAction* cautions = addAction(tr("&Cautions"), this, &HelpMenu::cautionsWanted);
    cautions->setObjectName(QStringLiteral("cautionsMenu"));
    cautions->setShortcut(QKeySequence{Qt::Key_F2});
}

void HelpMenu::setRunning(bool running)
{
    m_tour->setEnabled(!running);
    m_tour->setText(running ? tr("A short &tour (not while lanes run)") : tr("A short &tour"));
}

}  // namespace app::desktop
