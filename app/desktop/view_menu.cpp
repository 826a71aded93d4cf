#include "app/desktop/view_menu.h"

#include "app/desktop/language.h"

#include <QActionGroup>

namespace app::desktop {
namespace {

const QString themeKey = QStringLiteral("theme");
const QString textSizeKey = QStringLiteral("textSize");
const QString languageKey = QStringLiteral("language");
const QString farKey = QStringLiteral("far");
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
    addSeparator();
    addLanguages();
    addSeparator();
    addFar();
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
            addAction(percent == usualSize ? tr("Text as &usual") : tr("Text at %1 %").arg(percent));
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

/// A language is named in itself: whoever reads no other finds it.
void ViewMenu::addLanguages()
{
    QMenu* menu = addMenu(tr("La&nguage"));
    menu->setObjectName(QStringLiteral("languages"));
    auto* group = new QActionGroup{this};
    const QString chosen = m_settings.value(languageKey).toString();
    const auto add = [&](const QString& name, const QString& code) {
        QAction* action = menu->addAction(name);
        action->setObjectName(QStringLiteral("language-") + code);
        action->setCheckable(true);
        action->setActionGroup(group);
        action->setChecked(code == chosen);
        connect(action, &QAction::triggered, this, [this, code] {
            m_settings.setValue(languageKey, code);
            language::use(code);
            Q_EMIT languageChanged();
        });
    };
    add(tr("As the &system"), {});
    for (const language::Offered& each : language::offered())
        add(each.name, each.code);
}

void ViewMenu::addFar()
{
    m_far = addAction(tr("From a&far"));
    m_far->setObjectName(QStringLiteral("fromAfar"));
    m_far->setCheckable(true);
    m_far->setChecked(isFar(m_settings));
    connect(m_far, &QAction::toggled, this, [this](bool far) {
        m_settings.setValue(farKey, far);
        Q_EMIT farChanged(far);
    });
}

bool ViewMenu::isFar(const QSettings& settings)
{
    return settings.value(farKey, false).toBool();
}

QString ViewMenu::chosenLanguage(const QSettings& settings)
{
    return settings.value(languageKey).toString();
}

}  // namespace app::desktop
