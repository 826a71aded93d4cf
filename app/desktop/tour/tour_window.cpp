#include "app/desktop/tour/tour_window.h"

#include "app/desktop/lanes/lanes_page.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/setup/setup_page.h"
#include "app/desktop/tour/page_view.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>

#include <algorithm>

namespace app::desktop {
namespace {

using Stop = TourGuide::Stop;

QLabel* makeLabel(const char* name)
{
    auto* label = new QLabel;
    label->setObjectName(QLatin1String{name});
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace

TourWindow::TourWindow(const Theme& theme, const core::service::Service& service,
                       core::measure::Instant start, std::shared_ptr<const core::measure::TimeZones> zones,
                       QWidget* parent)
    : QWidget{parent, Qt::Window}
    , m_guide{service, start, zones}
    , m_view{new PageView{[this] { return leastPage(); }}}
    , m_pages{new QStackedWidget}
    , m_words{makeLabel("tourWords")}
    , m_place{makeLabel("tourPlace")}
    , m_goOn{new QPushButton}
    , m_leave{new QPushButton{tr("Leave the tour  (Esc)")}}
{
    setObjectName(QStringLiteral("tour"));
    setWindowTitle(tr("A short tour – Basinbell"));
    setWindowModality(Qt::ApplicationModal);
    setAttribute(Qt::WA_DeleteOnClose);
    setMinimumSize(1000, 640);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(makeBand(theme));
    layout->addWidget(makePages(theme, zones), 1);
    layout->addWidget(makeCard());
    connect(&m_guide, &TourGuide::changed, this, &TourWindow::follow);
    connect(m_setup, &SetupPage::scrolled, m_view, &PageView::fit, Qt::QueuedConnection);
    connect(m_lanes, &LanesPage::stepShown, m_view, &PageView::fit, Qt::QueuedConnection);
    // The pages bring the keyboard to what there is to do; here that is to go on.
    connect(qApp, &QApplication::focusChanged, this, [this](const QWidget*, const QWidget* now) {
        if (now != nullptr && m_pages->isAncestorOf(now))
            m_goOn->setFocus();
    });
    qApp->installEventFilter(this);
    m_document.replace(service, {});  // The page makes its plan when that changes.
    m_setup->setWatched(true);
    m_setup->keepPlanInView();
    follow();
    m_goOn->setFocus();
}

/// The pages look at the document and the session until they are gone, so they go first.
TourWindow::~TourWindow()
{
    disconnect(qApp, nullptr, this, nullptr);
    qApp->removeEventFilter(this);
    delete m_view;
}

/// Set-up scrolls by itself what it has no room for.
int TourWindow::leastPage() const
{
    const int leastSetup = Theme::textIsLarge() ? 600 : 500;
    return m_pages->currentWidget() == m_lanes ? m_lanes->leastHeight() : leastSetup;
}

/// In view from the first moment to the last, so that nobody takes this for a run.
QWidget* TourWindow::makeBand(const Theme& theme)
{
    auto* band = new QFrame;
    band->setProperty("role", QStringLiteral("warning"));
    band->setObjectName(QStringLiteral("tourBand"));
    auto* row = new QHBoxLayout{band};
    row->setContentsMargins(metrics::gapLarge, metrics::gapTiny, metrics::gapLarge, metrics::gapTiny);
    auto* sign = new QLabel;
    const auto draw = [sign, &theme] {
        sign->setPixmap(theme.icon(QStringLiteral("caution"), theme.colours().onSoon).pixmap(22, 22));
    };
    draw();
    connect(&theme, &Theme::changed, sign, draw);
    row->addWidget(sign);
    auto* text = makeLabel("tourNotReal");
    text->setText(tr("A tour: nothing of this is real. Nothing sounds, and nothing is kept."));
    row->addWidget(text, 1);
    m_place->setWordWrap(false);
    row->addWidget(m_place);
    return band;
}

/// They are looked at, and answer to nothing.
QWidget* TourWindow::makePages(const Theme& theme,
                               const std::shared_ptr<const core::measure::TimeZones>& zones)
{
    m_setup = new SetupPage{theme, m_document, m_preparation, zones,
                            [this] { return m_guide.session().clock().now(); }};
    m_lanes = new LanesPage{theme, m_guide.session(), m_sound, zones};
    m_lanes->setHeard(true);
    m_pages->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_pages->addWidget(m_setup);
    m_pages->addWidget(m_lanes);
    // Where text is large in a small window a page goes on below; what there is to do stands at its top.
    m_view->setObjectName(QStringLiteral("tourView"));
    m_view->setFrameShape(QFrame::NoFrame);
    m_view->setFocusPolicy(Qt::NoFocus);
    m_view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_view->setWidget(m_pages);
    m_view->viewport()->setAutoFillBackground(false);
    m_pages->setAutoFillBackground(false);
    return m_view;
}

QWidget* TourWindow::makeCard()
{
    auto* card = new QFrame;
    card->setProperty("role", QStringLiteral("notice"));
    card->setObjectName(QStringLiteral("tourCard"));
    m_words->setFont(Theme::font(metrics::textLane));
    m_goOn->setObjectName(QStringLiteral("tourGoOn"));
    m_goOn->setProperty("role", QStringLiteral("main"));
    m_leave->setObjectName(QStringLiteral("tourLeave"));
    for (QPushButton* button : {m_goOn, m_leave})
        button->setMinimumHeight(std::max(metrics::target, Theme::scaled(32)));
    connect(m_goOn, &QPushButton::clicked, this, &TourWindow::goOn);
    connect(m_leave, &QPushButton::clicked, this, &QWidget::close);
    auto* row =
        new QBoxLayout{Theme::textIsLarge() ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, card};
    row->setContentsMargins(metrics::gapLarge, metrics::gapSmall, metrics::gapLarge, metrics::gapSmall);
    row->setSpacing(metrics::gap);
    row->addWidget(m_words, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(metrics::gapSmall);
    buttons->addStretch(1);
    buttons->addWidget(m_leave);
    buttons->addWidget(m_goOn);
    row->addLayout(buttons);
    return card;
}

namespace {

/// One or two sentences each.
QString wordsOf(Stop stop)
{
    switch (stop) {
    case Stop::Plan:
        return TourWindow::tr("This is Set-up with a demo. Each strand is a zone of the hair, and all end at "
                              "the rinse line: they come to the water together. The plan says when to begin "
                              "each of them.");
    case Stop::OneThing:
        return TourWindow::tr("Now it runs. At the top is the one thing to do, with one large button: do it, "
                              "and press. Here Enter does, and time goes by quickly.");
    case Stop::Change:
        return TourWindow::tr("Applying took four minutes longer. The plan was made again at once, and the "
                              "line at the top says what changed.");
    case Stop::Look:
        return TourWindow::tr(
            "A look is due, a strand test. What you see you answer with one press: leave it "
            "on, look again, or rinse this zone. Here it is left on.");
    case Stop::Alarm:
        return TourWindow::tr("Water is due. An alarm like this fills the window and sounds until it is "
                              "answered; all lanes stay in view below it.");
    case Stop::End:
        return TourWindow::tr("All is done. Of a real run you now say how it turned out, and its record card "
                              "is kept. F1 tells about each page.");
    }
    return {};
}

}  // namespace

void TourWindow::follow()
{
    const Stop stop = m_guide.stop();
    if (stop != Stop::Plan && m_pages->currentWidget() == m_setup) {
        m_setup->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
        m_lanes->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
        m_pages->setCurrentWidget(m_lanes);
        m_setup->setWatched(false);
        m_lanes->refresh();
    } else if (stop == Stop::Plan) {
        m_lanes->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    }
    const bool going = m_guide.isGoing();
    m_words->setText(going ? tr("Time goes by quickly. What is asked for is answered for you.")
                           : wordsOf(stop));
    m_place->setText(tr("%1 of %2").arg(static_cast<int>(stop) + 1).arg(TourGuide::stops));
    m_goOn->setText(going                   ? tr("Skip ahead  (Enter)")
                        : stop == Stop::End ? tr("Close the tour  (Enter)")
                                            : tr("Go on  (Enter)"));
    m_leave->setVisible(stop != Stop::End || going);
    m_goOn->setAccessibleDescription(m_words->text());
}

void TourWindow::goOn()
{
    if (m_guide.stop() == Stop::End && !m_guide.isGoing())
        close();
    else
        m_guide.goOn();
}

bool TourWindow::takeKey(int key)
{
    switch (key) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space: goOn(); return true;
    case Qt::Key_Escape: close(); return true;
    default: return false;
    }
}

/// No key reaches the pages, whichever of their shortcuts it is.
bool TourWindow::eventFilter(QObject* watched, QEvent* event)
{
    const auto* part = qobject_cast<const QWidget*>(watched);
    if (part == nullptr || part->window() != this)
        return false;
    switch (event->type()) {
    case QEvent::ShortcutOverride: event->accept(); return true;
    case QEvent::KeyPress:
        if (const auto* key = static_cast<const QKeyEvent*>(event); !key->isAutoRepeat())
            takeKey(key->key());
        return true;
    case QEvent::KeyRelease: return true;
    default: return false;
    }
}

}  // namespace app::desktop
