#pragma once

#include "app/desktop/setup/cure_search.h"
#include "app/desktop/wall_clock.h"

#include <QScrollArea>

#include <vector>

class QGridLayout;
class QLabel;
class QVBoxLayout;

namespace app::desktop {

class OutcomeButton;

/// Below the reason why nothing fits: each change that would make it fit, as a button.
class ReasonPanel : public QScrollArea {
    Q_OBJECT

public:
    explicit ReasonPanel(QWidget* parent = nullptr);

    void showReason(const core::stagger::NoPlan& reason);
    void showCures(const CureSearch& search, const WallClock& clock);

Q_SIGNALS:
    void chosen(std::size_t cure);

private:
    void fill(const std::vector<core::stagger::Cure>& cures, const WallClock& clock);

    QVBoxLayout* m_layout;
    QGridLayout* m_grid;
    QLabel* m_minimal;
    QLabel* m_standing;
    std::vector<OutcomeButton*> m_buttons;
};

}  // namespace app::desktop
