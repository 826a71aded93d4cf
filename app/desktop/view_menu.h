#pragma once

#include "app/desktop/look/theme.h"

#include <QMenu>
#include <QSettings>

namespace app::desktop {

/// Which colours, how large text is, in which language, and whether lanes are to be read from afar. All are
/// kept.
class ViewMenu : public QMenu {
    Q_OBJECT

public:
    ViewMenu(Theme& theme, QSettings& settings, QWidget* parent);

    /// What was chosen when the program was used last.
    static void restore(Theme& theme, const QSettings& settings);

    /// The code of the language that was chosen; empty for that of the system.
    static QString chosenLanguage(const QSettings& settings);

    static bool isFar(const QSettings& settings);
    void setFar(bool far) { m_far->setChecked(far); }

Q_SIGNALS:
    void farChanged(bool far);
    /// What is on the screen is to be built again.
    void textSizeChanged();
    void languageChanged();

private:
    void addThemes();
    void addTextSizes();
    void addLanguages();
    void addFar();

    Theme& m_theme;
    QSettings& m_settings;
    QAction* m_far = nullptr;
};

}  // namespace app::desktop
