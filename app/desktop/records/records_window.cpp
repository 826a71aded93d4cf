#include "app/desktop/records/records_window.h"

#include "app/desktop/help/help_sheet.h"
#include "app/desktop/lanes/outcome_panel.h"
#include "app/desktop/look/flow_layout.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/print/card_sheet.h"
#include "app/desktop/print/erased_sheet.h"
#include "app/desktop/records/card_view.h"
#include "app/desktop/records/last_time.h"
#include "app/desktop/records/result_words.h"
#include "app/desktop/wall_clock.h"
#include "app/output/wall_clock.h"
#include "app/session/stored_services.h"
#include "app/session/time_zones.h"
#include "core/run/amend/revisions.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>
#include <QSplitter>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int listWidth = 240;
constexpr int listHeight = 90;  ///< Where it stands above the card.
constexpr int listMargin = 24;  ///< Beside the text of a line of the list, a scroll bar included.

QLabel* makeText(const char* name)
{
    auto* label = new QLabel;
    label->setObjectName(QLatin1String{name});
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->hide();
    return label;
}

/// The run, as of its end, or of what was said last.
core::measure::Instant lastMoment(const session::PastRun& run)
{
    if (run.stored.ended)
        return *run.stored.ended;
    return run.facts.empty() ? run.setup.began : run.facts.back().recorded;
}

}  // namespace

RecordsWindow::RecordsWindow(const Theme& theme, session::Session& session,
                             std::shared_ptr<const core::measure::TimeZones> zones, QWidget* parent)
    : QDialog{parent}
    , m_theme{theme}
    , m_session{session}
    , m_zones{std::move(zones)}
    , m_printing{new print::Printing{*this, [this] { return m_sheets; }}}
    , m_parts{new QSplitter}
    , m_list{new QListWidget}
    , m_card{new CardView{theme}}
    , m_scroll{new QScrollArea}
    , m_empty{makeText("recordsEmpty")}
    , m_wrong{makeText("recordsWrong")}
    , m_outcome{new OutcomePanel}
    , m_help{new HelpSheet{theme, HelpFor::Records}}
{
    setObjectName(QStringLiteral("records"));
    setWindowTitle(tr("Record cards – Basinbell"));
    setModal(false);
    resize(1000, 680);
    auto* layout = new QVBoxLayout{this};
    layout->setSpacing(metrics::gapSmall);
    m_parts->setChildrenCollapsible(false);
    m_parts->addWidget(makeList());
    m_parts->addWidget(makeCard());
    m_parts->setStretchFactor(1, 1);
    m_parts->setSizes({Theme::scaled(listWidth), 760});
    layout->addWidget(makeHelp(), 1);
    layout->addWidget(m_wrong);
    layout->addWidget(m_outcome);
    layout->addWidget(makeFoot());
    connect(m_list, &QListWidget::currentRowChanged, this, &RecordsWindow::choose);
    connect(m_outcome, &OutcomePanel::answered, this, &RecordsWindow::tell);
    connect(m_outcome, &OutcomePanel::closed, m_outcome, &QWidget::hide);
    connect(&session, &session::Session::settled, this, &RecordsWindow::followSession);
    connect(&session, &session::Session::left, this, &RecordsWindow::followSession);
    readRuns();
}

void RecordsWindow::resizeEvent(QResizeEvent* event)
{
    arrange(event->size().width());
    QDialog::resizeEvent(event);
}

/// The list stands above the card where both have no room beside each other, or beside the help.
void RecordsWindow::arrange(int width)
{
    m_help->share(*m_parts, width - 2 * metrics::gap, m_card->minimumSizeHint().width() + listMargin);
    const int left = m_help->isHidden() ? width : width - m_help->minimumWidth();
    const bool narrow =
        left < Theme::scaled(listWidth) + m_card->minimumSizeHint().width() + 4 * metrics::gapLarge;
    m_list->setMaximumHeight(narrow ? Theme::scaled(listHeight) : QWIDGETSIZE_MAX);
    if (narrow == (m_parts->orientation() == Qt::Vertical))
        return;
    m_parts->setOrientation(narrow ? Qt::Vertical : Qt::Horizontal);
    m_parts->setSizes({Theme::scaled(narrow ? listHeight : listWidth), 760});
}

