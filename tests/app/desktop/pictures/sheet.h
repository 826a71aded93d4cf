#pragma once

#include "tests/app/desktop/pictures/look.h"
#include "tests/app/desktop/pictures/scenes.h"

#include <QImage>

/// All scenes on one sheet of small pictures, to be looked over by a person and compared by a test.
namespace pictures {

/// The scene as it is on a sheet.
QImage smallPicture(const Scene& scene, const Look& look);

/// The scenes in their order, four in a row, each with its name below.
QImage sheetOf(const Look& look);

/// How large the sheet of a look is, with all scenes.
QSize sheetSize(const Look& look);

/// Into a file that is small enough to be kept.
bool write(const QImage& sheet, const QString& path);

/// A small picture as it comes out of such a file.
QImage packed(const QImage& picture);

/// The picture of one of the scenes, cut out of a sheet.
QImage cutOut(const QImage& sheet, std::size_t scene, const Look& look);

/// Of a hundred parts of two pictures so many are not the same for the eye.
double otherness(const QImage& one, const QImage& other);

/// What does not count yet. Drawn again on the machine that drew the sheets nothing is other; where letters
/// are smoothed and not fitted to whole pixels, 0.03 is.
constexpr double mostOther = 0.1;

}  // namespace pictures
