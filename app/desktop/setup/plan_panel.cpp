#include "app/desktop/setup/plan_panel.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/words.h"

#include <QLabel>
#include <QListWidget>
#include <QVBoxLayout>

namespace app::desktop {
namespace {

constexpr int pauseMilliseconds = 60;
constexpr int minuteMilliseconds = 60'000;

}  // namespace

PlanPanel::PlanPanel(const Theme& theme, ServiceDocument& document,
                     std::shared_ptr<const core::measure::TimeZones> zones,
                     std::function<core::measure::Instant()> now, QWidget* parent)
    : QWidget{parent}
    , m_document{document}
    , m_zones{std::move(zones)}
    , m_now{std::move(now)}
    , m_summary{new QLabel}
    , m_problems{new QListWidget}
    , m_strands{new StrandWidget{theme}}
{
    build(theme);
    m_pause.setSingleShot(true);
    m_pause.setInterval(pauseMilliseconds);
    m_minute.setInterval(minuteMilliseconds);
    connect(&m_document, &ServiceDocument::changed, this, &PlanPanel::follow);
    connect(&m_pause, &QTimer::timeout, this, &PlanPanel::askAgain);
    connect(&m_minute, &QTimer::timeout, this, &PlanPanel::askAgain);
    connect(&m_planner, &BackgroundPlanner::answered, this, &PlanPanel::take);
    connect(m_problems, &QListWidget::itemActivated, this, [this](const QListWidgetItem* item) {
        Q_EMIT problemChosen(item->data(Qt::UserRole).toString().toStdString());
    });
    connect(m_problems, &QListWidget::itemClicked, m_problems, &QListWidget::itemActivated);
}

void PlanPanel::build(const Theme& theme)
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(metrics::gapTiny);
    m_summary->setObjectName(QStringLiteral("planSummary"));
    m_summary->setFont(Theme::font(metrics::textLane, true));
    m_summary->setWordWrap(true);
    m_summary->setTextFormat(Qt::PlainText);
    m_problems->setObjectName(QStringLiteral("problems"));
    m_problems->setAccessibleName(tr("What is wrong"));
    m_problems->setWordWrap(true);
    layout->addWidget(m_summary);
    layout->addWidget(m_problems, 1);
    layout->addWidget(m_strands, 1);
    m_problems->hide();
    const auto colour = [this, &theme] {
        for (int row = 0; row < m_problems->count(); ++row)
            m_problems->item(row)->setIcon(theme.icon(QStringLiteral("warning"), theme.colours().late));
    };
    connect(&theme, &Theme::changed, m_problems, colour);
    connect(m_problems->model(), &QAbstractItemModel::rowsInserted, m_problems, colour);
}

void PlanPanel::showCoat(std::size_t coat)
{
    m_coat = coat;
    if (m_plan)
        showPlan();
}

void PlanPanel::setWatched(bool watched)
{
    if (!watched)
        return m_minute.stop();
    m_minute.start();
    askAgain();
}

/// From the first key on the old picture is not the picture of this service any more.
void PlanPanel::follow()
{
    m_planner.forget();
    m_plan.reset();
    if (!m_document.problems().empty()) {
        m_pause.stop();
        return showProblems();
    }
    m_problems->hide();
    m_strands->setVisible(true);
    m_strands->setStale(true);
    m_summary->setText(tr("Planning …"));
    stand(Standing::Planning);
    m_pause.start();
}

void PlanPanel::askAgain()
{
    if (!m_document.problems().empty())
        return;
    core::stagger::Question question;
    question.services = {m_document.service()};
    question.now = std::chrono::ceil<std::chrono::minutes>(m_now());
    m_planner.ask(std::move(question));
}

void PlanPanel::take(const BackgroundPlanner::Outcome& outcome)
{
    if (!outcome)
        return showReason(outcome.error());
    m_plan = *outcome;
    showPlan();
    stand(Standing::Planned);
}

void PlanPanel::showPlan()
{
    const WallClock clock{m_zones, m_document.service().timeZone};
    const core::stagger::PlanData& plan = m_plan->data();
    m_problems->hide();
    m_strands->setVisible(true);
    m_strands->showPicture(view::plannedPicture(m_document.service(), plan, m_coat), clock,
                           [service = m_document.service()](const view::TaskId& id) {
                               return QString::fromStdString(core::stagger::taskName(service, id));
                           });
    m_summary->setText(summary(plan, clock));
}

QString PlanPanel::summary(const core::stagger::PlanData& plan, const WallClock& clock) const
{
    QString text = tr("Begin %1, done %2.").arg(clock.text(plan.start), clock.text(plan.end));
    const bool onTarget = plan.worth.deviation == core::measure::Harm{};
    if (onTarget)
        text += tr(" Every zone gets its target.");
    else
        text += tr(" Some zones miss their target, all keep their limits.");
    if (!plan.proved)
        text += tr(" There may be a better plan: the search was stopped.");
    return text;
}

void PlanPanel::showReason(const core::stagger::NoPlan& reason)
{
    m_strands->clear();
    m_strands->hide();
    m_summary->setText(QString::fromStdString(reason.text));
    m_problems->clear();
    for (const core::stagger::Demand& demand : reason.demands)
        m_problems->addItem(QString::fromStdString(demand.what));
    m_problems->setVisible(true);
    stand(Standing::NothingFits);
}

void PlanPanel::showProblems()
{
    m_strands->clear();
    m_strands->hide();
    m_summary->setText(tr("Put this right, and it is planned at once:"));
    m_problems->clear();
    for (const core::service::Problem& problem : m_document.problems()) {
        auto* item = new QListWidgetItem{QString::fromStdString(problemText(problem))};
        item->setData(Qt::UserRole, QString::fromStdString(problem.place));
        m_problems->addItem(item);
    }
    m_problems->setVisible(true);
    stand(Standing::Wrong);
}

void PlanPanel::stand(Standing standing)
{
    m_standing = standing;
    Q_EMIT standingChanged();
}

}  // namespace app::desktop