/// The cards, and beside them what is to be known of them, or in their place.
QWidget* RecordsWindow::makeHelp()
{
    auto* both = new QWidget;
    auto* row = new QHBoxLayout{both};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(metrics::gapSmall);
    row->addWidget(m_parts, 1);
    row->addWidget(m_help, 1);
    m_help->openByKey(*this, [this] { arrange(width()); });
    return both;
}

QWidget* RecordsWindow::makeList()
{
    m_list->setObjectName(QStringLiteral("recordsList"));
    m_list->setAccessibleName(tr("Runs, the latest first"));
    m_list->setWordWrap(true);
    m_list->setMinimumWidth(Theme::scaled(listWidth));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return m_list;
}

QWidget* RecordsWindow::makeCard()
{
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setWidget(m_card);
    m_empty->setText(
        tr("No run has been ended yet.\n\nA record card is made of what is answered while the lanes run: "
           "when each zone went on and came off, what was seen, how it turned out. When the last lane is "
           "dry, end the run, and its card is here.\n\nThe demo at high speed makes one in a minute."));
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setMargin(metrics::gapLarge);
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout{page};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_scroll, 1);
    layout->addWidget(m_empty, 1);
    return page;
}

QWidget* RecordsWindow::makeFoot()
{
    auto* foot = new QWidget;
    auto* row = new FlowLayout{foot};
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& text, const char* name, const QKeySequence& key) {
        auto* button = new QPushButton{text};
        button->setObjectName(QLatin1String{name});
        button->setMinimumHeight(std::max(metrics::target, Theme::scaled(26)));
        button->setShortcut(key);
        button->setAutoDefault(false);
        button->setProperty("role", QStringLiteral("narrow"));  // All of them on a line, in every language.
        row->addWidget(button);
        return button;
    };
    m_again =
        add(tr("Start the next coat from it  (Alt+N)"), "recordsAgain", QKeySequence{Qt::ALT | Qt::Key_N});
    m_turnedOut =
        add(tr("How it turned out …  (Alt+O)"), "recordsOutcome", QKeySequence{Qt::ALT | Qt::Key_O});
    m_print = add(tr("Print …  (Ctrl+P)"), "recordsPrint", QKeySequence::Print);
    m_pdf = add(tr("PDF …  (Ctrl+S)"), "recordsPdf", QKeySequence::Save);
    auto* close = add(tr("Close  (Esc)"), "recordsClose", {});
    connect(m_again, &QPushButton::clicked, this, &RecordsWindow::beginAgain);
    connect(m_turnedOut, &QPushButton::clicked, this, &RecordsWindow::askOutcome);
    connect(m_print, &QPushButton::clicked, this, [this] { m_printing->print(); });
    connect(m_pdf, &QPushButton::clicked, this, [this] { m_printing->savePdf(); });
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    return foot;
}

/// "Sat 14 Mar 2026, 14:00", and what it was.
QString RecordsWindow::lineOf(const session::StoredRun& run) const
{
    const auto services = session::servicesOf(run.run.services, run.run.began, *m_zones);
    const std::string zone = services ? services->front().timeZone : "UTC";
    const output::WallClock clock{*m_zones, zone, run.run.began, run.run.began};
    QString text = tr("%1, %2", "day, time")
                       .arg(words::day(run.run.began, *m_zones, zone),
                            QString::fromStdString(clock.text(run.run.began)));
    if (!services)
        return (run.damaged ? tr("%1\ndamaged") : tr("%1\nerased")).arg(text);
    for (const core::service::Service& service : *services)
        text += QLatin1Char{'\n'}
            + QString::fromStdString(service.head.name.empty() ? service.name
                                                               : service.name + ": " + service.head.name);
    return text;
}

bool RecordsWindow::showsCurrent(int row) const
{
    return m_current && row == 0;
}

std::optional<session::RunId> RecordsWindow::runAt(int row) const
{
    if (showsCurrent(row))
        return m_current;
    const auto place = static_cast<std::size_t>(row - (m_current ? 1 : 0));
    return place < m_runs.size() ? std::optional{m_runs[place].id} : std::nullopt;
}

/// The first line where it is not there.
int RecordsWindow::rowOf(std::optional<session::RunId> run) const
{
    for (int row = 0; row < m_list->count(); ++row)
        if (runAt(row) == run)
            return row;
    return 0;
}

void RecordsWindow::followSession()
{
    if (m_session.current() != m_current)
        readRuns();
}

