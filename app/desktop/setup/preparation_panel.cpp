#include "app/desktop/setup/preparation_panel.h"

#include "app/desktop/look/flow_layout.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/setup/preparation_text.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int longestReason = 200;
constexpr int reasonWidth = 220;

/// Shape tells the state as well as the word does.
QString iconOf(Prepared::State state)
{
    switch (state) {
    case Prepared::State::Open: return QStringLiteral("open");
    case Prepared::State::Done: return QStringLiteral("done");
    case Prepared::State::Skipped: return QStringLiteral("remove");
    }
    return {};
}

QPushButton* makeButton(const QString& text, const char* name)
{
    auto* button = new QPushButton{text};
    button->setObjectName(QLatin1String{name});
    button->setMinimumHeight(metrics::target);
    button->setAutoDefault(true);  // Enter presses it.
    return button;
}

}  // namespace

PreparationPanel::PreparationPanel(const Theme& theme, Preparation& preparation,
                                   std::function<core::measure::Instant()> now, QWidget* parent)
    : QWidget{parent}
    , m_theme{theme}
    , m_preparation{preparation}
    , m_now{std::move(now)}
{
    setObjectName(QStringLiteral("preparation"));
    setAccessibleName(tr("Before the start"));
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(metrics::gapTiny);
    m_answer = makeAnswer();
    layout->addWidget(m_answer);
    layout->addWidget(makeLines());
    m_answer->hide();
    connect(&preparation, &Preparation::changed, this, &PreparationPanel::follow);
    connect(&theme, &Theme::changed, this, &PreparationPanel::follow);
    follow();
}

QWidget* PreparationPanel::makeLines()
{
    auto* lines = new QWidget;
    auto* row = new FlowLayout{lines};
    static constexpr const char* names[] = {"prepareSound", "prepareTests", "prepareProtection",
                                            "prepareBowls"};
    for (const Preparing line : Preparation::all) {
        auto* button = makeButton({}, names[static_cast<std::size_t>(line)]);
        button->setCheckable(true);
        button->setProperty("role", QStringLiteral("narrow"));  // All of them on a line, in every language.
        button->installEventFilter(this);
        // A screen reader toggles and does not click.
        connect(button, &QPushButton::toggled, this, [this, line](bool open) {
            if (open != (m_open == line))
                openLine(open ? std::optional{line} : std::nullopt);
        });
        row->addWidget(button);
        m_lines.push_back(button);
    }
    return lines;
}

QWidget* PreparationPanel::makeAnswer()
{
    auto* box = new QFrame;
    box->setObjectName(QStringLiteral("prepareAnswer"));
    auto* layout = new QVBoxLayout{box};
    layout->setContentsMargins(0, 0, 0, metrics::gapTiny);
    layout->setSpacing(metrics::gapTiny);
    m_about = new QLabel;
    m_about->setObjectName(QStringLiteral("prepareAbout"));
    m_about->setWordWrap(true);
    m_about->setTextFormat(Qt::PlainText);
    layout->addWidget(m_about);
    auto* buttons = new QWidget;
    auto* row = new FlowLayout{buttons};
    m_done = makeButton({}, "prepareDone");
    m_why = new QLineEdit;
    m_why->setObjectName(QStringLiteral("prepareWhy"));
    m_why->setMaxLength(longestReason);
    m_why->setMinimumSize(Theme::scaled(reasonWidth), metrics::target);
    m_why->setPlaceholderText(tr("why it is skipped"));
    m_why->setAccessibleName(tr("Why it is skipped"));
    m_skip = makeButton(tr("Skip it"), "prepareSkip");
    m_back = makeButton(tr("Not so: open again"), "prepareBack");
    m_close = makeButton(tr("Close  (Esc)"), "prepareClose");
    for (QWidget* part :
         {static_cast<QWidget*>(m_done), static_cast<QWidget*>(m_why), static_cast<QWidget*>(m_skip),
          static_cast<QWidget*>(m_back), static_cast<QWidget*>(m_close)}) {
        part->installEventFilter(this);
        row->addWidget(part);
    }
    layout->addWidget(buttons);
    connect(m_done, &QPushButton::clicked, this, [this] { answer(Prepared::State::Done); });
    connect(m_skip, &QPushButton::clicked, this, [this] { answer(Prepared::State::Skipped); });
    connect(m_why, &QLineEdit::returnPressed, this, [this] { answer(Prepared::State::Skipped); });
    connect(m_back, &QPushButton::clicked, this, [this] {
        m_preparation.say({.what = *m_open});
        m_done->setFocus();
    });
    connect(m_close, &QPushButton::clicked, this, &PreparationPanel::close);
    return box;
}

