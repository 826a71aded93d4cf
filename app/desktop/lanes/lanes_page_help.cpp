#include "app/desktop/help/help_sheet.h"
#include "app/desktop/lanes/alert_panel.h"
#include "app/desktop/lanes/lanes_grid.h"
#include "app/desktop/lanes/lanes_page.h"
#include "app/desktop/lanes/outcome_panel.h"
#include "app/desktop/look/metrics.h"
#include "app/session/choice_search.h"

#include <algorithm>

// What the page does with its help: it never takes the place of an alarm or of what there is to do.

namespace app::desktop {

void LanesPage::connectHelp()
{
    connect(m_help, &HelpSheet::closed, this, [this] {
        refresh();
        takeFocus();
    });
}

/// One at a time with whatever else asks for room and has Esc for itself.
void LanesPage::toggleHelp()
{
    if (!m_session.current() || !m_alert->isHidden())
        return;
    if (!m_help->isHidden())
        return m_help->close();
    m_choices->close();
    openMore(false);
    closeOutcome();
    m_help->open();
    refresh();
}

int LanesPage::helpHeight() const
{
    return m_help->isHidden() ? 0 : m_help->minimumHeight() + metrics::gapSmall;
}

/// What is left beside the lanes, or beside their strip.
void LanesPage::giveHelpRoom()
{
    if (m_help->isHidden())
        return;
    int room = height() - roomTaken() + helpHeight() - metrics::gapSmall;
    for (const LanesGrid* lanes : {m_lanes, m_strip})
        if (!lanes->isHidden())
            room -= lanes->leastHeight(width() - 2 * metrics::gapLarge) + metrics::gapSmall;
    const int whole = m_help->wholeHeight(width() - 2 * metrics::gapLarge);
    m_help->setFixedHeight(std::max(HelpSheet::leastHeight(), std::min(whole, room)));
}

}  // namespace app::desktop
