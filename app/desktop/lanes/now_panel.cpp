#include "app/desktop/lanes/now_panel.h"

#include "app/desktop/lanes/answer_guard.h"
#include "app/desktop/lanes/live_button.h"
#include "app/desktop/lanes/look_choices.h"
#include "app/desktop/lanes/step_button.h"
#include "app/desktop/look/flow_layout.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/style_sheet.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

#include <algorithm>

namespace app::desktop {
namespace {

using core::run::Answer;
using core::run::Prompt;
using core::stagger::TaskKind;
using view::StepView;

constexpr std::size_t mostNext = 3;
constexpr int iconSize = 56;

Answer answerTo(const Prompt& prompt)
{
    Answer answer;
    answer.kind = prompt.asks == Prompt::Asks::Finish ? Answer::Kind::Finish : Answer::Kind::Start;
    answer.task = prompt.task;
    return answer;
}

/// Looks and late jobs can be passed over; the rest of a coat cannot.
bool mayBeLeftOut(const Prompt& prompt)
{
    const TaskKind kind = prompt.task.kind;
    return prompt.asks != Prompt::Asks::Finish && (kind == TaskKind::Look || kind == TaskKind::Late);
}

}  // namespace

NowPanel::NowPanel(const Theme& theme, QWidget* parent)
    : QFrame{parent}
    , m_theme{theme}
    , m_icon{new QLabel}
    , m_sentence{new QLabel}
    , m_detail{new QLabel}
    , m_latest{new QLabel}
    , m_button{new LiveButton}
    , m_look{new LookChoices}
    , m_leaveOut{new QPushButton{tr("Skip it  (Del)")}}
    , m_nextTitle{new QLabel{tr("Then")}}
{
    setProperty("role", QStringLiteral("card"));
    setObjectName(QStringLiteral("now"));
    build();
    connect(m_button, &QPushButton::clicked, this, &NowPanel::answerMain);
    connect(m_leaveOut, &QPushButton::clicked, this, &NowPanel::leaveOut);
    connect(m_look, &LookChoices::answered, this, &NowPanel::answered);
    connect(&theme, &Theme::changed, this, &NowPanel::drawIcon);
    connect(&theme, &Theme::changed, this, &NowPanel::sizeWords);
}

void NowPanel::build()
{
    m_sentence->setObjectName(QStringLiteral("nowSentence"));
    m_sentence->setWordWrap(true);
    m_sentence->setTextFormat(Qt::PlainText);
    m_detail->setObjectName(QStringLiteral("nowDetail"));
    m_detail->setTextFormat(Qt::PlainText);
    m_detail->setWordWrap(true);
    m_latest->setObjectName(QStringLiteral("nowLatest"));
    m_latest->setTextFormat(Qt::PlainText);
    m_latest->setWordWrap(true);
    m_button->setObjectName(QStringLiteral("nowButton"));
    m_leaveOut->setObjectName(QStringLiteral("leaveOut"));
    m_leaveOut->setShortcut(QKeySequence{Qt::Key_Delete});
    sizeWords();

    auto* top = new FlowLayout;
    top->setSpacing(metrics::gap);
    top->addWidget(makeWords());
    top->addWidget(m_button);

    auto* next = new FlowLayout;
    m_nextTitle->setProperty("role", QStringLiteral("quiet"));
    next->addWidget(m_nextTitle);
    for (std::size_t place = 0; place < mostNext; ++place) {
        m_next.push_back(new StepButton);
        m_next.back()->setObjectName(QStringLiteral("next%1").arg(place + 1));
        next->addWidget(m_next.back());
        connect(m_next.back(), &QPushButton::clicked, this, [this, place] { answerNext(place); });
    }
    next->addWidget(m_leaveOut);

    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(metrics::gapLarge, metrics::gap, metrics::gapLarge, metrics::gap);
    layout->setSpacing(metrics::gapSmall);
    layout->addLayout(top);
    layout->addWidget(m_look);
    layout->addLayout(next);
}

/// Wide enough to be read; the button goes below where text is too large for both.
QWidget* NowPanel::makeWords()
{
    auto* part = new QWidget;
    QSizePolicy policy{QSizePolicy::Expanding, QSizePolicy::Preferred};
    policy.setHeightForWidth(true);
    part->setSizePolicy(policy);
    part->setMinimumWidth(Theme::textIsLarge() ? Theme::scaled(200) : 380);
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(m_sentence);
    words->addWidget(m_detail);
    words->addWidget(m_latest);
    auto* row = new QHBoxLayout{part};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(metrics::gap);
    row->addWidget(m_icon);
    row->addLayout(words, 1);
    return part;
}

void NowPanel::showNow(const view::NowView& now, const WallClock& clock)
{
    m_clock = clock;
    view::NowView shown = now;
    const auto pinned = std::ranges::find_if(
        shown.next, [this](const StepView& step) { return m_pinned && step.prompt.task == *m_pinned; });
    if (pinned != shown.next.end())
        std::swap(*shown.main, *pinned);
    else if (!shown.main || !m_pinned || shown.main->prompt.task != *m_pinned)
        m_pinned.reset();
    if (shown == m_now && !m_sentence->text().isEmpty())
        return;
    const auto promptOf = [](const view::NowView& view) {
        return view.main ? std::optional{std::pair{view.main->prompt.asks, view.main->prompt.task}}
                         : std::nullopt;
    };
    const bool another = promptOf(shown) != promptOf(m_now);
    m_now = std::move(shown);
    const QWidget* keyboard = window()->focusWidget();
    const bool mine = keyboard == nullptr || isAncestorOf(keyboard);
    if (m_now.main)
        showMain(*m_now.main);
    else
        showNothing(m_now);
    showNext(m_now.next);
    // What had the keyboard may be hidden now, and the keyboard must not end up on a button nobody meant.
    if (another && mine && isVisible())
        takeFocus();
}

void NowPanel::showMain(const StepView& step)
{
    const bool due = step.urgency == view::Urgency::Due || step.urgency == view::Urgency::Late;
    const bool running = step.prompt.asks == Prompt::Asks::Finish;
    const bool look = step.prompt.asks == Prompt::Asks::Look;
    const QString sentence = words::step(step);
    drawIcon();
    AnswerGuard::setStep(*m_button, step.prompt);
    AnswerGuard::setStep(*m_leaveOut, step.prompt);
    m_sentence->setText(due || running ? sentence : tr("Next: %1").arg(sentence));
    m_detail->setText(detail(step));
    showLatest(step.latest);
    m_button->setVisible(!look);
    m_look->setVisible(look);
    m_leaveOut->setVisible(mayBeLeftOut(step.prompt));
    if (look)
        m_look->showLook(step);
    m_button->setText(tr("%1  (Enter)").arg(words::stepButton(step)));
    m_button->setRole(due || running ? QStringLiteral("live") : QStringLiteral("choice"));
}

void NowPanel::drawIcon()
{
    const QString name = m_now.main ? words::stepIcon(*m_now.main) : QStringLiteral("done");
    const int size = iconSize * m_enlarged / 100;
    m_icon->setFixedSize(size, size);
    m_icon->setPixmap(m_theme.icon(name).pixmap(size, size));
}

void NowPanel::showLatest(const std::optional<view::LatestStart>& latest)
{
    const bool shown = latest && !m_far;
    m_latest->setVisible(shown);
    if (!shown)
        return;
    m_latest->setFont(
        Theme::enlargedFont(metrics::textLane, m_enlarged, latest->urgency != view::Urgency::Calm));
    m_latest->setText(words::latest(*latest, m_clock.text(latest->at)));
}

QString NowPanel::detail(const StepView& step) const
{
    QStringList parts;
    if (!step.hands.empty())
        parts << QString::fromStdString(step.hands);
    if (step.waits)
        parts << tr("when the hands are free");
    else if (step.prompt.asks == Prompt::Asks::Finish)
        parts << (step.left > view::Seconds{0}
                      ? tr("%1 left, until %2").arg(words::digits(step.left), m_clock.text(step.prompt.due))
                      : tr("planned until %1").arg(m_clock.text(step.prompt.due)));
    else
        parts << tr("%1, at %2").arg(words::when(step.left), m_clock.text(step.prompt.due));
    if (step.holdsUpTo)
        parts << tr("holds if it takes up to %1 min").arg(words::minutes(*step.holdsUpTo));
    if (step.prompt.asks == Prompt::Asks::Look)
        parts << tr("%1 developing").arg(words::digits(step.development));
    return parts.join(QStringLiteral("  ·  "));
}

void NowPanel::showNext(const std::vector<StepView>& steps)
{
    m_nextTitle->setVisible(!steps.empty() && !m_brief);
    for (std::size_t place = 0; place < m_next.size(); ++place) {
        m_next[place]->setVisible(place < steps.size() && !m_brief);
        if (place >= steps.size())
            continue;
        m_next[place]->showStep(steps[place], m_clock);
        AnswerGuard::setStep(*m_next[place], steps[place].prompt);
    }
}

void NowPanel::showNothing(const view::NowView& now)
{
    drawIcon();
    m_sentence->setText(now.finished ? tr("All done") : tr("Nothing to do just now"));
    m_detail->setText(now.finished ? tr("Every step of this run is answered.") : QString{});
    m_latest->hide();
    m_button->setVisible(now.finished);
    AnswerGuard::setStep(*m_button, QStringLiteral("over"));
    m_button->setText(tr("Put this run away  (Enter)"));
    m_button->setRole(QStringLiteral("live"));
    m_look->hide();
    m_leaveOut->hide();
}

void NowPanel::setBrief(bool brief)
{
    if (brief == m_brief)
        return;
    m_brief = brief;
    showNext(m_now.next);
}

void NowPanel::setTerse(bool terse)
{
    m_look->setTerse(terse);
}

bool NowPanel::hasLookRows() const
{
    return !m_look->isHidden() && m_look->hasRows();
}

void NowPanel::fitLook(int width, int leftForHigh, int left)
{
    if (m_look->isHidden())
        return;
    const QMargins edges = layout()->contentsMargins();
    const int inside = width - edges.left() - edges.right();
    const int high = m_look->heightAt(inside);
    m_look->fit(inside, high + leftForHigh, high + left);
    if (m_look->heightAt(inside) != high)
        layout()->invalidate();  // Whoever asks next how high it is must not be told what was.
}

void NowPanel::setFar(bool far)
{
    if (far == m_far)
        return;
    m_far = far;
    sizeWords();
    m_detail->setVisible(!far);
    showLatest(m_now.main ? m_now.main->latest : std::nullopt);
}

void NowPanel::setEnlarged(int percent)
{
    if (percent == m_enlarged)
        return;
    m_enlarged = percent;
    setStyleSheet(enlargedButtons(QStringLiteral("QPushButton[role=\"live\"], QPushButton[role=\"choice\"]"),
                                  metrics::textLarge, percent));
    sizeWords();
    drawIcon();
    showLatest(m_now.main ? m_now.main->latest : std::nullopt);
}

/// A new sheet of styles gives a label the font that it was made with.
void NowPanel::sizeWords()
{
    m_sentence->setFont(
        Theme::enlargedFont(m_far ? metrics::textAlert : metrics::textStep, m_enlarged, true));
    m_detail->setFont(Theme::enlargedFont(metrics::textLarge, m_enlarged));
    m_button->setMinimumWidth(340 * m_enlarged / 100);
}

void NowPanel::setInsisting(bool insisting, bool lit)
{
    if (insisting == m_insisting && lit == m_lit)
        return;
    m_insisting = insisting;
    m_lit = lit;
    update();
}

void NowPanel::takeFocus()
{
    QWidget* first = m_look->isVisible() ? static_cast<QWidget*>(m_look->first()) : m_button;
    if (first->isVisible())
        first->setFocus(Qt::OtherFocusReason);
}

void NowPanel::answerMain()
{
    if (m_now.main)
        Q_EMIT answered(answerTo(m_now.main->prompt));
    else if (m_now.finished)
        Q_EMIT putAway();
}

void NowPanel::answerNext(std::size_t place)
{
    if (place >= m_now.next.size())
        return;
    const Prompt prompt = m_now.next[place].prompt;
    if (prompt.asks != Prompt::Asks::Look)
        return Q_EMIT answered(answerTo(prompt));
    // A look needs a verdict: it becomes the main thing and is answered there.
    m_pinned = prompt.task;
    showNow(view::NowView{m_now}, m_clock);
    takeFocus();
}

void NowPanel::leaveOut()
{
    if (!m_now.main)
        return;
    Answer answer;
    answer.kind = Answer::Kind::Drop;
    answer.task = m_now.main->prompt.task;
    Q_EMIT answered(answer);
}

void NowPanel::paintEvent(QPaintEvent* event)
{
    QFrame::paintEvent(event);
    if (!m_insisting)
        return;
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{m_lit ? m_theme.colours().late : m_theme.colours().line, m_lit ? 8.0 : 3.0});
    painter.drawRoundedRect(QRectF{rect()}.adjusted(4, 4, -4, -4), metrics::radiusLarge,
                            metrics::radiusLarge);
}

}  // namespace app::desktop
