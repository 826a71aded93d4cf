#include "app/desktop/lanes/live_button.h"
#include "app/desktop/lanes/look_choices.h"
#include "app/desktop/lanes/look_row.h"
#include "app/desktop/lanes/tone_box.h"
#include "app/desktop/look/flow_layout.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QGridLayout>
#include <QLabel>

#include <algorithm>

// Where the choices stand: one after another, or a row for each zone.

namespace app::desktop {
namespace {

constexpr int answerEdges = 30;  ///< Left and right of the words of an answer in a row, with its frame.
constexpr int answerAbove = 16;  ///< The same above and below.
constexpr int gloved = 76;       ///< 20 mm at 96 dots an inch, for wet gloves.

QFontMetrics rowMetrics()
{
    return QFontMetrics{Theme::font(metrics::textLane, true)};
}

int widestLine(const QString& words)
{
    int widest = 0;
    for (const QString& line : words.split(QLatin1Char{'\n'}))
        widest = std::max(widest, rowMetrics().horizontalAdvance(line));
    return widest;
}

void putInFlow(FlowLayout& flow, LiveButton& button, bool narrow)
{
    button.setRole(QStringLiteral("choice"));
    button.setSizePolicy(narrow ? QSizePolicy::Fixed : QSizePolicy::Expanding, QSizePolicy::Fixed);
    flow.addWidget(&button);
}

/// As wide as its column and as high as its row, whatever it says.
LiveButton* inRow(LiveButton* button)
{
    button->setRole(QStringLiteral("row"));
    button->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    return button;
}

}  // namespace

int LookChoices::rowHeight(Form form) const
{
    const int lines = form == Form::HighRows ? 3 : 2;
    const int least = form == Form::HighRows ? gloved : metrics::target;
    return std::max(least, lines * rowMetrics().height() + answerAbove);
}

/// A row for each zone, and one for what goes with all of them.
int LookChoices::heightOf(Form form) const
{
    const int rows = static_cast<int>(m_zones.size()) + 1;
    return rows * rowHeight(form) + (rows - 1) * metrics::gapSmall;
}

int LookChoices::heightAt(int width) const
{
    return m_form == Form::Flow ? layout()->heightForWidth(width) : heightOf(m_form);
}

bool LookChoices::isWideEnough(int width, bool brief) const
{
    int name = 0;
    int answer = widestLine(leaveAllText());
    for (std::size_t row = 0; row < m_zones.size(); ++row) {
        name = std::max(name, widestLine(QString::fromStdString(m_zones[row].zone)));
        const LookRow::Words words = m_rows[row]->wordsFor(m_zones[row], m_again, brief);
        for (const QString& each : {words.leave, words.again, words.rinse})
            answer = std::max(answer, widestLine(each));
    }
    return std::min(name, LookRow::mostNameWidth()) + 3 * (metrics::gapSmall + answer + answerEdges) <= width;
}

void LookChoices::fit(int width, int roomForHigh, int room)
{
    const bool many = m_zones.size() > 1 && m_zones.size() <= m_rows.size();
    if (!many || m_terse || !isWideEnough(width, true))
        return takeForm(Form::Flow, false);
    if (heightOf(Form::HighRows) <= roomForHigh)
        return takeForm(Form::HighRows, !isWideEnough(width, false));
    takeForm(heightOf(Form::LowRows) <= room ? Form::LowRows : Form::Flow, true);
}

void LookChoices::takeForm(Form form, bool brief)
{
    if (form == m_form && (form == Form::Flow || brief == m_brief))
        return;
    m_form = form;
    m_brief = brief;
    arrange();
    sayAll();
}

void LookChoices::arrange()
{
    delete layout();
    const std::size_t rows = m_form == Form::Flow ? 1 : m_zones.size();
    for (std::size_t row = 0; row < m_rows.size(); ++row)
        m_rows[row]->setVisible(row < rows);
    if (m_form == Form::Flow)
        arrangeFlow();
    else
        arrangeRows();
    QWidget* before = m_tone;
    for (QWidget* part : std::initializer_list<QWidget*>{m_leaveAll, m_later, m_sooner}) {
        setTabOrder(part, before);
        before = part;
    }
    updateGeometry();
}

void LookChoices::arrangeFlow()
{
    auto* flow = new FlowLayout{this};
    const LookRow& row = *m_rows.front();
    row.name()->hide();
    putInFlow(*flow, *row.leave(), false);
    putInFlow(*flow, *row.again(), false);
    putInFlow(*flow, *m_sooner, true);
    putInFlow(*flow, *m_later, true);
    putInFlow(*flow, *row.rinse(), false);
    putInFlow(*flow, *m_leaveAll, false);
    m_tone->setLeastHeight(metrics::targetLive);
    m_tone->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    flow->addWidget(m_tone);
}

/// What changes the minutes stands below what says them.
void LookChoices::arrangeRows()
{
    auto* grid = new QGridLayout{this};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(metrics::gapSmall);
    for (const int column : {1, 2, 3})
        grid->setColumnStretch(column, 1);
    const int last = static_cast<int>(m_zones.size());
    for (int row = 0; row <= last; ++row)
        grid->setRowMinimumHeight(row, rowHeight(m_form));
    for (int row = 0; row < last; ++row) {
        const LookRow& zone = *m_rows[static_cast<std::size_t>(row)];
        grid->addWidget(zone.name(), row, 0);
        grid->addWidget(inRow(zone.leave()), row, 1);
        grid->addWidget(inRow(zone.again()), row, 2);
        grid->addWidget(inRow(zone.rinse()), row, 3);
    }
    auto* minutes = new QHBoxLayout;
    minutes->setSpacing(metrics::gapSmall);
    minutes->addWidget(inRow(m_sooner));
    minutes->addWidget(inRow(m_later));
    grid->addWidget(inRow(m_leaveAll), last, 1);
    grid->addLayout(minutes, last, 2);
    m_tone->setLeastHeight(metrics::target);
    m_tone->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    grid->addWidget(m_tone, last, 3);
}

}  // namespace app::desktop
