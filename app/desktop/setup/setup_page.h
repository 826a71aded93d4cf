#pragma once

#include "app/desktop/setup/heads_bar.h"
#include "app/desktop/setup/part_panel.h"
#include "app/desktop/setup/plan_panel.h"
#include "app/desktop/setup/preparation_panel.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QMenu;
class QPushButton;
class QScrollArea;
class QTabBar;
class QTabWidget;

namespace app::desktop {

class HeadPanel;
class HelpSheet;
class Notice;

/// Set-up: what is asked, and the stagger that comes of it. One main action: start.
class SetupPage : public QWidget {
    Q_OBJECT

public:
    SetupPage(const Theme& theme, ServiceDocument& document, Preparation& preparation,
              std::shared_ptr<const core::measure::TimeZones> zones,
              std::function<core::measure::Instant()> now, QWidget* parent = nullptr);

    /// Whether what is shown can be started.
    [[nodiscard]] bool canStart() const;

    /// While lanes run, another coat cannot be started.
    void setRunning(bool running);

    /// The heads that can be added.
    void setAddMenu(QMenu* menu) { m_heads->setAddMenu(menu); }

    [[nodiscard]] std::optional<print::PlanToPrint> toPrint() const { return m_plan->toPrint(); }

    /// What is worth knowing of the coat that this one begins from, until it is put away.
    void sayLastTime(const QString& text);
    [[nodiscard]] QString lastTime() const;

    void setWatched(bool watched) { m_plan->setWatched(watched); }

    /// The list before the start: to what is open in it.
    void goToPreparation();

    void toggleHelp();

    /// Where not all of it has room: the plan, and the tables above it are scrolled to.
    void keepPlanInView();

    /// Offers the tour, until it is answered.
    void offerTour();

Q_SIGNALS:
    void startRequested();
    void soundCheckRequested();
    void tourWanted();
    /// What is kept in view has moved.
    void scrolled();
    /// The offer of the tour was taken or put away.
    void tourAnswered();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* inOne(const std::vector<QWidget*>& above, QWidget* rest);
    QWidget* makeCoatBar();
    QWidget* makeFoot(const Theme& theme);
    QTabWidget* makeParts(const Theme& theme, const Moments& moments);
    void follow();
    void showCoat(int coat);
    void goTo(std::size_t head, const std::string& place);
    void followStanding();
    void followPreparation();
    void arrangeHelp();
    void arrangeFoot();
    void connectTour();
    [[nodiscard]] QString hint() const;

    ServiceDocument& m_document;
    Preparation& m_preparation;
    HeadsBar* m_heads;
    Notice* m_lastTime;
    Notice* m_tour;
    QTabBar* m_coats = nullptr;
    QTabWidget* m_parts = nullptr;
    std::vector<PartPanel*> m_panels;
    HeadPanel* m_head = nullptr;
    PlanPanel* m_plan = nullptr;
    bool m_running = false;
    PreparationPanel* m_before = nullptr;
    QScrollArea* m_scroll = nullptr;
    HelpSheet* m_help = nullptr;
    QGridLayout* m_foot = nullptr;
    bool m_isStartBeside = false;  ///< Beside the list.
    QLabel* m_hint = nullptr;
    QPushButton* m_start = nullptr;
};

}  // namespace app::desktop
