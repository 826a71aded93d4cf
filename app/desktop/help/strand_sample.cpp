#include "app/desktop/help/strand_sample.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/strand_painter.h"
#include "app/desktop/look/theme.h"

#include <QPainter>
#include <QPainterPath>

namespace app::desktop {
namespace {

using core::run::Stage;
using view::Instant;
using view::Seconds;

constexpr int sampleWidth = 104;
constexpr int sampleHeight = 46;
constexpr double beyond = 26;  ///< What a strand picture leaves free at its right edge, and more.

/// Short of where the first line of the axis would be.
Instant at(int seconds)
{
    return Instant{Seconds{seconds}};
}

view::Strand usualStrand()
{
    view::Strand strand;
    strand.application = {at(20), at(80)};
    strand.clockStart = at(80);
    strand.water = at(200);
    strand.rinseEnd = at(240);
    strand.targetAt = at(190);
    strand.leastAt = strand.mostAt = at(1000);  // Outside of what is seen, where they are not told of.
    return strand;
}

void addWindow(view::Strand& strand)
{
    strand.leastAt = at(150);
    strand.mostAt = at(225);
}

view::StrandPicture handsAlone()
{
    view::StrandPicture picture;
    picture.reach = {at(10), at(110)};
    picture.hands = {{{}, {{{}, {at(20), at(50)}, false}, {{}, {at(65), at(100)}, true}}}};
    return picture;
}

/// Which part of the strand is to be seen.
view::Span reachOf(StrandSample::Kind kind)
{
    using Shape = StrandSample::Kind;
    switch (kind) {
    case Shape::Applied: return {at(10), at(90)};
    case Shape::Water: return {at(160), at(245)};
    case Shape::Planned: return {at(10), at(130)};
    case Shape::Window:
    case Shape::Broken:
    case Shape::Forecast: return {at(130), at(270)};
    default: return {at(60), at(180)};
    }
}

void addShape(StrandSample::Kind kind, view::StrandPicture& picture)
{
    using Shape = StrandSample::Kind;
    view::Strand& strand = picture.strands.front();
    switch (kind) {
    case Shape::Filled:
        strand.stage = Stage::Developing;
        picture.now = at(130);
        break;
    case Shape::Window:
        addWindow(strand);
        strand.water = at(205);
        break;
    case Shape::Broken:
        addWindow(strand);
        strand.water = at(250);
        break;
    case Shape::Looks: strand.looks = {{{}, at(100), true}, {{}, at(150), false}}; break;
    case Shape::Late: strand.late = {{{}, {at(105), at(140)}, {}}}; break;
    case Shape::Water: strand.targetAt = at(140); break;
    case Shape::Forecast:
        strand.targetAt = at(100);
        strand.forecast = view::StrandForecast{0, 0, {at(180), at(220)}};
        break;
    case Shape::Planned:
        strand.stage = Stage::Rinsed;
        strand.planned = view::PlannedStrand{{at(35), at(100)}, at(215)};
        break;
    default: break;
    }
}

}  // namespace

StrandSample::StrandSample(const Theme& theme, Kind kind, QWidget* parent)
    : QWidget{parent}
    , m_theme{theme}
    , m_kind{kind}
    , m_picture{pictureOf(kind)}
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
}

view::StrandPicture StrandSample::pictureOf(Kind kind)
{
    if (kind == Kind::Hands)
        return handsAlone();
    view::StrandPicture picture;
    picture.strands = {usualStrand()};
    picture.reach = reachOf(kind);
    addShape(kind, picture);
    return picture;
}

QSize StrandSample::sizeHint() const
{
    return {sampleWidth, std::max(sampleHeight, static_cast<int>(StrandGeometry::leastRow()))};
}

/// The picture's names and axis lie outside of what is seen.
void StrandSample::paintEvent(QPaintEvent*)
{
    StrandWords words;
    words.clock = [](Instant) { return QString{}; };
    words.detail = [](const view::Strand&) { return QString{}; };
    words.chance = words.detail;
    words.job = [](const view::TaskId&) { return QString{}; };
    words.jobIcon = [](const view::TaskId&, const QColor&) { return QIcon{}; };
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    QPainterPath edge;
    edge.addRoundedRect(QRectF{rect()}.adjusted(0.5, 0.5, -0.5, -0.5), metrics::radius, metrics::radius);
    painter.fillPath(edge, m_theme.colours().surface);
    painter.setClipPath(edge);
    constexpr double room = 60;  // Below the strand, for hands that are not there.
    const QRectF frame{-StrandGeometry::gutterWidth(), -StrandGeometry::axisHeight(),
                       StrandGeometry::gutterWidth() + rect().width() + beyond,
                       StrandGeometry::axisHeight() + rect().height() + (m_kind == Kind::Hands ? room : 8)};
    StrandPainter{painter, m_picture, frame, m_theme.colours(), words}.paint();
    painter.setClipping(false);
    painter.setPen(m_theme.colours().line);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(edge);
}

}  // namespace app::desktop
