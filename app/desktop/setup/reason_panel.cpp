#include "app/desktop/setup/reason_panel.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/outcome_button.h"
#include "app/desktop/setup/plan_text.h"

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace app::desktop {
namespace {

constexpr int columns = 2;

QString standingText(const CureSearch& search)
{
    using Standing = CureSearch::Standing;
    const bool none = search.cures().empty();
    switch (search.standing()) {
    case Standing::Nothing: return {};
    case Standing::SearchingLong:
        if (none)
            return ReasonPanel::tr("Looking for what would make it fit …");
        [[fallthrough]];
    case Standing::Searching:
        if (none)
            return {};  // Usually they are there at once.
        [[fallthrough]];
    case Standing::Found:
        return none ? ReasonPanel::tr("No change that is known makes it fit, nor do two together.")
                    : ReasonPanel::tr("Each of these makes it fit: it was planned with the change. The least "
                                      "change comes first; the product's leaflet comes before all of them.");
    case Standing::OutOfTime:
        return none ? ReasonPanel::tr("There was no time to find what would make it fit.")
                    : ReasonPanel::tr("Each of these makes it fit; there may be more. The product's leaflet "
                                      "comes before all of them.");
    }
    return {};
}

}  // namespace

ReasonPanel::ReasonPanel(QWidget* parent)
    : QScrollArea{parent}
    , m_layout{nullptr}
    , m_grid{nullptr}
    , m_minimal{new QLabel}
    , m_standing{new QLabel}
{
    setObjectName(QStringLiteral("reasonPanel"));
    setAccessibleName(tr("Why nothing fits, and what would"));
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    auto* body = new QWidget;
    m_layout = new QVBoxLayout{body};
    m_layout->setContentsMargins(0, 0, metrics::gapSmall, 0);
    m_layout->setSpacing(metrics::gapSmall);
    m_minimal->setObjectName(QStringLiteral("reasonMinimal"));
    m_standing->setObjectName(QStringLiteral("curesStanding"));
    for (QLabel* label : {m_minimal, m_standing}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        m_layout->addWidget(label);
    }
    m_grid = new QGridLayout;
    m_grid->setSpacing(metrics::gapSmall);
    m_layout->addLayout(m_grid);
    m_layout->addStretch(1);
    setWidget(body);
    viewport()->setAutoFillBackground(false);
    body->setAutoFillBackground(false);
}

void ReasonPanel::showReason(const core::stagger::NoPlan& reason)
{
    QString text;
    if (reason.stopped)
        text = tr("The search was stopped before it was known whether anything fits.");
    else if (reason.demands.size() > 1)
        text = reason.minimal ? tr("Without any one of these the others can hold together.")
                              : tr("Not all of these may be needed for the clash.");
    m_minimal->setText(text);
    m_minimal->setVisible(!text.isEmpty());
}

void ReasonPanel::showCures(const CureSearch& search, const WallClock& clock)
{
    const QString said = standingText(search);
    m_standing->setText(said);
    m_standing->setVisible(!said.isEmpty());
    fill(search.cures(), clock);
}

void ReasonPanel::fill(const std::vector<core::stagger::Cure>& cures, const WallClock& clock)
{
    while (m_buttons.size() > cures.size()) {
        // It may be what was pressed just now, so it goes once that is over.
        m_buttons.back()->hide();
        m_buttons.back()->deleteLater();
        m_buttons.pop_back();
    }
    while (m_buttons.size() < cures.size()) {
        const std::size_t place = m_buttons.size();
        auto* button = new OutcomeButton;
        button->setObjectName(QStringLiteral("cure%1").arg(place + 1));
        connect(button, &QPushButton::clicked, this, [this, place] { Q_EMIT chosen(place); });
        m_grid->addWidget(button, static_cast<int>(place) / columns, static_cast<int>(place) % columns);
        m_buttons.push_back(button);
    }
    constexpr std::size_t mostWithKey = 9;
    for (std::size_t place = 0; place < cures.size(); ++place) {
        const auto digit = static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(place));
        m_buttons[place]->showWords(plan_text::change(cures[place], clock),
                                    plan_text::outcome(cures[place], clock),
                                    place < mostWithKey ? QKeySequence{Qt::ALT | digit} : QKeySequence{});
    }
}

}  // namespace app::desktop
