#include "app/desktop/setup/setup_page.h"

#include "app/desktop/help/help_sheet.h"
#include "app/desktop/lanes/notice.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/setup/basics_panel.h"
#include "app/desktop/setup/head_panel.h"
#include "app/desktop/setup/preparation_text.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace app::desktop {
namespace {

/// "coats[2].zones[0]" is in coat 2; what is in none counts as in the first.
int coatOf(const std::string& place)
{
    return place.starts_with("coats[") ? QString::fromStdString(place)
                                             .section(QLatin1Char{'['}, 1, 1)
                                             .section(QLatin1Char{']'}, 0, 0)
                                             .toInt()
                                       : 0;
}

}  // namespace

SetupPage::SetupPage(const Theme& theme, ServiceDocument& document, Preparation& preparation,
                     std::shared_ptr<const core::measure::TimeZones> zones,
                     std::function<core::measure::Instant()> now, QWidget* parent)
    : QWidget{parent}
    , m_document{document}
    , m_preparation{preparation}
    , m_heads{new HeadsBar{document}}
    , m_lastTime{new Notice{theme, QStringLiteral("notice"), QStringLiteral("assess")}}
    , m_tour{new Notice{theme, QStringLiteral("notice"), QStringLiteral("start")}}
{
    setObjectName(QStringLiteral("setupPage"));
    auto* body = new QWidget;
    auto* layout = new QVBoxLayout{body};
    layout->setContentsMargins(metrics::gapLarge, metrics::gapSmall, metrics::gapLarge, metrics::gapTiny);
    layout->setSpacing(metrics::gapSmall);
    m_lastTime->setObjectName(QStringLiteral("lastTime"));
    connect(m_lastTime->offer(tr("Put it away")), &QPushButton::clicked, this, [this] { sayLastTime({}); });
    connectTour();
    const std::vector<QWidget*> above{m_heads, m_lastTime, m_tour, new BasicsPanel{document, zones, now}};
    if (!Theme::textIsLarge())
        for (QWidget* part : above)
            layout->addWidget(part);
    auto* splitter = new QSplitter{Qt::Vertical};
    splitter->setChildrenCollapsible(false);
    m_parts = makeParts(theme, Moments{zones, now});
    m_plan = new PlanPanel{theme, document, zones, now};
    splitter->addWidget(m_parts);
    splitter->addWidget(m_plan);
    splitter->setStretchFactor(0, 0);
    splitter->setStretchFactor(1, 1);
    splitter->setSizes({230, 400});
    // Where there is not room for all of it the tables and the picture scroll, and where text is large all of
    // the page; what starts the lanes does not.
    auto* scroll = new QScrollArea;
    scroll->setObjectName(QStringLiteral("setupScroll"));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_before = new PreparationPanel{theme, preparation, std::move(now)};
    scroll->setWidget(Theme::textIsLarge() ? inOne(above, splitter) : splitter);
    scroll->viewport()->setAutoFillBackground(false);
    scroll->widget()->setAutoFillBackground(false);
    m_scroll = scroll;
    m_help = new HelpSheet{theme, HelpFor::Setup};
    auto* row = new QHBoxLayout;
    row->setSpacing(metrics::gapSmall);
    row->addWidget(scroll, 1);
    row->addWidget(m_help, 1);
    layout->addLayout(row, 1);
    connect(m_help, &HelpSheet::closed, this, &SetupPage::arrangeHelp);

    auto* outer = new QVBoxLayout{this};
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(0);
    outer->addWidget(body, 1);
    outer->addWidget(makeFoot(theme));
    connect(&preparation, &Preparation::changed, this, &SetupPage::followStanding);
    connect(m_before, &PreparationPanel::linesChanged, this, &SetupPage::arrangeFoot);
    connect(&m_document, &ServiceDocument::changed, this, &SetupPage::follow);
    connect(m_plan, &PlanPanel::standingChanged, this, &SetupPage::followStanding);
    connect(m_plan, &PlanPanel::problemChosen, this, &SetupPage::goTo);
    follow();
}

void SetupPage::keepPlanInView()
{
    QScrollBar* const bar = m_scroll->verticalScrollBar();
    const auto keep = [this, bar] {
        m_plan->setMinimumHeight(std::min(m_scroll->viewport()->height(), m_plan->sizeHint().height()));
        bar->setValue(bar->maximum());
    };
    connect(bar, &QScrollBar::rangeChanged, this, keep);
    connect(bar, &QScrollBar::rangeChanged, this, &SetupPage::scrolled);
    connect(bar, &QScrollBar::valueChanged, this, &SetupPage::scrolled);
    connect(m_plan, &PlanPanel::standingChanged, this, keep);
    keep();
}

