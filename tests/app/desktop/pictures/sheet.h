#pragma once

#include "app/desktop/look/theme.h"

#include <QImage>
#include <QStringList>

#include <vector>

/// All scenes on one sheet of small pictures, to be looked over by a person and compared by a test.
namespace pictures {

struct Look {
    QString language = QStringLiteral("en");
    QString theme = QStringLiteral("light");  ///< light, dark, contrast or dark-contrast.
    QSize size{1024, 700};                    ///< Of the window.
    int text = 100;                           ///< In percent.

    /// As the sheet's file is called, without an ending.
    [[nodiscard]] QString name() const;
};

/// Those that are kept in docs/images/sheets: English in every theme.
std::vector<Look> looks();

app::desktop::Theme::Choice choiceOf(const QString& theme);

/// The scenes in their order, four in a row, each with its name below.
QImage sheetOf(const Look& look);

/// The scenes whose pictures are not the same for the eye, and by how much; a sheet of another size is other
/// as a whole.
QStringList differences(const QImage& one, const QImage& other);

}  // namespace pictures
