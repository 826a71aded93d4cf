#include "app/desktop/help/help_sheet.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QAbstractButton>
#include <QAction>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int usualWidth = 400;
constexpr int columnWidth = 280;  ///< From three times that on, words, shapes and keys stand side by side.

QLabel* makeText(const QString& text)
{
    auto* label = new QLabel{text};
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    return label;
}

QKeySequence keyOf(const QObject& part)
{
    if (const auto* button = qobject_cast<const QAbstractButton*>(&part))
        return button->shortcut();
    if (const auto* shortcut = qobject_cast<const QShortcut*>(&part))
        return shortcut->key();
    const auto* action = qobject_cast<const QAction*>(&part);
    return action == nullptr ? QKeySequence{} : action->shortcut();
}

}  // namespace

QString keysOf(const QWidget& window, const HelpText::Key& key)
{
    QStringList keys;
    const auto add = [&keys](const QKeySequence& sequence) {
        if (!sequence.isEmpty())
            // A line ends between two keys and not within the name of one.
            keys << sequence.toString(QKeySequence::NativeText).replace(QLatin1Char{' '}, QChar::Nbsp);
    };
    for (const char* name : key.parts)
        if (const auto* part = window.findChild<QObject*>(QLatin1String{name}))
            add(keyOf(*part));
    for (const Qt::Key other : key.others)
        add(QKeySequence{other});
    return keys.join(QStringLiteral(", "));
}

HelpSheet::HelpSheet(const Theme& theme, HelpFor page, QWidget* parent)
    : QFrame{parent}
    , m_theme{theme}
    , m_text{helpText(page)}
    , m_scroll{new QScrollArea}
{
    static constexpr const char* names[] = {"setupHelp", "lanesHelp", "recordsHelp", "soundHelp"};
    setObjectName(QLatin1String{names[static_cast<std::size_t>(page)]});
    setProperty("role", QStringLiteral("card"));
    setAccessibleName(m_text.title);
    setAccessibleDescription(
        QStringList{m_text.paragraphs.begin(), m_text.paragraphs.end()}.join(QLatin1Char{' '}));
    auto* body = new QWidget;
    m_columns = new QBoxLayout{QBoxLayout::TopToBottom, body};
    m_columns->setContentsMargins(0, 0, metrics::gapSmall, 0);
    m_columns->setSpacing(metrics::gapLarge);
    m_columns->addWidget(makeWords(m_text.paragraphs), 1);
    if (!m_text.shapes.empty())
        m_columns->addWidget(makeShapes(m_text.shapes), 1);
    m_columns->addWidget(makeKeys(), 1);
    m_scroll->setObjectName(QStringLiteral("helpScroll"));
    m_scroll->setAccessibleName(m_text.title);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setWidget(body);
    m_scroll->viewport()->setAutoFillBackground(false);
    body->setAutoFillBackground(false);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(metrics::gap, metrics::gapSmall, metrics::gapSmall, metrics::gapSmall);
    layout->setSpacing(metrics::gapSmall);
    layout->addWidget(makeHead(m_text.title));
    layout->addWidget(m_scroll, 1);
    makeScrollKeys();
    hide();
}

QWidget* HelpSheet::makeHead(const QString& title)
{
    auto* head = new QWidget;
    auto* row = new QHBoxLayout{head};
    row->setContentsMargins(0, 0, 0, 0);
    auto* label = makeText(title);
    label->setObjectName(QStringLiteral("helpTitle"));
    label->setFont(Theme::font(metrics::textLane, true));
    row->addWidget(label, 1);
    auto* close = new QPushButton{tr("Close  (Esc)")};
    close->setObjectName(QStringLiteral("helpClose"));
    close->setMinimumHeight(metrics::target);
    close->setAutoDefault(false);
    close->setShortcut(QKeySequence{Qt::Key_Escape});
    connect(close, &QPushButton::clicked, this, &HelpSheet::close);
    row->addWidget(close, 0, Qt::AlignTop);
    return head;
}

QWidget* HelpSheet::makeWords(const std::vector<QString>& paragraphs)
{
    auto* part = new QWidget;
    auto* layout = new QVBoxLayout{part};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(metrics::gap);
    for (const QString& paragraph : paragraphs)
        layout->addWidget(makeText(paragraph));
    layout->addStretch(1);
    return part;
}

QWidget* HelpSheet::makeShapes(const std::vector<HelpText::Shape>& shapes)
{
    auto* part = new QWidget;
    auto* grid = new QGridLayout{part};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(metrics::gapSmall);
    grid->setColumnStretch(1, 1);
    int row = 0;
    for (const HelpText::Shape& shape : shapes) {
        auto* sample = new StrandSample{m_theme, shape.kind};
        sample->setAccessibleName(shape.meaning);
        grid->addWidget(sample, row, 0, Qt::AlignTop);
        auto* meaning = makeText(shape.meaning);
        meaning->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
        grid->addWidget(meaning, row++, 1);
    }
    grid->setRowStretch(row, 1);
    return part;
}