void SetupPage::connectTour()
{
    m_tour->setObjectName(QStringLiteral("tourOffer"));
    const auto put = [this] {
        m_tour->say({});
        Q_EMIT tourAnswered();
    };
    const auto* take = m_tour->offer(tr("A short tour  (Shift+F1)"));
    connect(take, &QPushButton::clicked, this, put);
    connect(take, &QPushButton::clicked, this, &SetupPage::tourWanted);
    connect(m_tour->offer(tr("Not now")), &QPushButton::clicked, this, put);
}

void SetupPage::offerTour()
{
    m_tour->say(tr("New here? A short tour shows a whole service at high speed. Nothing of it is kept."));
}

void SetupPage::toggleHelp()
{
    m_help->toggle();
    arrangeHelp();
}

/// Where both have no room the tables give way to what is read about them; what starts the lanes does not.
void SetupPage::arrangeHelp()
{
    const int tables = m_parts->tabBar()->sizeHint().width() + m_coats->sizeHint().width();
    m_help->share(*m_scroll, width() - 2 * metrics::gapLarge,
                  std::max(tables, m_scroll->widget()->minimumSizeHint().width()));
}

void SetupPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrangeHelp();
    arrangeFoot();
}

void SetupPage::sayLastTime(const QString& text)
{
    m_lastTime->say(text);
}

QString SetupPage::lastTime() const
{
    return m_lastTime->text();
}

/// What is above the tables, these, and the list below them, to be scrolled together; what is open in the
/// list is said at the start all the same.
QWidget* SetupPage::inOne(const std::vector<QWidget*>& above, QWidget* rest)
{
    auto* all = new QWidget;
    auto* layout = new QVBoxLayout{all};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(metrics::gapSmall);
    for (QWidget* part : above)
        layout->addWidget(part);
    layout->addWidget(rest, 1);
    layout->addWidget(m_before);
    // Once there is room for what was opened.
    connect(
        m_before, &PreparationPanel::opened, this, [this] { m_scroll->ensureWidgetVisible(m_before); },
        Qt::QueuedConnection);
    return all;
}

void SetupPage::goToPreparation()
{
    m_before->goToOpen();
}

QTabWidget* SetupPage::makeParts(const Theme& theme, const Moments& moments)
{
    auto* parts = new QTabWidget;
    parts->setObjectName(QStringLiteral("parts"));
    parts->tabBar()->setDrawBase(false);
    const std::pair<edits::Part, QString> pages[] = {
        {edits::Part::Zones, tr("&Zones")},         {edits::Part::Bowls, tr("Bo&wls")},
        {edits::Part::Groups, tr("Rinse &groups")}, {edits::Part::Coats, tr("&Coats and drying")},
        {edits::Part::Hands, tr("&Hands")},
    };
    for (const auto& [part, title] : pages) {
        m_panels.push_back(new PartPanel{theme, m_document, part, moments});
        parts->addTab(m_panels.back(), title);
    }
    m_head = new HeadPanel{theme, m_document};
    parts->addTab(m_head, tr("O&n the head"));
    // The zone that is chosen in the table is chosen on the drawing, and the other way round.
    PartPanel* const zones = m_panels.front();
    connect(zones, &PartPanel::rowChosen, m_head, &HeadPanel::choose);
    connect(m_head, &HeadPanel::chosen, zones, &PartPanel::chooseRow);
    parts->setCornerWidget(makeCoatBar(), Qt::TopRightCorner);
    return parts;
}

QWidget* SetupPage::makeCoatBar()
{
    auto* bar = new QWidget;
    auto* row = new QHBoxLayout{bar};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(metrics::gapTiny);
    m_coats = new QTabBar;
    m_coats->setObjectName(QStringLiteral("coats"));
    m_coats->setAccessibleName(tr("Coats"));
    m_coats->setDrawBase(false);
    m_coats->setExpanding(false);
    row->addWidget(m_coats);
    connect(m_coats, &QTabBar::currentChanged, this, &SetupPage::showCoat);
    return bar;
}

QWidget* SetupPage::makeFoot(const Theme& theme)
{
    auto* foot = new QFrame;
    foot->setProperty("role", QStringLiteral("foot"));
    m_foot = new QGridLayout{foot};
    m_foot->setContentsMargins(metrics::gapLarge, metrics::gapSmall, metrics::gapLarge, metrics::gapSmall);
    m_foot->setSpacing(metrics::gapSmall);
    m_foot->setColumnStretch(0, 1);
    m_hint = new QLabel;
    m_hint->setObjectName(QStringLiteral("startHint"));
    m_hint->setProperty("role", QStringLiteral("quiet"));
    m_hint->setWordWrap(true);
    m_start = new QPushButton{tr("Start the lanes  (Ctrl+Enter)")};
    m_start->setObjectName(QStringLiteral("start"));
    m_start->setAccessibleName(tr("Start"));
    m_start->setProperty("role", QStringLiteral("main"));
    m_start->setMinimumHeight(metrics::target);
    m_start->setFont(Theme::font(metrics::textLarge, true));
    const auto sign = [this, &theme] {
        QIcon icon = theme.icon(QStringLiteral("start"), theme.colours().onAction);
        // Else nothing is seen of it where the button has no ground of its own.
        const QIcon still = theme.icon(QStringLiteral("start"), theme.colours().quietInk);
        for (const QSize& size : still.availableSizes())
            icon.addPixmap(still.pixmap(size), QIcon::Disabled);
        m_start->setIcon(icon);
    };
    sign();
    connect(&theme, &Theme::changed, m_start, sign);
    connect(m_start, &QPushButton::clicked, this, &SetupPage::startRequested);
    connect(m_before, &PreparationPanel::soundCheckRequested, this, &SetupPage::soundCheckRequested);
    connect(m_before, &PreparationPanel::allAnswered, m_start, qOverload<>(&QWidget::setFocus));
    arrangeFoot();
    return foot;
}

