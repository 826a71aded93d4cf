#include "app/desktop/look/strand_widget.h"

#include "app/desktop/look/strand_words.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/words.h"

#include <QPainter>

namespace app::desktop {

StrandWidget::StrandWidget(const Theme& theme, QWidget* parent)
    : QWidget{parent}
    , m_theme{theme}
{
    setObjectName(QStringLiteral("strands"));
    setAccessibleName(tr("Strands"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
}

void StrandWidget::showPicture(view::StrandPicture picture, const WallClock& clock,
                               std::function<QString(const view::TaskId&)> jobs)
{
    m_ownReach = picture.reach;
    picture.reach = m_heldReach.value_or(m_ownReach);
    if (picture == m_picture && !m_stale)
        return;
    const bool resized =
        picture.strands.size() != m_picture.strands.size() || picture.hands.size() != m_picture.hands.size();
    m_picture = std::move(picture);
    m_stale = false;
    m_words = strandWords(m_theme, m_picture, clock, std::move(jobs));
    setAccessibleDescription(inWords());
    if (resized)
        updateGeometry();
    update();
}

void StrandWidget::clear()
{
    m_picture = {};
    m_stale = false;
    setAccessibleDescription({});
    update();
}

void StrandWidget::setStale(bool stale)
{
    if (m_stale == stale)
        return;
    m_stale = stale;
    update();
}

void StrandWidget::holdReach(const std::optional<view::Span>& reach)
{
    if (reach == m_heldReach)
        return;
    m_heldReach = reach;
    m_picture.reach = m_heldReach.value_or(m_ownReach);
    update();
}

QSize StrandWidget::sizeHint() const
{
    return {900, StrandGeometry::leastHeight(m_picture) + 22 * static_cast<int>(m_picture.strands.size())};
}

QSize StrandWidget::minimumSizeHint() const
{
    return {480, StrandGeometry::leastHeight(m_picture)};
}

void StrandWidget::paintEvent(QPaintEvent*)
{
    if (m_picture.strands.empty())
        return;
    QPainter painter{this};
    if (m_stale)
        painter.setOpacity(0.35);
    StrandPainter{painter, m_picture, QRectF{rect()}, m_theme.colours(), m_words}.paint();
}

QString StrandWidget::inWords() const
{
    QStringList strands;
    for (const view::Strand& strand : m_picture.strands) {
        strands << tr("%1: applied from %2 to %3, water at %4, %5 min development.")
                       .arg(QString::fromStdString(strand.name), m_words.clock(strand.application.from),
                            m_words.clock(strand.application.until), m_words.clock(strand.water),
                            words::minutes(strand.development()));
        if (strand.wanted)
            strands << tr("Wanted not before %1.").arg(m_words.clock(strand.wanted->at));
        if (strand.forecast)
            strands << tr("Inside its limits %1; water from %2 to %3 in nine runs of ten.")
                           .arg(m_words.chance(strand), m_words.clock(strand.forecast->water.from),
                                m_words.clock(strand.forecast->water.until));
    }
    return strands.join(QLatin1Char{' '});
}

}  // namespace app::desktop
