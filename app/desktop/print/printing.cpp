#include "app/desktop/print/printing.h"

#include "app/desktop/print/paper.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QMenu>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>

#include <memory>

namespace app::desktop::print {

Printing::Printing(QWidget& window, Source source)
    : QObject{&window}
    , m_window{window}
    , m_source{std::move(source)}
{
}

void Printing::addTo(QMenu& menu)
{
    QAction* last = menu.actions().constLast();
    const auto add = [&](const QString& text, const QString& name, const QKeySequence& keys, auto&& what) {
        auto* action = new QAction{text, &menu};
        action->setObjectName(name);
        action->setShortcut(keys);
        connect(action, &QAction::triggered, this, what);
        menu.insertAction(last, action);
    };
    add(tr("&Print …"), QStringLiteral("filePrint"), QKeySequence::Print, [this] { print(); });
    add(tr("Save as P&DF …"), QStringLiteral("filePdf"), {}, [this] { savePdf(); });
    menu.insertSeparator(last);
}

std::vector<Sheet> Printing::take()
{
    auto sheets = m_source();
    if (sheets.empty())
        say(tr("There is no plan yet that could be printed."));
    return sheets;
}

void Printing::print()
{
    auto sheets = take();
    if (sheets.empty())
        return;
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setPageLayout(usualPaper(QLocale{}));
    printer->setDocName(sheets.front().title);
    auto* dialog = new QPrintDialog{printer.get(), &m_window};
    dialog->setObjectName(QStringLiteral("printDialog"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setModal(false);
    connect(dialog, qOverload<QPrinter*>(&QPrintDialog::accepted), this,
            [this, printer, sheets = std::move(sheets)] { printOn(*printer, sheets); });
    dialog->show();
}

void Printing::printOn(QPrinter& printer, const std::vector<Sheet>& sheets)
{
    if (!draw(sheets, printer))
        say(tr("Nothing was printed: the printer does not take it."));
}

void Printing::savePdf()
{
    const auto sheets = take();
    if (sheets.empty())
        return;
    auto* dialog = new QFileDialog{&m_window, tr("Save as PDF"), {}, tr("PDF (*.pdf)")};
    dialog->setObjectName(QStringLiteral("pdfDialog"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setDefaultSuffix(QStringLiteral("pdf"));
    dialog->selectFile(
        sheets.front().title.section(QLatin1Char{':'}, 0, 0).replace(QLatin1Char{'/'}, QLatin1Char{'-'})
        + QStringLiteral(".pdf"));
    dialog->setModal(false);
    connect(dialog, &QFileDialog::fileSelected, this, &Printing::savePdfTo);
    dialog->show();
}

void Printing::savePdfTo(const QString& path)
{
    const auto sheets = take();
    if (sheets.empty())
        return;
    if (const auto wrong = writePdf(sheets, path, usualPaper(QLocale{})))
        say(*wrong);
}

void Printing::say(const QString& text)
{
    auto* box = new QMessageBox{QMessageBox::Information, tr("Print"), text, QMessageBox::Ok, &m_window};
    box->setObjectName(QStringLiteral("printMessage"));
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setModal(false);
    box->show();
}

}  // namespace app::desktop::print
