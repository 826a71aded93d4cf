#include "app/desktop/setup/plan_panel.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/strand_geometry.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/sentences.h"
#include "app/desktop/setup/plan_text.h"
#include "app/desktop/setup/reason_panel.h"
#include "app/desktop/setup/start_bar.h"
#include "app/desktop/setup/start_text.h"
#include "app/desktop/setup/strand_grips.h"
#include "app/desktop/words.h"
#include "app/view/give_view.h"
#include "app/view/lane_view.h"
#include "core/stagger/head_name.h"

#include <QLabel>
#include <QListWidget>
#include <QScrollArea>
#include <QVBoxLayout>

namespace app::desktop {
namespace {

constexpr int pauseMilliseconds = 60;
constexpr int minuteMilliseconds = 60'000;
constexpr int halfSecondMilliseconds = 500;

/// Of a line that tells of a problem.
enum { PlaceRole = Qt::UserRole, HeadRole };

QLabel* makeLabel(const char* name)
{
    auto* label = new QLabel;
    label->setObjectName(QLatin1String{name});
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

/// What is done on another head is told by its name alone.
QString jobName(const std::vector<core::service::Service>& services, std::size_t head, const view::TaskId& id)
{
    return id.service == head ? inWords(core::stagger::taskName(services[id.service], id))
                              : QString::fromStdString(core::stagger::headName(services, id.service));
}

}  // namespace

PlanPanel::PlanPanel(const Theme& theme, ServiceDocument& document,
                     std::shared_ptr<const core::measure::TimeZones> zones,
                     std::function<core::measure::Instant()> now, QWidget* parent)
    : QWidget{parent}
    , m_document{document}
    , m_zones{std::move(zones)}
    , m_now{std::move(now)}
    , m_summary{makeLabel("planSummary")}
    , m_holding{makeLabel("planHolding")}
    , m_problems{new QListWidget}
    , m_reason{new ReasonPanel}
    , m_strands{new StrandWidget{theme}}
    , m_grips{new StrandGrips{theme, *m_strands, m_wish}}
    , m_bar{new StartBar}
{
    build(theme);
    m_pause.setSingleShot(true);
    m_pause.setInterval(pauseMilliseconds);
    m_minute.setInterval(minuteMilliseconds);
    m_progress.setInterval(halfSecondMilliseconds);
    connectParts();
}

void PlanPanel::build(const Theme& theme)
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(metrics::gapTiny);
    m_summary->setFont(Theme::font(metrics::textLane, true));
    m_problems->setObjectName(QStringLiteral("problems"));
    m_problems->setAccessibleName(tr("What is wrong"));
    m_problems->setWordWrap(true);
    // Many strands need more height than there is: then they scroll, two of them in view at least.
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(m_strands);
    scroll->viewport()->setAutoFillBackground(false);
    m_strands->setAutoFillBackground(false);
    constexpr int atLeast = 2;
    scroll->setMinimumHeight(
        static_cast<int>(StrandGeometry::axisHeight() + atLeast * StrandGeometry::leastRow()));
    m_picture = scroll;
    layout->addWidget(m_summary);
    layout->addWidget(m_holding);
    layout->addWidget(m_bar);
    for (QWidget* part : {static_cast<QWidget*>(m_problems), static_cast<QWidget*>(m_reason), m_picture})
        layout->addWidget(part, 1);
    showOnly(m_picture);
    const auto colour = [this, &theme] {
        for (int row = 0; row < m_problems->count(); ++row)
            m_problems->item(row)->setIcon(theme.icon(QStringLiteral("warning"), theme.colours().late));
    };
    connect(&theme, &Theme::changed, m_problems, colour);
    connect(m_problems->model(), &QAbstractItemModel::rowsInserted, m_problems, colour);
}

void PlanPanel::connectParts()
{
    connect(&m_document, &ServiceDocument::changed, this, &PlanPanel::follow);
    connect(&m_pause, &QTimer::timeout, this, &PlanPanel::askAgain);
    connect(&m_minute, &QTimer::timeout, this, &PlanPanel::askAgain);
    connect(&m_progress, &QTimer::timeout, this, &PlanPanel::tellTime);
    connect(&m_planner, &BackgroundPlanner::answered, this, &PlanPanel::take);
    connect(&m_forecaster, &Forecaster::forecasted, this, &PlanPanel::takeForecast);
    connect(&m_cures, &CureSearch::changed, this, [this] { m_reason->showCures(m_cures, clock()); });
    connect(m_reason, &ReasonPanel::chosen, this, &PlanPanel::cure);
    connect(&m_wish, &StartWish::changed, this, &PlanPanel::followWish);
    connect(m_grips, &StrandGrips::kept, this, &PlanPanel::keepStart);
    connect(m_bar, &StartBar::kept, this, &PlanPanel::keepStart);
    connect(m_bar, &StartBar::letGo, &m_wish, &StartWish::letGo);
    connect(m_problems, &QListWidget::itemActivated, this, [this](const QListWidgetItem* item) {
        Q_EMIT problemChosen(item->data(HeadRole).toULongLong(),
                             item->data(PlaceRole).toString().toStdString());
    });
    connect(m_problems, &QListWidget::itemClicked, m_problems, &QListWidget::itemActivated);
}

/// What is said is never cut, and how high it is depends on the width.
void PlanPanel::say(QLabel& label, const QString& text)
{
    label.setText(text);
    label.setMinimumHeight(text.isEmpty() ? 0 : label.heightForWidth(width()));
}

void PlanPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    for (QLabel* label : {m_summary, m_holding})
        say(*label, label->text());
}