/// The button beside the list and its words where there is room for all lines of the list in a row; else
/// beside the words, or, where they are large, below them.
void SetupPage::arrangeFoot()
{
    const int room = width() - 2 * metrics::gapLarge - metrics::gap;
    const bool beside =
        !Theme::textIsLarge() && m_before->widthOfLines() + m_start->sizeHint().width() <= room;
    if (m_foot->count() > 0 && beside == m_isStartBeside)
        return;
    m_isStartBeside = beside;
    while (m_foot->count() > 0)
        delete m_foot->takeAt(0);
    if (Theme::textIsLarge()) {
        m_foot->addWidget(m_hint, 0, 0);
        m_foot->addWidget(m_start, 1, 0, Qt::AlignRight);
        return;
    }
    m_foot->addWidget(m_before, 0, 0, 1, beside ? 1 : 2);
    m_foot->addWidget(m_hint, 1, 0);
    if (beside)
        m_foot->addWidget(m_start, 0, 1, 2, 1, Qt::AlignBottom);
    else
        m_foot->addWidget(m_start, 1, 1);
}

bool SetupPage::canStart() const
{
    return !m_running && m_plan->standing() == PlanPanel::Standing::Planned;
}

void SetupPage::setRunning(bool running)
{
    if (running == m_running)
        return;
    m_running = running;
    followStanding();
}

void SetupPage::follow()
{
    const auto& coats = m_document.service().coats;
    const QSignalBlocker quiet{m_coats};
    while (m_coats->count() > static_cast<int>(coats.size()))
        m_coats->removeTab(m_coats->count() - 1);
    for (std::size_t coat = 0; coat < coats.size(); ++coat) {
        const int place = static_cast<int>(coat);
        const QString name = QString::fromStdString(coats[coat].name);
        if (place < m_coats->count())
            m_coats->setTabText(place, name);
        else
            m_coats->addTab(name);
    }
    showCoat(std::max(0, m_coats->currentIndex()));
}

void SetupPage::showCoat(int coat)
{
    for (PartPanel* panel : m_panels)
        panel->showCoat(static_cast<std::size_t>(coat));
    m_head->showCoat(static_cast<std::size_t>(coat));
    m_plan->showCoat(static_cast<std::size_t>(coat));
}

void SetupPage::goTo(std::size_t head, const std::string& place)
{
    m_document.showHead(head);
    m_coats->setCurrentIndex(coatOf(place));
    for (std::size_t panel = 0; panel < m_panels.size(); ++panel) {
        if (!m_panels[panel]->goTo(place))
            continue;
        m_parts->setCurrentIndex(static_cast<int>(panel));
        m_panels[panel]->goTo(place);
        return;
    }
}

void SetupPage::followStanding()
{
    m_start->setEnabled(canStart());
    m_hint->setText(hint());
    followPreparation();
}

void SetupPage::followPreparation()
{
    // While lanes run the list is that of the next time, and there is nothing to prepare for yet.
    m_before->setVisible(!m_running);
    const auto& plan = m_plan->plan();
    const auto& services = m_document.services();
    m_before->showFor(services, m_plan->clock(),
                      plan ? preparation_text::mixingOrder(services, plan->data(), m_plan->clock())
                           : QString{});
}

QString SetupPage::hint() const
{
    if (m_running)
        return tr("Lanes are running. What you change here is for the next time.");
    switch (m_plan->standing()) {
    case PlanPanel::Standing::Planned: break;
    case PlanPanel::Standing::Planning: return tr("Planning …");
    case PlanPanel::Standing::NothingFits: return tr("Nothing fits yet, so there is nothing to start.");
    case PlanPanel::Standing::Wrong: return tr("Something above is marked; put it right to start.");
    }
    const QString open = preparation_text::open(m_preparation, m_document.services());
    // Good to know, and the first to go where text is large.
    return open.isEmpty() && !Theme::textIsLarge()
        ? tr("Once the lanes run, every answer is saved by itself.")
        : open;
}

}  // namespace app::desktop
