#pragma once

#include "app/desktop/look/strand_widget.h"
#include "app/desktop/setup/background_planner.h"
#include "app/desktop/setup/service_document.h"

#include <QTimer>
#include <QWidget>

class QLabel;
class QListWidget;

namespace app::desktop {

/// The stagger of the service in Set-up, planned again as it is typed: the
/// strands, or what is wrong, or why nothing fits. Never the plan of what was.
class PlanPanel : public QWidget {
    Q_OBJECT

public:
    enum class Standing { Planning, Planned, NothingFits, Wrong };

    PlanPanel(const Theme& theme, ServiceDocument& document,
              std::shared_ptr<const core::measure::TimeZones> zones,
              std::function<core::measure::Instant()> now, QWidget* parent = nullptr);

    void showCoat(std::size_t coat);
    [[nodiscard]] Standing standing() const { return m_standing; }

    /// While nobody looks it is not planned again every minute.
    void setWatched(bool watched);

Q_SIGNALS:
    void standingChanged();
    /// A problem was chosen; `place` is where it is.
    void problemChosen(const std::string& place);

private:
    void build(const Theme& theme);
    void follow();
    void askAgain();
    void take(const BackgroundPlanner::Outcome& outcome);
    void showPlan();
    void showReason(const core::stagger::NoPlan& reason);
    void showProblems();
    void stand(Standing standing);
    [[nodiscard]] QString summary(const core::stagger::PlanData& plan, const WallClock& clock) const;

    ServiceDocument& m_document;
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    std::function<core::measure::Instant()> m_now;
    BackgroundPlanner m_planner;
    QTimer m_pause;   ///< Between the last key and planning.
    QTimer m_minute;  ///< Without a time to be ready by the plan starts now, and now moves.
    std::optional<core::stagger::Plan> m_plan;
    std::size_t m_coat = 0;
    Standing m_standing = Standing::Planning;
    QLabel* m_summary;
    QListWidget* m_problems;
    StrandWidget* m_strands;
};

}  // namespace app::desktop
