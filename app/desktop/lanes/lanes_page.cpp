#include "app/desktop/lanes/lanes_page.h"

#include "app/desktop/help/help_sheet.h"
#include "app/desktop/lanes/alert_panel.h"
#include "app/desktop/lanes/answer_guard.h"
#include "app/desktop/lanes/corrections.h"
#include "app/desktop/lanes/lanes_grid.h"
#include "app/desktop/lanes/last_answer.h"
#include "app/desktop/lanes/more_panel.h"
#include "app/desktop/lanes/notice.h"
#include "app/desktop/lanes/now_panel.h"
#include "app/desktop/lanes/outcome_panel.h"
#include "app/desktop/lanes/pulse.h"
#include "app/desktop/lanes/reason_band.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/sentences.h"
#include "app/desktop/words.h"
#include "app/session/choice_search.h"
#include "app/view/amend_view.h"

#include <QEvent>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace app::desktop {
namespace {

/// Whoever stands before the screen has answered by then, and is not startled.
constexpr std::chrono::duration<double> unheeded{5};

/// Texts are as high as their lines, and those depend on the width.
int heightOf(const QWidget& part, int width)
{
    return part.hasHeightForWidth() ? part.heightForWidth(width) : part.sizeHint().height();
}

}  // namespace

LanesPage::LanesPage(const Theme& theme, session::Session& session, Sound& sound,
                     std::shared_ptr<const core::measure::TimeZones> zones, QWidget* parent)
    : QWidget{parent}
    , m_theme{theme}
    , m_session{session}
    , m_sound{sound}
    , m_zones{std::move(zones)}
    , m_soundWarning{new Notice{theme, QStringLiteral("warning"), QStringLiteral("silent")}}
    , m_warning{new Notice{theme, QStringLiteral("warning"), QStringLiteral("warning")}}
    , m_resumed{new Notice{theme, QStringLiteral("notice"), QStringLiteral("clock")}}
    , m_muted{new Notice{theme, QStringLiteral("notice"), QStringLiteral("silent")}}
    , m_changes{new Notice{theme, QStringLiteral("notice"), QStringLiteral("clock")}}
    , m_heat{new Notice{theme, QStringLiteral("notice"), QStringLiteral("heat")}}
    , m_overNotice{new Notice{theme, QStringLiteral("notice"), QStringLiteral("assess")}}
    , m_reason{new ReasonBand{theme}}
    , m_choices{new session::ChoiceSearch{session, this}}
    , m_now{new NowPanel{theme}}
    , m_alert{new AlertPanel{theme}}
    , m_lanes{new LanesGrid{theme, false}}
    , m_strip{new LanesGrid{theme, true}}
    , m_strands{new StrandWidget{theme}}
    , m_body{new QVBoxLayout}
    , m_more{new MorePanel}
    , m_outcome{new OutcomePanel}
    , m_corrections{new Corrections{theme}}
    , m_help{new HelpSheet{theme, HelpFor::Lanes}}
    , m_guard{new AnswerGuard{this}}
    , m_pulse{new Pulse{this}}
{
    setObjectName(QStringLiteral("lanesPage"));
    build();
    connectParts();
    connectSettling();
}

void LanesPage::build()
{
    m_soundWarning->setObjectName(QStringLiteral("soundWarning"));
    m_warning->setObjectName(QStringLiteral("warning"));
    m_resumed->setObjectName(QStringLiteral("resumed"));
    m_muted->setObjectName(QStringLiteral("muted"));
    m_changes->setObjectName(QStringLiteral("changes"));
    m_heat->setObjectName(QStringLiteral("heat"));
    m_overNotice->setObjectName(QStringLiteral("over"));
    m_strands->setObjectName(QStringLiteral("liveStrands"));

    auto* body = m_body;
    body->setContentsMargins(metrics::gapLarge, metrics::gapSmall, metrics::gapLarge, metrics::gapSmall);
    body->setSpacing(metrics::gapSmall);
    for (QWidget* notice : {m_soundWarning, m_warning, m_resumed, m_muted, m_changes, m_heat, m_overNotice})
        body->addWidget(notice);
    body->addWidget(m_alert, 3);
    body->addWidget(m_now);
    body->addWidget(m_reason);
    body->addWidget(m_lanes, 2);
    body->addWidget(m_strip);
    body->addWidget(m_help);
    body->addWidget(m_strands, 3);
    m_alert->hide();
    m_strip->hide();

    auto* outer = new QVBoxLayout{this};
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(0);
    outer->addLayout(body, 1);
    outer->addWidget(m_more);
    outer->addWidget(m_outcome);
    outer->addWidget(m_corrections);
}

