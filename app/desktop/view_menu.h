#pragma once

#include "app/desktop/look/theme.h"

#include <QMenu>
#include <QSettings>

namespace app::desktop {

/// Which colours, and how large text is. Both are kept.
class ViewMenu : public QMenu {
    Q_OBJECT

public:
    ViewMenu(Theme& theme, QSettings& settings, QWidget* parent);

    /// What was chosen when the program was used last.
    static void restore(Theme& theme, const QSettings& settings);

Q_SIGNALS:
    /// What is on the screen is to be built again.
    void textSizeChanged();

private:
    void addThemes();
    void addTextSizes();

    Theme& m_theme;
    QSettings& m_settings;
};

}  // namespace app::desktop
