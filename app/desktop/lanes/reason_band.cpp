#include "app/desktop/lanes/reason_band.h"

#include "app/desktop/lanes/choice_button.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int columns = 2;

}  // namespace

ReasonBand::ReasonBand(const Theme& theme, QWidget* parent)
    : QFrame{parent}
    , m_theme{theme}
    , m_icon{new QLabel}
    , m_text{new QLabel}
    , m_ask{new QPushButton}
    , m_close{new QPushButton{tr("Close  (Esc)")}}
    , m_standing{new QLabel}
    , m_scroll{new QScrollArea}
    , m_grid{nullptr}
{
    setProperty("role", QStringLiteral("notice"));
    setObjectName(QStringLiteral("reason"));
    build();
    const auto draw = [this] {
        m_icon->setPixmap(m_theme.icon(QStringLiteral("warning"), m_theme.colours().ink).pixmap(22, 22));
    };
    draw();
    connect(&theme, &Theme::changed, this, draw);
    connect(m_ask, &QPushButton::clicked, this, &ReasonBand::listWanted);
    connect(m_close, &QPushButton::clicked, this, &ReasonBand::listClosed);
    showChoices(List::Closed, {}, {});
    hide();
}

void ReasonBand::build()
{
    m_text->setObjectName(QStringLiteral("reasonText"));
    m_text->setWordWrap(true);
    m_text->setTextFormat(Qt::PlainText);
    m_ask->setObjectName(QStringLiteral("askChoices"));
    m_close->setObjectName(QStringLiteral("closeChoices"));
    m_close->setShortcut(QKeySequence{Qt::Key_Escape});
    m_standing->setObjectName(QStringLiteral("choicesStanding"));
    m_standing->setTextFormat(Qt::PlainText);
    m_standing->setWordWrap(true);

    auto* list = new QWidget;
    m_grid = new QGridLayout{list};
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setSpacing(metrics::gapSmall);
    m_scroll->setObjectName(QStringLiteral("choices"));
    m_scroll->setAccessibleName(tr("What can be chosen"));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(list);
    // The band's own ground shows through.
    m_scroll->viewport()->setAutoFillBackground(false);
    list->setAutoFillBackground(false);

    auto* row = new QHBoxLayout;
    row->setSpacing(metrics::gapSmall);
    row->addWidget(m_icon);
    row->addWidget(m_text, 1);
    row->addWidget(m_ask);
    row->addWidget(m_close);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(metrics::gap, metrics::gapTiny, metrics::gapSmall, metrics::gapTiny);
    layout->setSpacing(metrics::gapTiny);
    layout->addLayout(row);
    layout->addWidget(m_standing);
    layout->addWidget(m_scroll);
}

void ReasonBand::showReason(const QString& reason)
{
    if (!reason.isEmpty()) {
        m_text->setText(tr("Not every limit can hold any more. %1").arg(reason));
        setAccessibleName(m_text->text());
    }
    setVisible(!reason.isEmpty());
}

QString ReasonBand::standing(List list, const view::ChoicesView& choices, const WallClock& clock) const
{
    switch (list) {
    case List::Closed: return {};
    case List::Searching:
        if (choices.choices.empty())
            return {};  // Usually they are there at once.
        [[fallthrough]];
    case List::SearchingLong: return tr("What can be chosen is being worked out …");
    case List::Open: break;
    }
    if (choices.choices.empty())
        return tr("Nothing was found that could be chosen.");
    const QString asOf = clock.text(choices.asOf);
    return choices.old
        ? tr("As of %1, %2 ago: by now they may come to something else. The least harm stands first.")
              .arg(asOf, words::length(choices.age / 10 * 10))
        : tr("As of %1. The least harm stands first; nothing is done until you choose.").arg(asOf);
}

void ReasonBand::showChoices(List list, const view::ChoicesView& choices, const WallClock& clock)
{
    const bool open = list != List::Closed;
    m_ask->setText(open ? tr("Work it out again  (W)") : tr("What can be chosen  (W)"));
    m_ask->setShortcut(QKeySequence{Qt::Key_W});  // Setting a text drops the shortcut.
    m_ask->setEnabled(list == List::Closed || list == List::Open);
    m_close->setVisible(open);
    const QString said = standing(list, choices, clock);
    m_standing->setText(said);
    m_standing->setVisible(!said.isEmpty());
    fill(open ? choices.choices : std::vector<view::ChoiceView>{});
    m_scroll->setVisible(!m_buttons.empty());
    for (ChoiceButton* button : m_buttons)
        button->setEnabled(list == List::Open);
}

void ReasonBand::fill(const std::vector<view::ChoiceView>& choices)
{
    if (choices == m_shown)
        return;
    m_shown = choices;
    while (m_buttons.size() > choices.size()) {
        // It may be what was pressed just now, so it goes once that is over.
        m_buttons.back()->hide();
        m_buttons.back()->deleteLater();
        m_buttons.pop_back();
    }
    while (m_buttons.size() < choices.size()) {
        const int place = static_cast<int>(m_buttons.size());
        auto* button = new ChoiceButton{place + 1};
        button->setObjectName(QStringLiteral("choice%1").arg(place + 1));
        connect(button, &QPushButton::clicked, this,
                [this, place] { Q_EMIT chosen(static_cast<std::size_t>(place)); });
        m_grid->addWidget(button, place / columns, place % columns);
        m_buttons.push_back(button);
    }
    for (std::size_t place = 0; place < m_buttons.size(); ++place)
        m_buttons[place]->showChoice(choices[place]);
    for (int row = 0; row < m_grid->rowCount(); ++row)
        m_grid->setRowMinimumHeight(row, row * columns < std::ssize(m_buttons) ? metrics::targetLive : 0);
}

int ReasonBand::listHeight() const
{
    return m_buttons.empty() ? 0 : m_scroll->minimumHeight();
}

int ReasonBand::leastListHeight()
{
    return metrics::targetLive;
}

void ReasonBand::giveListRoom(int height)
{
    const int rows = (static_cast<int>(m_buttons.size()) + columns - 1) / columns;
    const int whole = rows * (metrics::targetLive + metrics::gapSmall) - metrics::gapSmall;
    m_scroll->setFixedHeight(std::max(leastListHeight(), std::min(whole, height)));
}

}  // namespace app::desktop
