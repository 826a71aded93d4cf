#pragma once

#include "app/desktop/look/metrics.h"
#include "app/desktop/wall_clock.h"
#include "app/view/lane_view.h"

#include <QWidget>

namespace app::desktop {

class Theme;

namespace card_layout {
struct Compact;
}

/// One lane: its name, what it does, digits to be read from three metres, its
/// next look and its window. Draws what it is given and nothing else.
class LaneCard : public QWidget {
    Q_OBJECT

public:
    /// A `compact` card has small digits, for the strip below an alarm.
    LaneCard(const Theme& theme, bool compact, QWidget* parent = nullptr);

    void showLane(const view::LaneView& lane, std::size_t place, const WallClock& clock);
    [[nodiscard]] const view::LaneView& lane() const { return m_lane; }

    /// How large the digits are, as pixels of the typeface, on a compact card of that size.
    [[nodiscard]] static int compactDigits(const QSize& card);

    /// The largest that its name can be on a compact card of that size, as a size of `metrics`.
    [[nodiscard]] int titleFor(const QSize& card) const;
    /// Of a compact card: no larger than those beside it.
    void setTitle(int pixels);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double paintTitle(QPainter& painter, const QRectF& box, int pixels) const;
    void paintFull(QPainter& painter);
    void paintHead(QPainter& painter, const QRectF& inside, int height) const;
    void paintFoot(QPainter& painter, const QRectF& inside, int height) const;
    void paintCompact(QPainter& painter);
    double paintCompactDigits(QPainter& painter, const card_layout::Compact& parts) const;
    void paintGround(QPainter& painter);
    void paintSwatch(QPainter& painter, const QRectF& box) const;
    void paintWindow(QPainter& painter, const QRectF& bar) const;
    [[nodiscard]] int badgeRoom() const;
    void paintBadge(QPainter& painter, const QPointF& topRight, const QSizeF& room) const;
    void paintTone(QPainter& painter, const QRectF& room) const;
    [[nodiscard]] int titlePixels(double width, int largest) const;
    [[nodiscard]] QString digitsText() const;
    [[nodiscard]] QString lookText() const;
    [[nodiscard]] QString toneText() const;
    [[nodiscard]] QString inWords() const;
    [[nodiscard]] QColor digitColour() const;

    const Theme& m_theme;
    bool m_compact;
    view::LaneView m_lane;
    std::size_t m_place = 0;
    int m_title = metrics::textStep;
    WallClock m_clock;
};

}  // namespace app::desktop
