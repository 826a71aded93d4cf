#include "app/desktop/lanes/alert_panel.h"
#include "app/desktop/lanes/answer_guard.h"
#include "app/desktop/lanes/lanes_page.h"
#include "app/desktop/lanes/now_panel.h"

// What the page does in the moment after it came into view, or after an answer.

namespace app::desktop {
namespace {

/// Longer than a person goes on typing after what is on the screen has changed, or presses twice what was to
/// be pressed once.
constexpr int settlingMilliseconds = 1200;

}  // namespace

void LanesPage::connectSettling()
{
    m_settling.setInterval(settlingMilliseconds);
    m_settling.setSingleShot(true);
    connect(&m_settling, &QTimer::timeout, this, &LanesPage::settled);
    m_guard->watch(*m_now);
    m_guard->watch(*m_alert);
}

/// A click reaches nothing meanwhile, for what ends the run may lie where another button was.
void LanesPage::settle()
{
    m_settling.start();
    setAttribute(Qt::WA_TransparentForMouseEvents);
}

void LanesPage::settled()
{
    m_settling.stop();
    m_guard->settled();
    setAttribute(Qt::WA_TransparentForMouseEvents, false);
}

}  // namespace app::desktop
