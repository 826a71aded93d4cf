#pragma once

#include "app/desktop/print/sheet.h"

#include <QObject>

#include <functional>

class QMenu;
class QPrinter;
class QWidget;

namespace app::desktop::print {

/// Print and Save as PDF: what the page in view has to print. Asks for the printer and the file without
/// stopping anything that runs.
class Printing : public QObject {
    Q_OBJECT

public:
    /// What there is to print now; nothing where there is none.
    using Source = std::function<std::vector<Sheet>()>;

    Printing(QWidget& window, Source source);

    /// Puts both into `menu`, before its last part.
    void addTo(QMenu& menu);

    void print();
    void savePdf();
    /// Without asking where.
    void savePdfTo(const QString& path);

private:
    void printOn(QPrinter& printer, const std::vector<Sheet>& sheets);
    [[nodiscard]] std::vector<Sheet> take();
    void say(const QString& text);

    QWidget& m_window;
    Source m_source;
};

}  // namespace app::desktop::print