void LanesPage::connectParts()
{
    connect(&m_session, &session::Session::stateChanged, this, &LanesPage::refresh);
    connect(&m_session, &session::Session::alarmsChanged, this, &LanesPage::refresh);
    connect(&m_session, &session::Session::warningRaised, this, &LanesPage::warn);
    connect(&m_sound, &Sound::healthChanged, this, &LanesPage::showSound);
    connect(m_now, &NowPanel::answered, this, &LanesPage::answer);
    connect(m_now, &NowPanel::putAway, this, &LanesPage::endRequested);
    connect(m_alert, &AlertPanel::answered, this, &LanesPage::answer);
    connect(m_corrections, &Corrections::answered, this, &LanesPage::answer);
    connect(m_corrections, &Corrections::muteRequested, this, &LanesPage::mute);
    connect(m_corrections, &Corrections::endRequested, this, &LanesPage::endRequested);
    connect(m_corrections, &Corrections::cautionsRequested, this, &LanesPage::cautionsRequested);
    connect(m_soundWarning->offer(tr("Try the sound  (F3)")), &QPushButton::clicked, this,
            &LanesPage::soundCheckRequested);
    connect(m_warning->offer(tr("I have read it")), &QPushButton::clicked, this,
            [this] { m_warning->say({}); });
    connect(m_resumed->offer(tr("Good")), &QPushButton::clicked, this, [this] { m_resumed->say({}); });
    connect(m_resumed->offer(tr("End that run …")), &QPushButton::clicked, this, &LanesPage::endRequested);
    auto* again = m_muted->offer(tr("Let it sound  (Shift+Q)"));
    again->setShortcut(QKeySequence{Qt::SHIFT | Qt::Key_Q});
    connect(again, &QPushButton::clicked, this, [this] { m_session.unmute({m_session.alarms()}); });
    connect(m_corrections, &Corrections::left, this, &LanesPage::takeFocus);
    connect(m_corrections, &Corrections::farToggled, this, &LanesPage::setFar);
    auto* far = new QShortcut{Qt::Key_F, this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut};
    far->setObjectName(QStringLiteral("farKey"));
    connect(far, &QShortcut::activated, this, [this] { setFar(!m_far); });
    connectMore();
    connectOutcome();
    connect(m_reason, &ReasonBand::listWanted, this, [this] {
        openMore(false);
        m_choices->open();
    });
    connect(m_reason, &ReasonBand::listClosed, m_choices, &session::ChoiceSearch::close);
    connect(m_reason, &ReasonBand::listClosed, this, &LanesPage::takeFocus);
    connect(m_reason, &ReasonBand::chosen, this, &LanesPage::choose);
    connect(m_choices, &session::ChoiceSearch::changed, this, &LanesPage::refresh);
    connect(m_pulse, &Pulse::changed, this, &LanesPage::insist);
}

void LanesPage::refresh()
{
    if (!m_session.current())
        return;
    const auto& services = m_session.services();
    m_clock = WallClock{m_zones, services.front().timeZone};
    const view::LanesView lanes = view::lanesView(services, m_session.state());
    const view::NowView now = view::nowView(services, m_session.state());
    Q_EMIT serviceShown(tr("%1  ·  %2").arg(titleOf(lanes), m_clock.text(m_session.state().now)));
    m_now->showNow(now, m_clock);
    Q_EMIT stepShown(words::title(now));
    m_lanes->showLanes(lanes, m_clock);
    m_strip->showLanes(lanes, m_clock);
    m_corrections->showLast(lastAnswer(m_session.setup(), m_session.facts(), m_clock, *m_zones));
    showMore();
    m_choices->follow();
    showHeat(lanes);
    showAlarms(now);
    showOutcome();
    showChanges();
    showReason();
    showSound();
    showMuted();
    showPicture(lanes);
    m_roomTaken = roomTaken();
}

