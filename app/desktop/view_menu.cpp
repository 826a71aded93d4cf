#include "app/desktop/view_menu.h"

#include <QActionGroup>

namespace app::desktop {
namespace {

const QString themeKey = QStringLiteral("theme");
const QString textSizeKey = QStringLiteral("textSize");
constexpr int usualSize = 100;

}  // namespace

ViewMenu::ViewMenu(Theme& theme, QSettings& settings, QWidget* parent)
    : QMenu{tr("&View"), parent}
    , m_theme{theme}
    , m_settings{settings}
{
    addThemes();
    addSeparator();
    addTextSizes();
}

void ViewMenu::restore(Theme& theme, const QSettings& settings)
{
    theme.choose(static_cast<Theme::Choice>(settings.value(themeKey, 0).toInt()));
    theme.setTextSize(settings.value(textSizeKey, usualSize).toInt());
}

void ViewMenu::addThemes()
{
    auto* group = new QActionGroup{this};
    const std::pair<Theme::Choice, QString> choices[] = {
        {Theme::Choice::System, tr("As the &system")},
        {Theme::Choice::Light, tr("&Light")},
        {Theme::Choice::Dark, tr("&Dark")},
        {Theme::Choice::HighContrast, tr("&High contrast")},
        {Theme::Choice::DarkHighContrast, tr("High contrast, d&ark")}};
    for (const auto& [choice, name] : choices) {
        QAction* action = addAction(name);
        action->setObjectName(QStringLiteral("theme%1").arg(static_cast<int>(choice)));
        action->setCheckable(true);
        action->setActionGroup(group);
        action->setChecked(choice == m_theme.choice());
        connect(action, &QAction::triggered, this, [this, chosen = choice] {
            m_theme.choose(chosen);
            m_settings.setValue(themeKey, static_cast<int>(chosen));
        });
    }
}

void ViewMenu::addTextSizes()
{
    auto* group = new QActionGroup{this};
    for (const int percent : {usualSize, 125, 150, 200}) {
        QAction* action =
            addAction(percent == usualSize ? tr("Text as &usual") : tr("Text at &%1 %").arg(percent));
        action->setObjectName(QStringLiteral("text%1").arg(percent));
        action->setCheckable(true);
        action->setActionGroup(group);
        action->setChecked(percent == Theme::textSize());
        connect(action, &QAction::triggered, this, [this, percent] {
            m_theme.setTextSize(percent);
            m_settings.setValue(textSizeKey, percent);
            Q_EMIT textSizeChanged();
        });
    }
}

}  // namespace app::desktop