void PlanPanel::showOnly(const QWidget* part)
{
    for (QWidget* other : {static_cast<QWidget*>(m_problems), static_cast<QWidget*>(m_reason), m_picture})
        other->setVisible(other == part);
}

void PlanPanel::showCoat(std::size_t coat)
{
    if (coat != m_coat)
        m_wish.letGo();
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

WallClock PlanPanel::clock() const
{
    return {m_zones, m_document.service().timeZone};
}

core::stagger::Question PlanPanel::question() const
{
    core::stagger::Question question;
    question.services = m_document.services();
    question.now = m_askedAt;
    return question;
}

/// From the first key on the old picture is not the picture of this service any more.
void PlanPanel::follow()
{
    if (m_document.services() == m_asked) {  // Another head is shown of what is planned already.
        m_wish.letGo();
        if (m_plan)
            showPlan();
        return;
    }
    m_plan.reset();
    m_forecast.reset();
    m_wish.forgetPlan();
    m_planner.forget();
    m_cures.forget();
    m_forecaster.forget();
    if (!m_document.isSound()) {
        m_asked.clear();
        m_pause.stop();
        m_progress.stop();
        return showProblems();
    }
    m_asked = m_document.services();
    showOnly(m_picture);
    m_strands->setStale(true);
    say(*m_summary, tr("Planning …"));
    say(*m_holding, {});
    m_halfSeconds = 0;
    m_progress.start();
    stand(Standing::Planning);
    m_pause.start();
}

/// The height of what is said stays while it is planned, so that nothing jumps at each key.
void PlanPanel::tellTime()
{
    ++m_halfSeconds;
    if (m_standing == Standing::Planning && m_halfSeconds % 2 == 0)
        say(*m_summary, tr("Planning … %1 s").arg(m_halfSeconds / 2));
}

void PlanPanel::askAgain()
{
    // A start that is tried out is compared with the plan as it is.
    if (!m_document.isSound() || m_wish.isOn())
        return;
    m_askedAt = std::chrono::ceil<std::chrono::minutes>(m_now());
    m_planner.ask(question());
}

void PlanPanel::take(const BackgroundPlanner::Outcome& outcome)
{
    m_progress.stop();
    if (m_wish.isOn())
        return;  // Asked for before; the next minute asks again.
    if (!outcome)
        return showReason(outcome.error());
    if (m_plan && m_plan->data() == outcome->data())
        return;
    m_plan = *outcome;
    m_wish.setPlan(question(), *m_plan);
    m_forecast.reset();
    m_cures.forget();
    showPlan();
    m_forecaster.ask(question(), *m_plan);
    stand(Standing::Planned);
}

void PlanPanel::takeForecast(const core::stagger::Forecast& forecast)
{
    m_forecast = forecast;
    if (m_plan)
        showPlan();
}

void PlanPanel::showPlan()
{
    showOnly(m_picture);
    showStrands();
    say(*m_summary, plan_text::summary(m_plan->data(), m_document.services().size(), clock()));
    showHolding();
}

/// As planned, or as they would be with a start that is tried out.
void PlanPanel::showStrands()
{
    const auto& services = m_document.services();
    view::StrandPicture picture;
    if (m_wish.isOn()) {
        view::WantedStart wanted{.at = m_wish.moment()};
        if (const auto& range = m_wish.range()) {
            wanted.earliest = range->earliest;
            wanted.latest = range->latest;
        }
        picture =
            view::changedPicture(services, m_plan->data(), m_wish.shown().data(), *m_wish.zone(), wanted);
    } else {
        picture = view::plannedPicture(services, m_plan->data(), {m_document.shownHead(), m_coat});
        if (m_forecast)
            view::addForecast(picture, services, *m_forecast);
    }
    // The picture stays for a moment when a zone of it is gone from the document, so it keeps what it names.
    m_strands->showPicture(std::move(picture), clock(),
                           [services, head = m_document.shownHead()](const view::TaskId& id) {
                               return jobName(services, head, id);
                           });
    m_grips->place();
}

/// What is said of a start that is tried out takes the place of what is said of the plan.
void PlanPanel::followWish()
{
    const bool says = m_wish.isOn() && (m_wish.isNews() || m_wish.stopped() != StartWish::Stopped::No);
    if (says && m_bar->isHidden()) {
        m_bar->setLeastHeight(m_summary->height()
                              + (m_holding->isHidden() ? 0 : m_holding->height() + metrics::gapTiny));
        m_summary->hide();
        m_holding->hide();
    }
    if (says)
        m_bar->tell(m_wish, m_document.services(), clock());
    m_bar->setVisible(says);
    m_summary->setVisible(!says);
    if (m_plan) {
        showHolding();
        showStrands();
    }
    m_grips->describe(says ? m_bar->text() : QString{});
}

/// It becomes a change like any other, and is undone like any other.
void PlanPanel::keepStart()
{
    if (!m_wish.isNews() || !m_bar->canKeep())
        return;
    const view::TaskId zone = *m_wish.zone();
    const auto wanted = m_wish.wanted();
    const std::string& name = m_document.services()[zone.service].coats[zone.coat].zones[zone.item].name;
    const QString change = wanted ? start_text::kept(name, *wanted, clock()) : start_text::letGo(name);
    m_document.edit(change, [zone, wanted](core::service::Service& service) {
        service.coats[zone.coat].zones[zone.item].notBefore = wanted;
    });
}

void PlanPanel::showHolding()
{
    QStringList said{
        plan_text::give(view::giveView(m_document.services(), m_plan->data(), m_document.shownHead()))};
    if (m_forecast)
        said << plan_text::forecast(*m_forecast);
    said.removeAll(QString{});
    say(*m_holding, said.join(QLatin1Char{' '}));
    m_holding->setVisible(!said.isEmpty() && m_bar->isHidden());
}

std::optional<print::PlanToPrint> PlanPanel::toPrint() const
{
    if (m_standing != Standing::Planned || !m_plan)
        return std::nullopt;
    return print::PlanToPrint{m_document.services(), *m_plan, m_forecast};
}

void PlanPanel::showReason(const core::stagger::NoPlan& reason)
{
    m_plan.reset();
    m_wish.forgetPlan();
    m_strands->clear();
    showOnly(m_reason);
    m_holding->hide();
    say(*m_summary, inWords(reason.text));
    m_reason->showReason(reason);
    m_cures.ask(question(), reason);
    stand(Standing::NothingFits);
}

/// A cure is a change like any other, and undone like any other.
void PlanPanel::cure(std::size_t place)
{
    if (place >= m_cures.cures().size())
        return;
    const core::stagger::Cure chosen = m_cures.cures()[place];
    m_document.editAll(plan_text::change(chosen, clock()), chosen.services);
}

void PlanPanel::showProblems()
{
    m_strands->clear();
    showOnly(m_problems);
    m_holding->hide();
    say(*m_summary, tr("Put this right, and it is planned at once:"));
    m_problems->clear();
    for (std::size_t head = 0; head < m_document.services().size(); ++head)
        addProblems(head);
    stand(Standing::Wrong);
}

void PlanPanel::addProblems(std::size_t head)
{
    for (const core::service::Problem& problem : m_document.problemsOf(head)) {
        const QString place = QString::fromStdString(problem.place);
        const QString what = inWords(problem.what);
        auto* item = new QListWidgetItem{
            words::ofHead(view::headOf(m_document.services(), head),
                          place.isEmpty() ? what : QStringLiteral("%1: %2").arg(place, what))};
        item->setData(PlaceRole, place);
        item->setData(HeadRole, static_cast<qulonglong>(head));
        m_problems->addItem(item);
    }
}

void PlanPanel::stand(Standing standing)
{
    m_standing = standing;
    Q_EMIT standingChanged();
}

}  // namespace app::desktop
