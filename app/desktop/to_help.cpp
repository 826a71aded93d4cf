#include "app/desktop/help/help_menu.h"
#include "app/desktop/lanes/lanes_page.h"
#include "app/desktop/main_window.h"
#include "app/desktop/setup/setup_page.h"

#include <QMenuBar>

// What the window says about itself.
namespace app::desktop {

void MainWindow::buildHelp()
{
    auto* help = new HelpMenu{menuBar()};
    menuBar()->addMenu(help);
    connect(help, &HelpMenu::pageWanted, this, &MainWindow::toggleHelp);
    connect(help, &HelpMenu::cautionsWanted, this, &MainWindow::showCautions);
}

void MainWindow::toggleHelp()
{
    if (showsLanes())
        m_lanes->toggleHelp();
    else
        m_setup->toggleHelp();
}

}  // namespace app::desktop
