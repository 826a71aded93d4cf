#include "app/desktop/lanes/outcome_panel.h"

#include "app/desktop/look/flow_layout.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/records/result_words.h"
#include "app/desktop/words.h"
#include "app/view/outcome_words.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int leastLine = 300;  ///< Of what is typed, in pixels.
constexpr int mostLetters = 80;
constexpr int mostLettersOfNote = 300;

QString text(std::string_view words)
{
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

int targetHeight()
{
    return std::max(metrics::target, Theme::scaled(26));
}

}  // namespace

OutcomePanel::OutcomePanel(QWidget* parent)
    : QFrame{parent}
    , m_question{new QLabel}
    , m_flow{new FlowLayout}
{
    setProperty("role", QStringLiteral("foot"));
    setObjectName(QStringLiteral("outcome"));
    setAccessibleName(tr("How it turned out"));
    m_question->setObjectName(QStringLiteral("outcomeQuestion"));
    m_question->setWordWrap(true);
    m_question->setTextFormat(Qt::PlainText);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(metrics::gapLarge, metrics::gapSmall, metrics::gapLarge, metrics::gapSmall);
    layout->setSpacing(metrics::gapSmall);
    layout->addWidget(m_question);
    layout->addLayout(m_flow);
    hide();
}

void OutcomePanel::open(const view::CoatResult& coat)
{
    m_coat = coat;
    const auto untold = std::ranges::find_if_not(coat.zones, &view::ZoneResult::isTold);
    m_zone = untold == coat.zones.end() ? 0 : static_cast<std::size_t>(untold - coat.zones.begin());
    ask();
    show();
    m_parts.front()->setFocus(Qt::OtherFocusReason);
}

void OutcomePanel::follow(const std::vector<view::CoatResult>& coats)
{
    const auto here = std::ranges::find(coats, m_coat.coat, &view::CoatResult::coat);
    if (here == coats.end())
        return Q_EMIT closed();  // Its rinse was undone.
    m_coat = *here;
}

void OutcomePanel::clear()
{
    for (QWidget* part : m_parts) {
        m_flow->removeWidget(part);
        part->hide();
        part->deleteLater();  // It may be what was pressed just now.
    }
    m_parts.clear();
    m_options = 0;
}

void OutcomePanel::put(QWidget* part)
{
    part->setMinimumHeight(targetHeight());
    part->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_flow->addWidget(part);
    m_parts.push_back(part);
    part->show();
}

/// Each has the next of Alt+1 to Alt+9.
QPushButton* OutcomePanel::add(const QString& words)
{
    const QKeySequence key{Qt::ALT | static_cast<Qt::Key>(Qt::Key_0 + ++m_options)};
    auto* button =
        new QPushButton{QStringLiteral("%1  (%2)").arg(words, key.toString(QKeySequence::NativeText))};
    button->setObjectName(QStringLiteral("outcome%1").arg(m_options));
    button->setAccessibleName(words);
    button->setShortcut(key);
    put(button);
    return button;
}

QLineEdit* OutcomePanel::addLine(const QString& name, const QString& what, int most)
{
    auto* line = new QLineEdit;
    line->setObjectName(name);
    line->setAccessibleName(what);
    line->setPlaceholderText(what);
    line->setMaxLength(most);
    line->setMinimumWidth(Theme::scaled(leastLine));
    put(line);
    return line;
}

void OutcomePanel::ask()
{
    clear();
    m_zone < m_coat.zones.size() ? askZone() : askNote();
}

void OutcomePanel::askZone()
{
    const view::ZoneResult& zone = m_coat.zones[m_zone];
    QString question = words::ofHead(m_coat.name, tr("How did %1 turn out?").arg(text(zone.name)));
    if (zone.isTold())
        question += tr("  It was said: %1.").arg(words::result(zone));
    m_question->setText(question);
    for (const auto& [outcome, word] : view::outcomeWords)
        connect(add(words::turnedOut(outcome)), &QPushButton::clicked, this,
                [this, told = outcome] { tell(told); });
    m_words =
        addLine(QStringLiteral("outcomeWords"), tr("In own words too, or instead  (Enter)"), mostLetters);
    connect(m_words, &QLineEdit::returnPressed, this, [this] { tell({}); });
    connect(add(tr("Go on without")), &QPushButton::clicked, this, &OutcomePanel::goOn);
}

void OutcomePanel::askNote()
{
    m_question->setText(words::ofHead(
        m_coat.name,
        m_coat.note.empty()
            ? tr("What is to be thought of next time?")
            : tr("What is to be thought of next time?  It was said: %1.").arg(text(m_coat.note))));
    m_words = addLine(QStringLiteral("outcomeNote"), tr("A note for next time  (Enter)"), mostLettersOfNote);
    connect(m_words, &QLineEdit::returnPressed, this, &OutcomePanel::note);
    connect(add(tr("Keep it")), &QPushButton::clicked, this, &OutcomePanel::note);
    connect(add(tr("Nothing to note")), &QPushButton::clicked, this, &OutcomePanel::closed);
    m_words->setFocus(Qt::OtherFocusReason);
}

/// What is typed goes with the word that is picked; without a word it is what was said.
void OutcomePanel::tell(std::optional<core::run::Outcome> outcome)
{
    core::run::Answer answer;
    answer.kind = core::run::Answer::Kind::TurnOut;
    answer.task = m_coat.zones[m_zone].zone;
    answer.outcome = outcome;
    answer.tone = m_words->text().simplified().toStdString();
    if (!outcome && answer.tone.empty())
        return goOn();
    Q_EMIT answered(answer);
    goOn();
}

void OutcomePanel::note()
{
    core::run::Answer answer;
    answer.kind = core::run::Answer::Kind::Note;
    answer.task = m_coat.zones.front().zone;
    answer.tone = m_words->text().simplified().toStdString();
    if (!answer.tone.empty())
        Q_EMIT answered(answer);
    Q_EMIT closed();
}

void OutcomePanel::goOn()
{
    if (isHidden())  // What was answered may have closed it.
        return;
    ++m_zone;
    ask();
    m_parts.front()->setFocus(Qt::OtherFocusReason);
}

}  // namespace app::desktop
