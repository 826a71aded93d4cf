#include "app/desktop/main_window.h"
#include "app/desktop/print/card_sheet.h"
#include "app/desktop/print/plan_sheet.h"
#include "app/desktop/setup/setup_page.h"

// What the page in view has for paper.
namespace app::desktop {

/// The plan; while lanes run what has happened with what is to come, and once all is done the record card.
std::vector<print::Sheet> MainWindow::toPrint() const
{
    if (!showsLanes()) {
        const auto plan = m_setup->toPrint();
        return plan ? print::planSheets(*plan, m_theme, m_zones) : std::vector<print::Sheet>{};
    }
    if (!m_session.current())
        return {};
    const core::run::State& state = m_session.state();
    if (!state.finished && state.plan)
        return print::planSheets({m_session.services(), *state.plan, {}, state}, m_theme, m_zones);
    const session::PastRun run = session::soFar(m_session.setup(), m_session.facts());
    return print::cardSheets(view::recordCard(run.setup, run.facts, state.now, *m_zones),
                             m_session.services(), m_theme, m_zones);
}

}  // namespace app::desktop
