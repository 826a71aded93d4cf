#pragma once

#include "app/desktop/print/page_layout.h"

#include <QPageLayout>

class QLocale;
class QPagedPaintDevice;

namespace app::desktop::print {

/// Upright, of the size that is usual where `locale` is spoken, A4 or US Letter, with margins that a printer
/// keeps.
QPageLayout usualPaper(const QLocale& locale);

/// Sets the sheets on the device's pages, each on a page of its own or several, and draws them. False where
/// the device takes nothing.
bool draw(const std::vector<Sheet>& sheets, QPagedPaintDevice& device);

/// Writes them as a PDF, whole or not at all; what is wrong, in a sentence, where it cannot be written.
std::optional<QString> writePdf(const std::vector<Sheet>& sheets, const QString& path,
                                const QPageLayout& paper);

}  // namespace app::desktop::print
