#pragma once

#include "app/desktop/look/strand_widget.h"
#include "app/desktop/print/plan_sheet.h"
#include "app/desktop/setup/background_planner.h"
#include "app/desktop/setup/cure_search.h"
#include "app/desktop/setup/forecaster.h"
#include "app/desktop/setup/service_document.h"
#include "app/desktop/setup/start_wish.h"

#include <QTimer>
#include <QWidget>

class QLabel;
class QListWidget;

namespace app::desktop {

class ReasonPanel;
class StartBar;
class StrandGrips;

/// The stagger of the service in Set-up, planned again as it is typed: the strands with what they hold for
/// and their forecast, or what is wrong, or why nothing fits and what would. Never the plan of what was.
class PlanPanel : public QWidget {
    Q_OBJECT

public:
    enum class Standing { Planning, Planned, NothingFits, Wrong };

    PlanPanel(const Theme& theme, ServiceDocument& document,
              std::shared_ptr<const core::measure::TimeZones> zones,
              std::function<core::measure::Instant()> now, QWidget* parent = nullptr);

    void showCoat(std::size_t coat);
    [[nodiscard]] Standing standing() const { return m_standing; }
    [[nodiscard]] const std::optional<core::stagger::Plan>& plan() const { return m_plan; }
    [[nodiscard]] WallClock clock() const;
    /// Something that is going to be shown is being worked out, or is about to be.
    [[nodiscard]] bool isAtWork() const
    {
        return m_pause.isActive() || m_planner.isBusy() || m_forecaster.isBusy() || m_cures.isBusy()
            || m_wish.isBusy();
    }

    /// The plan of what is typed, once there is one.
    [[nodiscard]] std::optional<print::PlanToPrint> toPrint() const;

    /// While nobody looks it is not planned again every minute.
    void setWatched(bool watched);

Q_SIGNALS:
    void standingChanged();
    /// A problem was chosen; `place` is where it is in the service of `head`.
    void problemChosen(std::size_t head, const std::string& place);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void build(const Theme& theme);
    void say(QLabel& label, const QString& text);
    void connectParts();
    void follow();
    void askAgain();
    void take(const BackgroundPlanner::Outcome& outcome);
    void takeForecast(const core::stagger::Forecast& forecast);
    void cure(std::size_t place);
    void showPlan();
    void showStrands();
    void showHolding();
    void followWish();
    void keepStart();
    void showReason(const core::stagger::NoPlan& reason);
    void showProblems();
    void addProblems(std::size_t head);
    void tellTime();
    /// One of the list, the reason and the strands.
    void showOnly(const QWidget* part);
    void stand(Standing standing);
    [[nodiscard]] core::stagger::Question question() const;

    ServiceDocument& m_document;
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    std::function<core::measure::Instant()> m_now;
    BackgroundPlanner m_planner;
    CureSearch m_cures;
    Forecaster m_forecaster;
    StartWish m_wish;
    QTimer m_pause;   ///< Between the last key and planning.
    QTimer m_minute;  ///< Without a time to be ready by the plan starts now, and now moves.
    QTimer m_progress;
    int m_halfSeconds = 0;                        ///< That planning has taken.
    std::vector<core::service::Service> m_asked;  ///< What is planned, or is being planned.
    core::measure::Instant m_askedAt;
    std::optional<core::stagger::Plan> m_plan;
    std::optional<core::stagger::Forecast> m_forecast;
    std::size_t m_coat = 0;
    Standing m_standing = Standing::Planning;
    QLabel* m_summary;
    QLabel* m_holding;
    QListWidget* m_problems;
    ReasonPanel* m_reason;
    StrandWidget* m_strands;
    StrandGrips* m_grips;
    StartBar* m_bar;
    QWidget* m_picture = nullptr;
};

}  // namespace app::desktop
