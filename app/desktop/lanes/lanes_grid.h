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

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();

    const Theme& m_theme;
    bool m_compact;
    QGridLayout* m_layout;
    std::vector<LaneCard*> m_cards;
    int m_columns = 0;
};

}  // namespace app::desktop
