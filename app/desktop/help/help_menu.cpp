#include "app/desktop/help/help_menu.h"

namespace app::desktop {

HelpMenu::HelpMenu(QWidget* parent)
    : QMenu{tr("&Help"), parent}
{
    QAction* page = addAction(tr("This &page"), this, &HelpMenu::pageWanted);
    page->setObjectName(QStringLiteral("pageHelp"));
    page->setShortcut(QKeySequence{Qt::Key_F1});
    QAction* cautions = addAction(tr("&Cautions"), this, &HelpMenu::cautionsWanted);
    cautions->setObjectName(QStringLiteral("cautionsMenu"));
    cautions->setShortcut(QKeySequence{Qt::Key_F2});
}

}  // namespace app::desktop
