#pragma once

#include "app/desktop/look/theme.h"

#include <QSize>
#include <QString>

#include <vector>

namespace pictures {

/// In what the window is shown.
struct Look {
    QString language = QStringLiteral("en");
    QString theme = QStringLiteral("light");  ///< light, dark, contrast or dark-contrast.
    QSize size{1024, 700};                    ///< Of the window.
    int text = 100;                           ///< In percent.

    /// As its sheet's file is called, without an ending.
    [[nodiscard]] QString name() const;
};

/// Those whose sheets are kept in docs/images/sheets: English in every theme, every other language, size and
/// size of text in one.
std::vector<Look> looks();

app::desktop::Theme::Choice choiceOf(const QString& theme);

}  // namespace pictures