QWidget* HelpSheet::makeKeys()
{
    auto* part = new QWidget;
    auto* grid = new QGridLayout{part};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(metrics::gap);
    grid->setVerticalSpacing(metrics::gapTiny);
    // In some languages keys have long names, which must leave room for what they do.
    grid->setColumnStretch(0, 2);
    grid->setColumnStretch(1, 3);
    int row = 0;
    for (const HelpText::Key& key : m_text.keys) {
        auto* keys = makeText({});
        keys->setFont(Theme::font(metrics::text, true));
        m_keys.push_back(keys);
        grid->addWidget(keys, row, 0);
        auto* what = makeText(key.what);
        what->setObjectName(QStringLiteral("keyMeaning"));
        grid->addWidget(what, row++, 1);
    }
    grid->setRowStretch(row, 1);
    return part;
}

void HelpSheet::fillKeys()
{
    for (std::size_t line = 0; line < m_keys.size(); ++line) {
        const QString keys = keysOf(*window(), m_text.keys[line]);
        m_keys[line]->setText(keys.isEmpty() ? QString{} : tr("%1", "keys").arg(keys));
    }
}

void HelpSheet::makeScrollKeys()
{
    const auto add = [this](const char* name, Qt::Key key, int direction) {
        auto* shortcut = new QShortcut{QKeySequence{key}, this};
        shortcut->setObjectName(QLatin1String{name});
        connect(shortcut, &QShortcut::activated, this, [this, direction] {
            QScrollBar* const bar = m_scroll->verticalScrollBar();
            bar->setValue(bar->value() + direction * bar->pageStep() * 9 / 10);
        });
    };
    add("helpOn", Qt::Key_PageDown, 1);
    add("helpBack", Qt::Key_PageUp, -1);
}

void HelpSheet::open()
{
    m_before = window()->focusWidget();
    fillKeys();
    m_scroll->verticalScrollBar()->setValue(0);
    show();
}

void HelpSheet::openByKey(QWidget& window, const std::function<void()>& arrange)
{
    auto* key = new QShortcut{QKeySequence{Qt::Key_F1}, &window};
    key->setObjectName(QStringLiteral("pageHelp"));
    connect(key, &QShortcut::activated, this, [this, arrange] {
        toggle();
        arrange();
    });
    connect(this, &HelpSheet::closed, &window, arrange);
}

void HelpSheet::close()
{
    if (isHidden())
        return;
    const QWidget* keyboard = window()->focusWidget();
    const bool mine = keyboard != nullptr && isAncestorOf(keyboard);
    hide();
    Q_EMIT closed();  // What gave way is there again, and can have the keyboard.
    if (mine && m_before)
        m_before->setFocus(Qt::OtherFocusReason);
}

int HelpSheet::leastHeight()
{
    constexpr int lines = 90;
    return metrics::target + Theme::scaled(lines);
}

int HelpSheet::easyHeight()
{
    constexpr int lines = 230;
    return metrics::target + Theme::scaled(lines);
}

int HelpSheet::wholeHeight(int width)
{
    arrange(width);
    const QMargins margins = layout()->contentsMargins();
    const int scrollBar = m_scroll->verticalScrollBar()->sizeHint().width();
    const int inner = width - margins.left() - margins.right() - scrollBar;
    const QLayoutItem* head = layout()->itemAt(0);
    const int headHeight =
        head->hasHeightForWidth() ? head->heightForWidth(inner) : head->sizeHint().height();
    return margins.top() + headHeight + layout()->spacing() + m_columns->heightForWidth(inner)
        + margins.bottom() + 2;
}

void HelpSheet::share(QWidget& rest, int width, int least)
{
    const int mine = Theme::scaled(usualWidth);
    const bool beside = width - mine - metrics::gapSmall >= least;
    setMaximumWidth(beside ? mine : QWIDGETSIZE_MAX);
    setMinimumWidth(beside ? mine : 0);
    const bool shown = isHidden() || beside;
    // Not on to whatever comes next in the window, which nobody chose.
    if (const QWidget* keyboard = window()->focusWidget();
        !shown && keyboard != nullptr && rest.isAncestorOf(keyboard))
        m_scroll->setFocus(Qt::OtherFocusReason);
    rest.setVisible(shown);
}

/// Side by side where each of them can be read so.
void HelpSheet::arrange(int width)
{
    const bool wide = width >= 3 * Theme::scaled(columnWidth) + 2 * metrics::gapLarge;
    m_columns->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

void HelpSheet::resizeEvent(QResizeEvent* event)
{
    QFrame::resizeEvent(event);
    arrange(width());
}

}  // namespace app::desktop
