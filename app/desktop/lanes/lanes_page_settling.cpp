#include "app/desktop/lanes/lanes_page.h"

// What the page does in the moment after it came into view.

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
    setAttribute(Qt::WA_TransparentForMouseEvents, false);
}

}  // namespace app::desktop
