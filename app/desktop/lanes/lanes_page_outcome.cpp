#include "app/desktop/lanes/alert_panel.h"
#include "app/desktop/lanes/lanes_page.h"
#include "app/desktop/lanes/more_panel.h"
#include "app/desktop/lanes/notice.h"
#include "app/desktop/lanes/outcome_panel.h"
#include "app/desktop/words.h"
#include "app/session/choice_search.h"

#include <QPushButton>
#include <QShortcut>

#include <algorithm>

// What the page asks once a coat is over: how it turned out.

namespace app::desktop {

void LanesPage::connectOutcome()
{
    connect(m_overNotice->offer(tr("Say it  (O)")), &QPushButton::clicked, this, &LanesPage::openOutcome);
    connect(m_overNotice->offer(tr("Not now")), &QPushButton::clicked, this, [this] {
        for (const view::CoatResult& coat : results())
            m_passedOver.insert(coat.coat);
        refresh();
        takeFocus();
    });
    auto* key = new QShortcut{QKeySequence{Qt::Key_O}, this};
    key->setObjectName(QStringLiteral("outcomeKey"));
    connect(key, &QShortcut::activated, this, &LanesPage::openOutcome);
    connectHelp();
    connect(m_outcome, &OutcomePanel::answered, this, &LanesPage::answer);
    connect(m_outcome, &OutcomePanel::closed, this, &LanesPage::closeOutcome);
}

std::vector<view::CoatResult> LanesPage::results() const
{
    return view::coatResults(m_session.services(), m_session.state(), m_session.facts());
}

/// The first coat of which something is not said, else the last one that is over.
void LanesPage::openOutcome()
{
    if (!m_session.current())
        return;
    const auto over = results();
    if (over.empty() || !m_alert->isHidden())
        return;
    const auto untold = std::ranges::find_if_not(over, &view::CoatResult::isTold);
    m_choices->close();
    openMore(false);
    m_outcome->open(untold == over.end() ? over.back() : *untold);
    refresh();
}

void LanesPage::closeOutcome()
{
    if (m_outcome->isHidden())
        return;
    for (const view::CoatResult& coat : results())
        m_passedOver.insert(coat.coat);
    m_outcome->hide();
    refresh();
    takeFocus();
}

/// Never in the way of an alarm, nor, in a small window, of what there is to do.
void LanesPage::showOutcome()
{
    const auto over = results();
    const bool busy = !m_alert->isHidden() || !m_more->isHidden();
    if (!m_outcome->isHidden()) {
        m_outcome->follow(over);
        if (busy)
            m_outcome->hide();
    }
    std::vector<std::string> names;
    for (const view::CoatResult& coat : over)
        if (!coat.isTold() && !m_passedOver.contains(coat.coat))
            names.push_back(coat.name);
    const bool cramped = isCramped() && !m_session.state().finished;
    if (names.empty() || busy || cramped || !m_outcome->isHidden())
        return m_overNotice->say({});
    std::erase(names, std::string{});
    m_overNotice->say(names.empty() ? tr("It is over. How did it turn out?")
                                    : tr("%1: how did it turn out?").arg(words::joined(names)));
}

}  // namespace app::desktop