/// The service, and which of its coats; or the heads, where there are several.
QString LanesPage::titleOf(const view::LanesView& lanes) const
{
    if (lanes.heads.size() > 1) {
        std::vector<std::string> names;
        for (std::size_t head = 0; head < lanes.heads.size(); ++head)
            names.push_back(view::headOf(m_session.services(), head));
        return words::joined(names);
    }
    const view::HeadView& only = lanes.heads.front();
    const QString name = QString::fromStdString(only.name);
    if (only.coats < 2)
        return name;
    return tr("%1  ·  coat %2 of %3: %4")
        .arg(name)
        .arg(only.coat + 1)
        .arg(only.coats)
        .arg(QString::fromStdString(only.coatName));
}

bool LanesPage::takesWindow(const view::AlarmView& alarm, const view::NowView& now) const
{
    if (alarm.alarm.subject == core::alarm::Subject::Look || alarm.alarm.kind == core::alarm::Kind::GetReady)
        return false;
    // Where nothing can be heard, or nobody said that it can, the screen has to do for both.
    if (alarm.takesWindow || !m_sound.isWorking() || !m_heard)
        return true;
    // A step that could be begun, but was not, fills the window in place of what asks for it. Where the hands
    // have something else to finish, that stays.
    const bool asksForIt = now.main && now.main->prompt.task == alarm.alarm.task
        && now.main->prompt.asks == core::run::Prompt::Asks::Start;
    // A run that is played fast is still watched by people.
    return asksForIt && std::chrono::duration<double>{alarm.standing} >= unheeded * m_session.clock().speed();
}

void LanesPage::showAlarms(const view::NowView& now)
{
    const auto alarm = view::alarmView(m_session.services(), m_session.state(), m_session.alarms());
    const bool insists = alarm && alarm->alarm.kind != core::alarm::Kind::GetReady;
    const bool taken = alarm && takesWindow(*alarm, now);
    if (taken)
        showAlert(*alarm, now);
    const bool changed = taken == m_alert->isHidden();
    m_alert->setVisible(taken);
    m_now->setVisible(!taken || !now.main || !m_alert->answers(now.main->prompt));
    m_insists = insists;
    m_pulse->setBeating(insists);
    insist();
    if (changed)
        takeFocus();
}

void LanesPage::showAlert(const view::AlarmView& alarm, const view::NowView& now)
{
    m_alert->showAlarm(alarm, now, m_clock);
}

/// A picture is drawn again when an answer came or now moved by a pixel.
bool LanesPage::pictureIsCurrent() const
{
    const auto& reach = m_strands->picture().reach;
    const auto pixel = (reach.until - reach.from) / std::max(1, m_strands->width());
    return m_runDrawn == m_session.current() && m_factsDrawn == m_session.facts().size() + 1
        && m_session.state().now >= m_momentDrawn
        && m_session.state().now - m_momentDrawn < std::max(pixel, view::Seconds{1});
}

/// How high everything is at least that matters more than lanes and picture.
int LanesPage::roomTaken() const
{
    int taken = 2 * metrics::gapSmall + helpHeight();
    if (!m_corrections->isHidden())
        taken += heightOf(*m_corrections, width());
    for (const QWidget* part : std::initializer_list<const QWidget*>{
             m_soundWarning, m_warning, m_resumed, m_muted, m_changes, m_heat, m_overNotice, m_reason, m_now,
             m_alert, m_more, m_outcome})
        if (!part->isHidden())
            taken += heightOf(*part, width() - 2 * metrics::gapLarge) + metrics::gapSmall;
    return taken;
}

int LanesPage::leastHeight() const
{
    const LanesGrid* shown = m_lanes->isHidden() ? m_strip : m_lanes;
    return roomTaken() + shown->leastHeight(width() - 2 * metrics::gapLarge) + metrics::gapSmall;
}

/// What is left of the page's height for more than the least of the lanes.
int LanesPage::roomLeft(const LanesGrid& lanes) const
{
    return height() - roomTaken() - lanes.leastHeight(width() - 2 * metrics::gapLarge) - metrics::gapSmall;
}

