#pragma once

#include "app/desktop/lanes/lane_card.h"

#include <QWidget>

#include <vector>

class QGridLayout;

namespace app::desktop {

/// All lanes, as many side by side as there is room for.
class LanesGrid : public QWidget {
    Q_OBJECT

public:
    LanesGrid(const Theme& theme, bool compact, QWidget* parent = nullptr);

    void showLanes(const view::LanesView& lanes, const WallClock& clock);
    [[nodiscard]] const std::vector<LaneCard*>& cards() const { return m_cards; }

    /// How high it is at least where it is so wide, whatever it is now.
    [[nodiscard]] int leastHeight(int width) const;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();
    [[nodiscard]] int columnsFor(int width) const;

    const Theme& m_theme;
    bool m_compact;
    QGridLayout* m_layout;
    std::vector<LaneCard*> m_cards;
    int m_columns = 0;
};

}  // namespace app::desktop
