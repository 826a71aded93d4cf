#include "app/desktop/setup/head_panel.h"

#include "app/desktop/look/head_drawing.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QButtonGroup>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace app::desktop {
namespace {

using core::service::Place;
using core::service::Zone;

/// A piece of the zone's pattern, as the drawing has it.
QIcon swatch(std::size_t zone, const Theme& theme)
{
    constexpr int side = 28;
    constexpr double scale = 2;
    QPixmap pixmap{QSize{side, side} * scale};
    pixmap.setDevicePixelRatio(scale);
    pixmap.fill(Qt::transparent);
    QPainter painter{&pixmap};
    painter.setRenderHint(QPainter::Antialiasing);
    QPainterPath shape;
    shape.addRoundedRect(QRectF{1, 1, side - 2, side - 2}, 5, 5);
    std::vector<QPainterPath> fibres;
    for (int fibre = 0; fibre < 4; ++fibre) {
        QPainterPath path{QPointF{5.0 + 6 * fibre, 3}};
        path.lineTo(5 + 6 * fibre, side - 3);
        fibres.push_back(path);
    }
    HeadDrawing::paintPattern(painter, shape, fibres, zone, theme);
    painter.setPen(QPen{theme.colours().line, 1});
    painter.drawPath(shape);
    return QIcon{pixmap};
}

}  // namespace

HeadPanel::HeadPanel(const Theme& theme, ServiceDocument& document, QWidget* parent)
    : QWidget{parent}
    , m_theme{theme}
    , m_document{document}
    , m_drawing{new HeadDrawing{theme}}
    , m_hint{new QLabel}
    , m_list{nullptr}
    , m_zones{new QButtonGroup{this}}
{
    setObjectName(QStringLiteral("headPanel"));
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(0, metrics::gapSmall, 0, 0);
    layout->setSpacing(metrics::gapLarge);
    layout->addWidget(m_drawing, 3);
    auto* scroll = new QScrollArea;  // A coat may have many zones.
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* side = new QWidget;
    auto* column = new QVBoxLayout{side};
    column->setContentsMargins(0, 0, metrics::gapSmall, 0);
    column->setSpacing(metrics::gapTiny);
    m_hint->setWordWrap(true);
    m_hint->setProperty("role", QStringLiteral("quiet"));
    m_hint->setText(
        tr("Choose a zone, then press where it is. The table of zones does not need it: nothing is "
           "planned by it."));
    column->addWidget(m_hint);
    m_list = new QVBoxLayout;
    m_list->setSpacing(metrics::gapTiny);
    column->addLayout(m_list);
    column->addStretch(1);
    scroll->setWidget(side);
    scroll->viewport()->setAutoFillBackground(false);
    side->setAutoFillBackground(false);
    layout->addWidget(scroll, 2);
    connect(m_drawing, &HeadDrawing::pressed, this, &HeadPanel::press);
    connect(&m_document, &ServiceDocument::changed, this, &HeadPanel::follow);
    connect(&theme, &Theme::changed, this, &HeadPanel::follow);
    // A screen reader toggles and does not click.
    connect(m_zones, &QButtonGroup::idToggled, this, [this](int zone, bool on) {
        if (on && static_cast<std::size_t>(zone) != m_chosen) {
            choose(static_cast<std::size_t>(zone));
            Q_EMIT chosen(m_chosen);
        }
    });
    follow();
}

void HeadPanel::showCoat(std::size_t coat)
{
    m_coat = coat;
    follow();
}

void HeadPanel::choose(std::size_t zone)
{
    m_chosen = zone;
    follow();
}

QSize HeadPanel::minimumSizeHint() const
{
    return isHidden() ? QSize{} : QWidget::minimumSizeHint();
}

void HeadPanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    updateGeometry();
}

void HeadPanel::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    updateGeometry();
}

void HeadPanel::follow()
{
    const auto& coats = m_document.service().coats;
    if (m_coat >= coats.size())
        return;
    const std::vector<Zone>& zones = coats[m_coat].zones;
    m_chosen = std::min(m_chosen, zones.empty() ? 0 : zones.size() - 1);
    fillZones();
    std::vector<ZoneOnHead> shown;
    for (const Zone& zone : zones)
        shown.push_back({QString::fromStdString(zone.name), zone.where});
    m_drawing->showZones(m_document.service().head.kind, std::move(shown), m_chosen);
}

void HeadPanel::fillZones()
{
    const auto& zones = m_document.service().coats[m_coat].zones;
    while (m_zones->buttons().size() > static_cast<qsizetype>(zones.size())) {
        QAbstractButton* last = m_zones->button(static_cast<int>(m_zones->buttons().size()) - 1);
        m_zones->removeButton(last);
        last->hide();
        last->deleteLater();
    }
    for (std::size_t zone = 0; zone < zones.size(); ++zone) {
        const int id = static_cast<int>(zone);
        if (m_zones->button(id) == nullptr) {
            auto* button = new QPushButton;
            button->setObjectName(QStringLiteral("zoneOnHead%1").arg(id + 1));
            button->setCheckable(true);
            button->setMinimumHeight(metrics::target);
            button->setStyleSheet(QStringLiteral("text-align: left;"));
            button->setIconSize({28, 28});
            m_zones->addButton(button, id);
            m_list->addWidget(button);
        }
        QAbstractButton* button = m_zones->button(id);
        const QString name = QString::fromStdString(zones[zone].name);
        button->setText(QStringLiteral("%1  %2").arg(id + 1).arg(name));
        button->setIcon(swatch(zone, m_theme));
        button->setChecked(zone == m_chosen);
        button->setAccessibleName(name);
        button->setAccessibleDescription(
            tr("on %n place(s)", nullptr, static_cast<int>(zones[zone].where.size())));
    }
}

void HeadPanel::press(Place place)
{
    const auto& zones = m_document.service().coats[m_coat].zones;
    if (m_chosen >= zones.size())
        return;
    const bool had = std::ranges::find(zones[m_chosen].where, place) != zones[m_chosen].where.end();
    const QString name = QString::fromStdString(zones[m_chosen].name);
    m_document.edit(tr("where %1 is").arg(name), [&](auto& service) {
        auto& changed = service.coats[m_coat].zones;
        for (Zone& zone : changed)
            std::erase(zone.where, place);
        if (!had) {
            changed[m_chosen].where.push_back(place);
            std::ranges::sort(changed[m_chosen].where);
        }
    });
    Q_EMIT chosen(m_chosen);
}

}  // namespace app::desktop
