#pragma once

#include "app/desktop/lanes/lane_card.h"

#include <QWidget>

#include <vector>

class QGridLayout;
class QLabel;

namespace app::desktop {

/// All lanes, as many side by side as there is room for. Compact ones are set out so that their digits are as
/// large as they can be; where there is no room for all of them, those that press most are shown, and how
/// many there are beside them.
class LanesGrid : public QWidget {
    Q_OBJECT

public:
    LanesGrid(const Theme& theme, bool compact, QWidget* parent = nullptr);

    void showLanes(const view::LanesView& lanes, const WallClock& clock);
    [[nodiscard]] const std::vector<LaneCard*>& cards() const { return m_cards; }

    /// How high it is at least where it is so wide, whatever it is now. Of compact lanes, two rows are
    /// enough.
    [[nodiscard]] int leastHeight(int width) const;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Places {
        int columns = 1;
        std::size_t shown = 0;

        friend bool operator==(const Places&, const Places&) = default;
    };

    void arrange();
    void arrangeOnce();
    void setOut(const std::vector<std::size_t>& places);
    void sizeTitles();
    void sayRest(const std::vector<std::size_t>& places);
    [[nodiscard]] std::vector<view::LaneView> lanes() const;
    [[nodiscard]] int columnsFor(int width) const;
    [[nodiscard]] Places placesFor(const QSize& room) const;
    [[nodiscard]] QSize cardSize(const QSize& room, int columns, int rows) const;
    [[nodiscard]] int digitsHeight(const QSize& room, int columns) const;

    const Theme& m_theme;
    bool m_compact;
    QGridLayout* m_layout;
    std::vector<LaneCard*> m_cards;
    QLabel* m_rest;  ///< What is not shown.
    Places m_places;
    bool m_arranging = false;
    bool m_again = false;
    std::vector<std::size_t> m_shown;
};

}  // namespace app::desktop