void PreparationPanel::showFor(std::vector<core::service::Service> services, WallClock clock,
                               const QString& order)
{
    m_services = std::move(services);
    m_clock = std::move(clock);
    m_order = order;
    follow();
}

void PreparationPanel::goToOpen()
{
    const auto* const found =
        std::ranges::find_if(Preparation::all, [this](Preparing line) { return m_preparation.isOpen(line); });
    openLine(found == Preparation::all.end() ? Preparation::all.front() : *found);
}

void PreparationPanel::openLine(std::optional<Preparing> line)
{
    m_open = line;
    m_answer->setVisible(line.has_value());
    follow();
    if (!line)
        return;
    m_why->setText(QString::fromStdString(m_preparation.of(*line).why));
    m_done->setFocus();
    Q_EMIT opened();
}

void PreparationPanel::close()
{
    QPushButton* const line = m_open ? lineOf(*m_open) : nullptr;
    openLine(std::nullopt);
    if (line != nullptr)
        line->setFocus();
}

void PreparationPanel::follow()
{
    for (const Preparing line : Preparation::all) {
        const Prepared& said = m_preparation.of(line);
        QPushButton* const button = lineOf(line);
        const QString text = preparation_text::line(said, m_services);
        button->setText(text);
        button->setIcon(m_theme.icon(iconOf(said.state)));
        button->setChecked(m_open == line);
        button->setAccessibleName(text);
        button->setAccessibleDescription(preparation_text::detail(said, m_clock));
        button->setToolTip(button->accessibleDescription());
    }
    followAnswer();
    Q_EMIT linesChanged();
}

int PreparationPanel::widthOfLines() const
{
    int width = 0;
    for (const QPushButton* line : m_lines)
        width += line->sizeHint().width() + (line == m_lines.front() ? 0 : metrics::gapSmall);
    return width;
}

void PreparationPanel::followAnswer()
{
    if (!m_open)
        return;
    const Prepared& said = m_preparation.of(*m_open);
    const bool sound = *m_open == Preparing::Sound;
    m_about->setText(preparation_text::about(*m_open, m_services, m_order));
    m_done->setText(preparation_text::done(*m_open));
    m_done->setAccessibleDescription(m_about->text());
    // The sound check itself asks what came of it.
    m_why->setVisible(!sound);
    m_skip->setVisible(!sound);
    m_back->setVisible(!sound && said.state != Prepared::State::Open);
}

void PreparationPanel::answer(Prepared::State state)
{
    if (!m_open)
        return;
    const Preparing line = *m_open;
    if (line == Preparing::Sound) {
        Q_EMIT soundCheckRequested();
        if (!m_preparation.isOpen(line))
            goOn();
        return;
    }
    const QString why = m_why->text().simplified();
    if (state == Prepared::State::Skipped && why.isEmpty())
        return m_why->setFocus();
    m_preparation.say({.what = line,
                       .state = state,
                       .why = state == Prepared::State::Skipped ? why.toStdString() : std::string{},
                       .at = m_now()});
    goOn();
}

/// To the next that is open, so that the whole list is answered key by key.
void PreparationPanel::goOn()
{
    const bool open =
        std::ranges::any_of(Preparation::all, [this](Preparing line) { return m_preparation.isOpen(line); });
    if (open)
        return goToOpen();
    close();
    Q_EMIT allAnswered();
}

bool PreparationPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress && m_open
        && static_cast<const QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        close();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace app::desktop
