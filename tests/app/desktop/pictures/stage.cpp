#include "tests/app/desktop/pictures/stage.h"

#include "app/desktop/lanes/pulse.h"
#include "app/desktop/language.h"
#include "app/desktop/setup/plan_panel.h"

#include <QApplication>
#include <QPixmapCache>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <ctime>

namespace pictures {
namespace {

using app::desktop::PlanPanel;
using app::desktop::Pulse;
using app::desktop::Theme;

/// Cures are searched for in twenty seconds at most.
constexpr int longestWork = 30'000;

/// The toolkit makes a field for dates as wide as the longest in the machine's time zone.
void prepare(Theme& theme, const Look& look)
{
    qputenv("TZ", "UTC");
    tzset();
    QApplication::setCursorFlashTime(0);
    QPixmapCache::clear();
    app::desktop::language::use(look.language);
    theme.setTextSize(look.text);
    theme.choose(choiceOf(look.theme));
}

}  // namespace

Stage::Stage(const Scene& scene, const Look& look)
    : m_rig{[&look](Theme& theme) { prepare(theme, look); }}
{
    m_rig.window->resize(look.size);
    scene.stage(m_rig);
    hold();
}

/// What is planned comes when it is there, and then stays; what pulses stands lit.
void Stage::hold()
{
    EXPECT_TRUE(rig::Rig::wait([this] { return !isAtWork(); }, longestWork));
    for (Pulse* pulse : m_rig.window->findChildren<Pulse*>())
        pulse->hold();
    QWidget& shown = shownBy(m_rig);
    shown.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&shown));
}

bool Stage::isAtWork() const
{
    return std::ranges::any_of(m_rig.window->findChildren<PlanPanel*>(), &PlanPanel::isAtWork);
}

/// Parts are laid out one after the other, so it is drawn until it stays as it is.
QImage Stage::picture(const Look& look)
{
    constexpr int mostDrawings = 20;
    if (m_rig.theme->choice() != choiceOf(look.theme))
        m_rig.theme->choose(choiceOf(look.theme));
    QWidget& shown = shownBy(m_rig);
    shown.resize(look.size);
    QImage before;
    for (int drawing = 0; drawing < mostDrawings; ++drawing) {
        QTest::qWait(10);
        QImage now = shown.grab().toImage();
        if (now == before)
            return now;
        before = std::move(now);
    }
    ADD_FAILURE() << "It does not stand still.";
    return before;
}

}  // namespace pictures
