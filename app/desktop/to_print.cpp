#include "app/desktop/main_window.h"
#include "app/desktop/setup/setup_page.h"

// What the page in view has for paper.
namespace app::desktop {

std::vector<print::Sheet> MainWindow::toPrint() const
{
    if (showsLanes() && m_session.current() && m_session.state().plan)
        return print::planSheets({m_session.services(), *m_session.state().plan, {}, m_session.state()},
                                 m_theme, m_zones);
    if (const auto plan = m_setup->toPrint(); plan && !showsLanes())
        return print::planSheets(*plan, m_theme, m_zones);
    return {};
}

}  // namespace app::desktop
