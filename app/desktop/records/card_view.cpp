#include "app/desktop/records/card_view.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QPainter>
#include <QResizeEvent>

#include <algorithm>
#include <cmath>

namespace app::desktop {
namespace {

constexpr double leastWidth = 460;  ///< Of a sheet, in its own measure.
constexpr int between = 28;         ///< From one head to the next.

double scale()
{
    return Theme::textSize() / 100.0;
}

}  // namespace

CardView::CardView(const Theme& theme, QWidget* parent)
    : QWidget{parent}
    , m_theme{theme}
{
    setObjectName(QStringLiteral("card"));
    setAccessibleName(tr("Record card"));
    setFocusPolicy(Qt::StrongFocus);
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
}

void CardView::showSheets(std::vector<print::Sheet> sheets)
{
    m_sheets = std::move(sheets);
    layOut();
    setAccessibleDescription(inWords());
}

void CardView::layOut()
{
    const double width = std::max(leastWidth, (this->width() - 2 * metrics::gap) / scale());
    m_pages.clear();
    double height = 0;
    for (const print::Sheet& sheet : m_sheets) {
        m_pages.push_back(print::layOutAsOne(sheet, width));
        height += m_pages.back().height + between;
    }
    m_height = static_cast<int>(std::ceil(height * scale())) + metrics::gap;
    setMinimumHeight(m_height);
    updateGeometry();
    update();
}

QSize CardView::sizeHint() const
{
    return {minimumSizeHint().width() + Theme::scaled(300), m_height};
}

QSize CardView::minimumSizeHint() const
{
    return {static_cast<int>(leastWidth * scale()) + 2 * metrics::gap, m_height};
}

void CardView::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width())
        layOut();
}

void CardView::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.fillRect(rect(), m_theme.colours().ground);
    painter.translate(metrics::gap, metrics::gap);
    painter.scale(scale(), scale());
    for (const print::Scroll& scroll : m_pages) {
        print::paint(painter, scroll.page, m_theme.colours());
        painter.translate(0, scroll.height + between);
    }
}

/// Line by line, for those who listen.
QString CardView::inWords() const
{
    QStringList said;
    for (const print::Sheet& sheet : m_sheets) {
        said << sheet.title << sheet.subtitle;
        for (const print::Part& part : sheet.parts) {
            said << part.heading << part.text;
            if (!part.table)
                continue;
            for (const QStringList& row : part.table->rows) {
                QStringList cells;
                for (qsizetype column = 0; column < row.size(); ++column)
                    if (!row[column].isEmpty())
                        cells << (part.table->headings.value(column) + QLatin1Char{' '} + row[column])
                                     .trimmed();
                said << cells.join(QStringLiteral(", "));
            }
        }
    }
    said.removeAll(QString{});
    return said.join(QLatin1Char{'\n'});
}

}  // namespace app::desktop
