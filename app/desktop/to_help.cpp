#include "app/desktop/help/help_menu.h"
#include "app/desktop/lanes/lanes_page.h"
#include "app/desktop/main_window.h"
#include "app/desktop/setup/setup_page.h"
#include "app/desktop/tour/tour_window.h"

#include <QMenuBar>

// What the window says about itself.
namespace app::desktop {
namespace {

const QString tourKnownKey = QStringLiteral("tourKnown");

}  // namespace

void MainWindow::buildHelp()
{
    m_help = new HelpMenu{menuBar()};
    menuBar()->addMenu(m_help);
    m_help->setRunning(runs());
    connect(m_help, &HelpMenu::pageWanted, this, &MainWindow::toggleHelp);
    connect(m_help, &HelpMenu::tourWanted, this, &MainWindow::startTour);
    connect(m_help, &HelpMenu::cautionsWanted, this, &MainWindow::showCautions);
}

void MainWindow::toggleHelp()
{
    if (showsLanes())
        m_lanes->toggleHelp();
    else
        m_setup->toggleHelp();
}

void MainWindow::connectTour()
{
    const auto known = [this] { m_settings.setValue(tourKnownKey, true); };
    connect(m_setup, &SetupPage::tourAnswered, this, known);
    connect(m_setup, &SetupPage::tourWanted, this, &MainWindow::startTour);
}

void MainWindow::offerTour()
{
    if (!m_settings.value(tourKnownKey, false).toBool())
        m_setup->offerTour();
}

/// With a service, a session and a clock of its own: nothing of this window has a part in it.
void MainWindow::startTour()
{
    if (runs())
        return;
    const auto demo = m_files->readDemo(FileMenu::demoNames().value(0));
    if (!demo)
        return;
    auto* tour = new TourWindow{m_theme, *demo, m_session.clock().now(), m_zones, this};
    tour->resize(size());
    tour->show();
    tour->activateWindow();
}

}  // namespace app::desktop