/// As high as its text is in the narrowest list; a list view by itself cuts what it breaks.
void RecordsWindow::addRun(const QString& text)
{
    const int width = m_list->minimumWidth() - 2 * listMargin;
    const QRect box =
        m_list->fontMetrics().boundingRect(QRect{0, 0, width, QWIDGETSIZE_MAX}, Qt::TextWordWrap, text);
    auto* item = new QListWidgetItem{text, m_list};
    item->setSizeHint({0, std::max(metrics::target, box.height() + metrics::gap)});
}

void RecordsWindow::readRuns()
{
    const QSignalBlocker quiet{m_list};
    const auto chosen = runAt(m_list->currentRow());
    m_current = m_session.current();
    m_runs = m_session.past();
    std::erase_if(m_runs, [](const session::StoredRun& run) { return !run.ended; });
    m_list->clear();
    if (m_current)
        addRun(tr("This run, so far"));
    for (const session::StoredRun& run : m_runs)
        addRun(lineOf(run));
    if (m_list->count() == 0)
        return showEmpty();
    const int row = rowOf(chosen);
    m_list->setCurrentRow(row);
    choose(row);
}

void RecordsWindow::showEmpty()
{
    m_chosen.reset();
    m_sheets.clear();
    m_list->hide();
    m_scroll->hide();
    m_empty->show();
    for (QPushButton* button : {m_print, m_pdf, m_turnedOut, m_again})
        button->setEnabled(false);
}

void RecordsWindow::choose(int row)
{
    m_outcome->hide();
    m_wrong->hide();
    m_chosen.reset();
    m_sheets.clear();
    if (showsCurrent(row)) {
        m_chosen = session::soFar(m_session.setup(), m_session.facts());
    } else if (const auto place = static_cast<std::size_t>(row - (m_current ? 1 : 0));
               place < m_runs.size()) {
        auto run = m_session.lookBack(m_runs[place]);
        if (run)
            m_chosen = std::move(*run);
        else
            complain(QString::fromStdString(run.error()));
    }
    showCard();
}

void RecordsWindow::showCard()
{
    m_sheets.clear();
    if (m_chosen && m_chosen->isErased())
        showErased();
    else if (m_chosen)
        m_sheets = print::cardSheets(card(), core::run::servicesAt(m_chosen->setup, m_chosen->facts), m_theme,
                                     m_zones);
    m_card->showSheets(m_sheets);
    m_list->show();
    m_scroll->show();
    m_empty->hide();
    for (QPushButton* button : {m_print, m_pdf})
        button->setEnabled(!m_sheets.empty());
    // Of the run that goes on it is said in the lanes.
    const bool whole = m_chosen && !m_chosen->isErased();
    m_turnedOut->setEnabled(whole && m_chosen->stored.ended);
    m_again->setEnabled(whole);
}

view::RecordCard RecordsWindow::card() const
{
    const bool goesOn = showsCurrent(m_list->currentRow());
    return view::recordCard(m_chosen->setup, m_chosen->facts,
                            goesOn ? m_session.state().now : lastMoment(*m_chosen), *m_zones);
}

void RecordsWindow::showErased()
{
    const core::measure::Instant began = m_chosen->stored.run.began;
    const core::measure::Instant ended = m_chosen->stored.ended.value_or(began);
    m_sheets = {
        print::erasedSheet(view::erasedRun(m_chosen->facts), began, ended, *m_zones, session::localZone())};
}

void RecordsWindow::beginAgain()
{
    Q_EMIT startAgain(
        session::forNextTime(*m_chosen),
        lastTimeText(card(),
                     words::day(m_chosen->setup.began, *m_zones, m_chosen->setup.services.front().timeZone)));
    close();
}

void RecordsWindow::askOutcome()
{
    const auto state = core::run::stateAt(m_chosen->setup, m_chosen->facts, lastMoment(*m_chosen));
    const auto coats =
        view::coatResults(core::run::servicesAt(m_chosen->setup, m_chosen->facts), state, m_chosen->facts);
    if (coats.empty())
        return complain(tr("Nothing was rinsed in this run, so there is nothing that turned out."));
    const auto untold = std::ranges::find_if_not(coats, &view::CoatResult::isTold);
    m_outcome->open(untold == coats.end() ? coats.back() : *untold);
}

void RecordsWindow::tell(const core::run::Answer& answer)
{
    if (const auto wrong = m_session.tellOf(*m_chosen, answer))
        return complain(QString::fromStdString(*wrong));
    showCard();
}

void RecordsWindow::complain(const QString& what)
{
    m_wrong->setText(what);
    m_wrong->show();
}

}  // namespace app::desktop
