#include "app/desktop/help/help_sheet.h"
#include "app/desktop/lanes/alert_panel.h"
#include "app/desktop/lanes/corrections.h"
#include "app/desktop/lanes/lanes_grid.h"
#include "app/desktop/lanes/lanes_page.h"
#include "app/desktop/lanes/last_answer.h"
#include "app/desktop/lanes/more_panel.h"
#include "app/desktop/lanes/notice.h"
#include "app/desktop/lanes/now_panel.h"
#include "app/desktop/lanes/outcome_panel.h"
#include "app/desktop/lanes/reason_band.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/sentences.h"
#include "app/desktop/words.h"
#include "app/session/choice_search.h"
#include "core/run/amend/amend.h"

#include <QPushButton>
#include <QVBoxLayout>

// What the page does where a run is to be changed: the choices, and what nobody asked about.

namespace app::desktop {
namespace {

/// So much lanes can do without before their digits would be cut.
constexpr int mostSqueezed = 32;

/// The width of a page with text as usual whose last line has room for all its buttons.
constexpr int leastWide = 1140;

/// The height of a page with text as usual that has room for all there is to say.
constexpr int leastComfortable = 480;

}  // namespace

void LanesPage::connectMore()
{
    using core::run::Answer;
    const auto about = [](Answer::Kind kind, const view::TaskId& task) {
        Answer answer;
        answer.kind = kind;
        answer.task = task;
        return answer;
    };
    const auto named = [](const auto& option) { return QString::fromStdString(option.name); };
    connect(m_corrections, &Corrections::moreToggled, this, &LanesPage::openMore);
    connect(m_more, &MorePanel::stopped, this, [=, this](const view::ZoneOption& zone) {
        amend(about(Answer::Kind::Interrupt, zone.zone),
              tr("Applying %1 stopped; the rest is a zone of its own.").arg(named(zone)));
    });
    connect(m_more, &MorePanel::apartWanted, this, [=, this](const view::ZoneOption& zone) {
        amend(core::run::apartAnswer(m_session.services(), zone.zone),
              tr("%1 is rinsed by itself.").arg(named(zone)));
    });
    connect(m_more, &MorePanel::away, this, [=, this](const view::HandsOption& hands, int minutes) {
        const auto from = m_session.state().now;
        amend(core::run::awayAnswer(m_session.services(), hands.place,
                                    {from, from + std::chrono::minutes{minutes}}),
              tr("%1 is away for %2 min.").arg(named(hands)).arg(minutes));
    });
    connect(m_more, &MorePanel::came, this, [=, this](const QString& name) {
        amend(core::run::helperAnswer(m_session.services(), name.toStdString()),
              tr("%1 has come to help.").arg(name));
    });
    connect(m_more, &MorePanel::gone, this, [=, this](const view::HandsOption& hands) {
        amend(core::run::goneAnswer(m_session.services(), hands.place, m_session.state().now),
              tr("%1 has gone.").arg(named(hands)));
    });
    connect(m_more, &MorePanel::givenUp, this, [=, this](const view::ZoneOption& coat) {
        amend(about(Answer::Kind::Abandon, coat.zone), tr("%1 is given up.").arg(named(coat)));
    });
    connectFacts();
}

/// Heat, a zone more, and answers that are put right.
void LanesPage::connectFacts()
{
    using core::run::Answer;
    connect(m_more, &MorePanel::heatPutOn, this, [this](const view::TaskId& heat, int minutes) {
        amend({.kind = Answer::Kind::Start, .task = heat, .again = std::chrono::minutes{minutes}},
              tr("Heat is on. What it does to the mixtures only the product's leaflet says."));
    });
    connect(m_more, &MorePanel::heatTakenOff, this, [this](const view::TaskId& heat) {
        amend({.kind = Answer::Kind::Finish, .task = heat}, tr("Heat is off."));
    });
    connect(m_more, &MorePanel::zoneAdded, this,
            [this](const view::ZoneOption& like, const QString& name, int minutes) {
                const auto apply =
                    minutes > 0 ? std::optional<view::Seconds>{std::chrono::minutes{minutes}} : std::nullopt;
                amend(core::run::zoneLikeAnswer(m_session.services(), m_session.state().progress, like.zone,
                                                name.toStdString(), apply),
                      tr("%1 is a zone more.").arg(name));
            });
    connect(m_more, &MorePanel::answerUndone, this, [this](const view::AnswerOption& answer) {
        amend({.kind = Answer::Kind::UndoLast, .about = answer.number()}, tr("That answer was taken back."));
    });
    connect(m_more, &MorePanel::answerWasEarlier, this,
            [this](const view::AnswerOption& answer, int minutes) {
                const auto ago = m_session.state().now - answer.happened() + std::chrono::minutes{minutes};
                amend({.kind = Answer::Kind::MoveLast, .ago = ago, .about = answer.number()},
                      tr("That answer was put %1 min earlier.").arg(minutes));
            });
    connect(m_more, &MorePanel::answerWasOfZone, this,
            [this](const view::AnswerOption& answer, const view::ZoneOption& zone) {
                amend({.kind = Answer::Kind::OtherZone, .task = zone.zone, .about = answer.number()},
                      tr("That answer is about %1 now.").arg(QString::fromStdString(zone.name)));
            });
}

/// The answers are listed only while somebody could pick one.
void LanesPage::showMore(bool opens)
{
    constexpr std::size_t mostAnswers = 9;
    std::vector<MorePanel::Listed> answers;
    if (opens || !m_more->isHidden()) {
        for (view::AnswerOption& answer :
             view::answersView(m_session.services(), m_session.facts(), mostAnswers)) {
            const QString text =
                answerText(m_session.setup(), m_session.facts(), answer.facts, m_clock, *m_zones);
            answers.push_back({text, std::move(answer)});
        }
    }
    m_more->showAmend(view::amendView(m_session.services(), m_session.state()), answers);
}

/// As long as heat is on it is said that the windows know nothing of it.
void LanesPage::showHeat(const view::LanesView& lanes)
{
    if (lanes.heats.empty())
        return m_heat->say({});
    QStringList said;
    for (const view::HeatView& heat : lanes.heats) {
        QString text = words::ofHead(heat.head, tr("Heat since %1").arg(m_clock.text(heat.since)));
        if (heat.offDue)
            text += tr(", to be taken off at %1").arg(m_clock.text(*heat.offDue));
        said << text + QLatin1Char{'.'};
    }
    said << tr("The windows and alarms stay those without heat; where the leaflet gives times with heat, go "
               "by those.");
    m_heat->say(said.join(QLatin1Char{' '}));
}

/// One at a time: the choices and this have the same keys, and there is room for one of them.
void LanesPage::openMore(bool open)
{
    m_corrections->setMoreOpen(open);
    if (open == !m_more->isHidden())
        return;
    if (open) {
        m_choices->close();
        m_outcome->hide();
        showMore(true);
        m_more->open();
    } else {
        m_more->hide();
    }
    refresh();
    if (m_more->isHidden())  // An alarm may have left it no room.
        takeFocus();
}

/// Where text is large in a small window, what comes later gives way to what is now.
bool LanesPage::isCramped() const
{
    return height() < Theme::scaled(leastComfortable);
}

/// High rows of answers matter more than all that lanes show, but not more than digits as high as they are.
void LanesPage::fitLook()
{
    constexpr int stripWithLargeDigits = 130;
    const int spared = m_strip->leastHeight(width() - 2 * metrics::gapLarge);
    const int beside = roomLeft(*m_strip) - std::max(0, stripWithLargeDigits - spared);
    m_now->fitLook(width() - 2 * metrics::gapLarge, std::max(roomLeft(*m_lanes), beside), roomLeft(*m_strip));
}

/// Whether the list of choices is open, and what it says.
ReasonBand::List LanesPage::followReason()
{
    const auto& reason = m_session.state().reason;
    m_reason->showReason(reason ? inWords(reason->text) : QString{});
    auto list = ReasonBand::List::Closed;
    if (m_choices->isOpen())
        list = m_choices->takesLong()  ? ReasonBand::List::SearchingLong
            : m_choices->isSearching() ? ReasonBand::List::Searching
                                       : ReasonBand::List::Open;
    m_reason->showChoices(
        list, view::choicesView(m_choices->choices(), m_choices->asOf(), m_session.state().now), m_clock);
    return list;
}

/// The list of choices has what room there is. Where the lanes would be cut, they become a strip as below an
/// alarm, with digits as large as there is room for.
void LanesPage::showReason()
{
    const ReasonBand::List list = followReason();
    const bool alert = !m_alert->isHidden();
    const bool cramped = isCramped();
    const bool asks = !m_more->isHidden() || !m_outcome->isHidden();
    const bool listed = list != ReasonBand::List::Closed;
    if (alert || asks || listed)
        m_help->hide();
    const bool helped = !m_help->isHidden();
    const bool far = m_far && !alert && !asks && !listed && !helped;
    const bool brief = alert || cramped || far || asks || listed || helped;
    m_now->setFar(far);
    m_now->setBrief(brief);
    m_now->setTerse(cramped);
    if (!alert)
        fitLook();
    m_corrections->setBrief(brief, width() < Theme::scaled(leastWide));
    m_corrections->setTerse(cramped);
    m_corrections->setVisible(!(alert && cramped));
    m_more->arrange(width());
    const auto roomBeside = [this](const LanesGrid* lanes) {
        return roomLeft(*lanes) + m_reason->listHeight() + helpHeight();
    };
    const int wanted = list == ReasonBand::List::Open ? ReasonBand::leastListHeight()
        : helped                                      ? HelpSheet::leastHeight() + metrics::gapSmall
                                                      : 0;
    const int least = helped              ? HelpSheet::easyHeight()
        : wanted > 0                      ? wanted
        : cramped || m_now->hasLookRows() ? 0
                                          : -mostSqueezed;
    const bool crowded = !alert && (far || roomBeside(m_lanes) < least);
    const bool strip = crowded || alert;
    m_strip->setVisible(strip);
    m_lanes->setVisible(!strip);
    // An alarm has the height to itself, but for a large window, where the strip is read from afar too.
    const bool large = metrics::enlargement(width(), height()) > 100;
    m_body->setStretchFactor(m_strip, crowded ? 2 : large ? 1 : 0);
    // An alarm is never cut: first what has been said gives way to it, then what else there is to do.
    const auto isShort = [&] { return roomBeside(m_strip) < wanted; };
    if (alert && isShort() && !m_more->isHidden()) {
        m_more->hide();
        m_corrections->setMoreOpen(false);
    }
    for (QWidget* part : std::initializer_list<QWidget*>{m_overNotice, m_changes, m_heat})
        if ((alert || crowded || helped) && isShort())
            part->hide();
    if ((alert || asks) && isShort())
        m_now->hide();
    if (helped && isShort())
        m_strip->hide();
    m_reason->giveListRoom(roomBeside(strip ? m_strip : m_lanes));
    giveHelpRoom();
}

void LanesPage::undoLast()
{
    core::run::Answer undo;
    undo.kind = core::run::Answer::Kind::UndoLast;
    answer(undo);
}

void LanesPage::setFar(bool far)
{
    if (far == m_far)
        return;
    m_far = far;
    m_corrections->setFar(far);
    refresh();
    takeFocus();
    Q_EMIT farChanged(far);
}

void LanesPage::choose(std::size_t place)
{
    if (place >= m_choices->choices().size())
        return;
    const core::stagger::Choice chosen = m_choices->choices()[place];
    if (chosen.kind == core::stagger::ChoiceKind::CarryOn) {
        m_choices->close();
        return takeFocus();
    }
    amend(core::run::choiceAnswer(chosen), tr("Chosen: %1.").arg(inWords(chosen.what)));
}

/// What was changed is said with what that moves, until something else happens.
bool LanesPage::amend(const core::run::Answer& change, const QString& said)
{
    if (!answer(change))
        return false;
    m_chosen = said;
    m_chosenFacts = m_session.facts().size();
    m_choices->close();
    openMore(false);
    refresh();
    return true;
}

}  // namespace app::desktop
