#pragma once

#include "app/desktop/look/theme.h"

#include <QMenu>
#include <QSettings>

namespace app::desktop {

/// Which colours, how large text is, and in which language. All are kept.
class ViewMenu : public QMenu {
    Q_OBJECT

public:
    ViewMenu(Theme& theme, QSettings& settings, QWidget* parent);

    /// What was chosen when the program was used last.
    static void restore(Theme& theme, const QSettings& settings);

    /// The code of the language that was chosen; empty for that of the system.
    static QString chosenLanguage(const QSettings& settings);

Q_SIGNALS:
    /// What is on the screen is to be built again.
    void textSizeChanged();
    void languageChanged();

private:
    void addThemes();
    void addTextSizes();
    void addLanguages();

    Theme& m_theme;
    QSettings& m_settings;
};

}  // namespace app::desktop