void LanesPage::showPicture(const view::LanesView& lanes)
{
    std::vector<view::CoatPlace> coats;
    for (std::size_t head = 0; head < lanes.heads.size(); ++head)
        coats.push_back({head, lanes.heads[head].coat});
    const auto picture = view::livePicture(m_session.services(), m_session.state(), coats);
    m_strands->setVisible(m_alert->isHidden() && !m_far
                          && roomLeft(*m_lanes) >= StrandGeometry::leastHeight(picture));
    if (!m_strands->isVisibleTo(this) || pictureIsCurrent())
        return;
    m_runDrawn = m_session.current();
    m_factsDrawn = m_session.facts().size() + 1;
    m_momentDrawn = m_session.state().now;
    m_strands->showPicture(picture, m_clock, [this](const view::TaskId& id) {
        return words::ofHead(view::headOf(m_session.services(), id.service),
                             inWords(core::stagger::taskName(m_session.services()[id.service], id)));
    });
}

void LanesPage::showChanges()
{
    const std::size_t mostSaid = isCramped() ? 1 : 2;
    QStringList said;
    const core::measure::Sentence changes =
        core::run::changesText(m_session.services(), m_session.state().changes, *m_zones, mostSaid);
    if (!changes.empty())
        said << tr("Planned again: %1").arg(inWords(changes));
    if (!m_chosen.isEmpty() && m_chosenFacts == m_session.facts().size())
        said.prepend(m_chosen);
    if (m_session.isPlanningLong())
        said << tr("The plan is being worked out anew; until then the one before goes on.");
    m_changes->say(said.join(QLatin1Char{' '}));
}

void LanesPage::showSound()
{
    m_soundWarning->say(
        m_sound.isWorking()
            ? QString{}
            : tr("No alarm can be heard. %1 Keep the screen in view.").arg(m_sound.problem()));
}

/// What is silenced stays in view, each alarm with the moment at which it sounds again.
void LanesPage::showMuted()
{
    const auto audible = m_session.audible();
    m_corrections->setSounding(std::ranges::any_of(
        audible, [](const core::alarm::Alarm& alarm) { return alarm.kind != core::alarm::Kind::GetReady; }));
    QStringList muted;
    for (const core::alarm::Alarm& alarm : m_session.alarms()) {
        const auto until = m_session.mutedUntil(alarm);
        if (!until)
            continue;
        const auto about = view::alarmAbout(m_session.services(), m_session.state(), alarm);
        muted << tr("%1, silent until %2").arg(words::alarmHeadline(about), m_clock.text(*until));
    }
    m_muted->say(muted.join(QStringLiteral("  ·  ")));
}

/// What is most urgent of what sounds; pressed again, the next.
void LanesPage::mute()
{
    const auto calls = m_session.calls();
    if (!calls.empty())
        m_session.mute(calls.front());
    takeFocus();
}

void LanesPage::insist()
{
    m_alert->setLit(m_pulse->isLit());
    m_now->setInsisting(m_insists && m_alert->isHidden(), m_pulse->isLit());
}

bool LanesPage::answer(const core::run::Answer& answer)
{
    if (m_settling.isActive())
        return false;
    AnswerGuard::Steps before = m_guard->steps();
    const auto refusal = m_session.answer(answer);
    if (refusal) {
        warn(inWords(refusal->what));
    } else {
        m_guard->answered(std::move(before));
        m_resumed->say({});
    }
    refresh();
    takeFocus();
    return !refusal;
}

void LanesPage::takeFocus()
{
    if (!m_alert->isHidden())
        m_alert->takeFocus();
    else
        m_now->takeFocus();
}

void LanesPage::warn(const QString& warning)
{
    m_warning->say(warning);
}

void LanesPage::sayResumed(const QString& text)
{
    m_resumed->say(text);
}

/// What parts in parts need is known only once they have been laid out.
bool LanesPage::event(QEvent* event)
{
    const bool handled = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest && roomTaken() != m_roomTaken)
        refresh();
    return handled;
}

void LanesPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    m_now->setEnlarged(metrics::enlargement(width(), height()));
    m_alert->setEnlarged(metrics::enlargement(width(), height()));
    m_factsDrawn = 0;
    refresh();
}

}  // namespace app::desktop
