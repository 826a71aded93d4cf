#include "app/desktop/setup/strand_grips.h"

#include "app/desktop/look/metrics.h"

#include <QEvent>

#include <algorithm>
#include <chrono>
#include <cmath>

namespace app::desktop {
namespace {

/// So many times the time that is in the picture otherwise.
constexpr double widened = 1.5;

}  // namespace

StrandGrips::StrandGrips(const Theme& theme, StrandWidget& strands, StartWish& wish)
    : QObject{&strands}
    , m_theme{theme}
    , m_strands{strands}
    , m_wish{wish}
{
    strands.installEventFilter(this);
}

StrandGrip* StrandGrips::make()
{
    auto* grip = new StrandGrip{m_theme, &m_strands};
    connect(grip, &StrandGrip::pulled, this, [this, grip](int minutes) {
        m_wish.tryOut(grip->zone(), minutes);
        place();  // What it resists to it does not show either.
    });
    connect(grip, &StrandGrip::taken, this, &StrandGrips::makeRoom);
    connect(grip, &StrandGrip::released, this, &StrandGrips::release);
    connect(grip, &StrandGrip::letGo, &m_wish, &StartWish::letGo);
    connect(grip, &StrandGrip::kept, this, &StrandGrips::kept);
    QWidget* const before = m_grips.empty() ? static_cast<QWidget*>(&m_strands) : m_grips.back();
    QWidget::setTabOrder(before, grip);
    return grip;
}

/// What is later comes to lie farther to the right. Times are laid closer together around the hand, and so
/// they stay while it pulls: the strand goes with the hand, and water stays in sight for as long as there is
/// room.
void StrandGrips::makeRoom(const QPoint& hand)
{
    const view::Span before = m_strands.picture().reach;
    const StrandGeometry geometry{m_strands.picture(), QRectF{m_strands.rect()}};
    const double left =
        (m_strands.mapFromGlobal(hand).x() - geometry.plot().left()) / geometry.plot().width();
    const auto added = std::chrono::duration<double>{before.until - before.from} * (widened - 1);
    const auto whole = [](auto length) { return std::chrono::round<view::Seconds>(length); };
    m_strands.holdReach(
        view::Span{before.from - whole(added * left), before.until + whole(added * (1 - left))});
    place();
}

/// A strand that was only touched is as it was.
void StrandGrips::release()
{
    place();
    if (m_wish.isOn() && !m_wish.isNews() && m_wish.stopped() == StartWish::Stopped::No)
        m_wish.letGo();
}

void StrandGrips::place()
{
    const view::StrandPicture& picture = m_strands.picture();
    while (m_grips.size() < picture.strands.size())
        m_grips.push_back(make());
    for (std::size_t gone = picture.strands.size(); gone < m_grips.size(); ++gone)
        m_grips[gone]->hide();
    if (std::ranges::none_of(m_grips, &StrandGrip::isHeld))
        m_strands.holdReach({});
    const StrandGeometry geometry{picture, QRectF{m_strands.rect()}};
    for (std::size_t strand = 0; strand < picture.strands.size(); ++strand) {
        placeOne(*m_grips[strand], strand, geometry);
        m_grips[strand]->show();
    }
}

void StrandGrips::placeOne(StrandGrip& grip, std::size_t place, const StrandGeometry& geometry)
{
    const view::Strand& strand = m_strands.picture().strands[place];
    grip.setZone(strand.zone, QString::fromStdString(strand.name));
    const bool isTried = m_wish.isOn() && m_wish.zone() == strand.zone;
    if (isTried)
        grip.showValue(m_wish.minutes(), m_wish.least(), m_wish.most());
    else
        grip.showValue(0, std::nullopt, std::nullopt);
    grip.setTrying(isTried);
    grip.setMinuteWidth(geometry.minuteWidth());
    const QRectF row = geometry.row(place);
    const double left =
        std::max(geometry.x(strand.application.from) - StrandGrip::handle, row.left() - StrandGrip::handle);
    const double right = std::max(geometry.x(strand.water), left + metrics::target);
    const int top = static_cast<int>(std::ceil(row.top()));
    grip.setGeometry(static_cast<int>(left), top, static_cast<int>(right - left),
                     static_cast<int>(std::floor(row.bottom())) - top);
}

void StrandGrips::describe(const QString& text)
{
    for (StrandGrip* grip : m_grips)
        grip->setAccessibleDescription(m_wish.isOn() && m_wish.zone() == grip->zone() ? text : QString{});
}

bool StrandGrips::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Resize)
        place();
    return QObject::eventFilter(watched, event);
}

}  // namespace app::desktop
