#pragma once

#include "app/desktop/look/head_geometry.h"

#include <QPushButton>
#include <QWidget>

namespace app::desktop {

class Theme;

/// A zone on the drawing: with colour, pattern and name, so that none of them tells it alone.
struct ZoneOnHead {
    QString name;
    std::vector<core::service::Place> places;
};

/// A head from the side and the back, or pieces of hair. Each place is a button with a shape of its own: it
/// can be pressed, has a name and says whose it is. One of them takes the keyboard; arrows go to its
/// neighbours.
class HeadDrawing : public QWidget {
    Q_OBJECT

public:
    explicit HeadDrawing(const Theme& theme, QWidget* parent = nullptr);

    /// `zones` by their place in the coat; those of `chosen` stand out.
    void showZones(core::service::HeadKind kind, std::vector<ZoneOnHead> zones, std::size_t chosen);

    /// The pattern of a zone, as places have it.
    static void paintPattern(QPainter& painter, const QPainterPath& shape,
                             const std::vector<QPainterPath>& fibres, std::size_t zone, const Theme& theme);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void pressed(core::service::Place place);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Spot {
        HeadSide side;
        DrawnPlace drawn;
        QPushButton* button;
    };

    void makeSpots(core::service::HeadKind kind);
    void placeSpots();
    void nameSpots();
    void paintSpot(QPainter& painter, const Spot& spot) const;
    void paintName(QPainter& painter, const Spot& spot) const;
    void move(const Spot& from, int key);
    [[nodiscard]] QTransform toWindow(HeadSide side) const;
    [[nodiscard]] std::optional<std::size_t> zoneAt(core::service::Place place) const;
    [[nodiscard]] bool isOfChosen(core::service::Place place) const;

    const Theme& m_theme;
    std::optional<core::service::HeadKind> m_kind;
    std::vector<ZoneOnHead> m_zones;
    std::size_t m_chosen = 0;
    std::vector<Spot> m_spots;
};

}  // namespace app::desktop
