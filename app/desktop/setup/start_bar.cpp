#include "app/desktop/setup/start_bar.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/setup/start_text.h"

#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int waitMilliseconds = 200;

/// What it comes to, with what stands in the way of more.
QString said(const StartWish& wish, const std::vector<core::service::Service>& services,
             const WallClock& clock)
{
    const view::TaskId& id = *wish.zone();
    const std::string& zone = services[id.service].coats[id.coat].zones[id.item].name;
    const BackgroundPlanner::Outcome& outcome = *wish.outcome();
    if (!outcome)
        return start_text::nothingFits(zone, wish.moment(), outcome.error(), clock);
    const view::StartChange change = view::startChange(services, wish.planned().data(), outcome->data(), id);
    // Where it is stopped the reason is what counts, and the picture shows the rest.
    if (wish.stopped() == StartWish::Stopped::AtLatest && wish.range())
        return start_text::atLatest(zone, *wish.range(), clock) + QLatin1Char{' '}
        + start_text::briefly(change, clock);
    if (wish.stopped() == StartWish::Stopped::No)
        return start_text::change(change, clock);
    const QString stopped =
        start_text::atEarliest(zone, clock, wish.range() ? wish.range()->earliest : wish.moment());
    return wish.isNews() ? stopped + QLatin1Char{' '} + start_text::briefly(change, clock) : stopped;
}

}  // namespace

StartBar::StartBar(QWidget* parent)
    : QFrame{parent}
    , m_text{new QLabel}
    , m_keep{new QPushButton{tr("Keep this start")}}
{
    setObjectName(QStringLiteral("startBar"));
    setProperty("role", QStringLiteral("notice"));
    m_text->setObjectName(QStringLiteral("startSaid"));
    m_text->setWordWrap(true);
    m_text->setTextFormat(Qt::PlainText);
    m_keep->setObjectName(QStringLiteral("keepStart"));
    auto* release = new QPushButton{tr("Let go")};
    release->setObjectName(QStringLiteral("letGoStart"));
    auto* layout =
        new QBoxLayout{Theme::textIsLarge() ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, this};
    layout->setContentsMargins(metrics::gap, metrics::gapTiny, metrics::gapTiny, metrics::gapTiny);
    layout->setSpacing(metrics::gapSmall);
    layout->addWidget(m_text, 1);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(Theme::textIsLarge() ? 1 : 0);
    for (QPushButton* button : {m_keep, release}) {
        button->setMinimumHeight(metrics::target);
        buttons->addWidget(button);
    }
    layout->addLayout(buttons);
    m_wait.setSingleShot(true);
    m_wait.setInterval(waitMilliseconds);
    connect(&m_wait, &QTimer::timeout, this, [this] { say(m_waiting); });
    connect(m_keep, &QPushButton::clicked, this, &StartBar::kept);
    connect(release, &QPushButton::clicked, this, &StartBar::letGo);
    hide();
}

void StartBar::tell(const StartWish& wish, const std::vector<core::service::Service>& services,
                    const WallClock& clock)
{
    m_keep->setEnabled(wish.isNews() && wish.outcome() && *wish.outcome());
    if (wish.outcome()) {
        m_wait.stop();
        say(said(wish, services, clock));
    } else {
        const view::TaskId& id = *wish.zone();
        m_waiting = tr("%1: planning …")
                        .arg(start_text::kept(services[id.service].coats[id.coat].zones[id.item].name,
                                              wish.moment(), clock));
        if (isHidden())
            say(m_waiting);
        else if (!m_wait.isActive())
            m_wait.start();
    }
    setVisible(true);
}

QString StartBar::text() const
{
    return m_text->text();
}

bool StartBar::canKeep() const
{
    return m_keep->isEnabled();
}

void StartBar::say(const QString& text)
{
    m_text->setText(text);
    setAccessibleName(text);
    fit();
}

/// What is said is never cut, and how high it is depends on the width.
void StartBar::fit()
{
    m_text->setMinimumHeight(std::max(0, m_text->heightForWidth(std::max(1, m_text->width()))));
    setMinimumHeight(std::max(m_leastHeight, minimumSizeHint().height()));
}

void StartBar::resizeEvent(QResizeEvent* event)
{
    QFrame::resizeEvent(event);
    fit();
}

}  // namespace app::desktop
