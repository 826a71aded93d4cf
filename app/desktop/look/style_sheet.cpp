#include "app/desktop/look/style_sheet.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <algorithm>

namespace app::desktop {
namespace {

// Fields to write in have no colour of their own here: what is said in an empty one would be half of it, and
// too pale to be read.
const char* const pattern = R"(
QPushButton, QToolButton { background: @surface; color: @ink; border: 1px solid @line; border-radius: 8px;
    padding: 6px 14px; min-height: 30px; }
QPushButton:hover, QToolButton:hover { background: @sunken; }
QPushButton:pressed, QToolButton:pressed { background: @selection; }
QPushButton:checked { background: @selection; color: @onSelection; border: 2px solid @line; padding: 5px 13px; }
QPushButton:focus, QToolButton:focus { border: 3px solid @water; padding: 4px 12px; }
QPushButton:disabled { color: @quietInk; border: 1px dashed @line; }
QPushButton[role="main"] { background: @action; color: @onAction; border: 1px solid @action; font-weight: bold;
    padding: 8px 22px; }
QPushButton[role="main"]:focus { border: 3px solid @water; padding: 6px 20px; }
QPushButton[role="main"]:disabled { background: @sunken; color: @quietInk; border: 1px dashed @line; }
QPushButton[role="live"] { background: @action; color: @onAction; border: 2px solid @action; font-weight: bold;
    border-radius: 14px; min-height: 70px; padding: 6px 26px; font-size: @textLive; }
QPushButton[role="live"]:focus { border: 5px solid @water; padding: 3px 23px; }
QPushButton[role="choice"] { background: @surface; color: @ink; border: 2px solid @line; font-weight: bold;
    border-radius: 14px; min-height: 70px; padding: 6px 20px; font-size: @textChoice; }
QPushButton[role="choice"]:focus { border: 5px solid @water; padding: 3px 17px; }
QPushButton[role="row"] { background: @surface; color: @ink; border: 2px solid @line; font-weight: bold;
    border-radius: 12px; min-height: 30px; padding: 4px 10px; font-size: @textRow; }
QPushButton[role="row"]:focus { border: 5px solid @water; padding: 1px 7px; }
QPushButton[role="page"] { border: none; border-radius: 0; border-bottom: 4px solid transparent; background: transparent;
    padding: 6px 16px; }
QPushButton[role="page"]:checked { border-bottom: 4px solid @action; }
QPushButton[role="page"]:disabled { color: @quietInk; border: none; }
QPushButton[role="page"]:focus { border: 2px solid @water; border-bottom: 4px solid @water; padding: 4px 14px; }
QPushButton[role="narrow"] { padding: 6px 8px; }
QPushButton[role="narrow"]:checked { padding: 5px 7px; }
QPushButton[role="narrow"]:focus { padding: 4px 6px; }
QLabel[role="quiet"] { color: @quietInk; }
QLabel[role="wrong"] { color: @lateText; font-weight: bold; }
QFrame[role="card"] { background: @surface; border: 1px solid @hairline; border-radius: 14px; }
QFrame[role="strip"] { background: @sunken; border: none; border-bottom: 1px solid @hairline; }
QFrame[role="foot"] { background: @sunken; border: none; border-top: 1px solid @hairline; }
QFrame[role="notice"] { background: @waterWash; border: 2px solid @water; border-radius: 8px; }
QFrame[role="warning"] { background: @soon; border: 2px solid @onSoon; border-radius: 8px; }
QFrame[role="warning"] QLabel { color: @onSoon; font-weight: bold; }
QFrame[role="warning"] QPushButton { background: @soon; color: @onSoon; border: 2px solid @onSoon; }
QFrame[role="alert"], QFrame[role="alertStep"] { border: none; }
QFrame[role="alert"] QPushButton, QFrame[role="alertStep"] QPushButton { font-weight: bold; border-radius: 14px;
    min-height: 84px; padding: 6px 30px; font-size: @textAlert; }
QFrame[role="alert"] { background: @alarm; }
QFrame[role="alert"] QLabel { color: @onAlarm; background: transparent; }
QFrame[role="alert"] QPushButton { background: @onAlarm; color: @alarm; border: 3px solid @onAlarm; }
QFrame[role="alert"] QPushButton:focus { border: 5px solid @alarm; }
QFrame[role="alertStep"] { background: @step; }
QFrame[role="alertStep"] QLabel { color: @onStep; background: transparent; }
QFrame[role="alertStep"] QPushButton { background: @onStep; color: @step; border: 3px solid @onStep; }
QFrame[role="alertStep"] QPushButton:focus { border: 5px solid @step; }
QTableView { background: @surface; alternate-background-color: @surface; gridline-color: @hairline;
    border: 1px solid @line; border-radius: 8px; selection-background-color: @selection;
    selection-color: @onSelection; }
QTableView:focus { border: 2px solid @water; }
QHeaderView::section { background: @sunken; color: @ink; border: none; border-right: 1px solid @hairline;
    border-bottom: 1px solid @line; padding: 5px 7px; }
QTabWidget::pane { border: none; }
QTabBar { border: none; background: transparent; }
QCheckBox::indicator { width: 18px; height: 18px; border: 2px solid @line; border-radius: 4px; background: @surface; }
QCheckBox::indicator:focus { border: 3px solid @water; }
QCheckBox::indicator:checked { background: @soon; image: url(:/icons/done.svg); }
QTabBar::tab { background: transparent; color: @quietInk; padding: 7px 14px; border-bottom: 3px solid transparent; }
QTabBar::tab:selected { color: @ink; border-bottom: 3px solid @action; }
QTabBar::tab:focus { color: @ink; border: 2px solid @water; }
QLineEdit { background: @surface; border: 1px solid @line; border-radius: 6px; padding: 4px 8px;
    min-height: 26px; }
QLineEdit:focus { border: 2px solid @water; }
QTableView QLineEdit { border-radius: 0; padding: 0 4px; min-height: 0; }
QSpinBox QLineEdit, QDateTimeEdit QLineEdit { border: none; padding: 0 4px; min-height: 0; background: transparent; }
QComboBox, QSpinBox, QDateTimeEdit { background: @surface; border: 1px solid @line; border-radius: 6px;
    padding: 4px 8px; min-height: 26px; }
QSpinBox, QDateTimeEdit { padding-right: 26px; }
QToolButton[popupMode="2"] { padding-right: 30px; }
QComboBox:focus, QSpinBox:focus, QDateTimeEdit:focus { border: 2px solid @water; }
QTableView QComboBox { border-radius: 0; padding: 0 4px; min-height: 0; }
QComboBox::drop-down { border: none; width: 28px; }
QComboBox::down-arrow { image: url(:/icons/down@pale.svg); width: 16px; height: 16px; }
QPushButton::menu-indicator, QToolButton::menu-indicator { image: url(:/icons/down@pale.svg); width: 16px; height: 16px;
    subcontrol-origin: padding; subcontrol-position: right center; right: 8px; }
QSpinBox::up-button, QSpinBox::down-button, QDateTimeEdit::up-button, QDateTimeEdit::down-button { border: none;
    subcontrol-origin: border; width: 24px; }
QSpinBox::up-button, QDateTimeEdit::up-button { subcontrol-position: top right; }
QSpinBox::down-button, QDateTimeEdit::down-button { subcontrol-position: bottom right; }
QSpinBox::up-arrow, QDateTimeEdit::up-arrow { image: url(:/icons/up@pale.svg); width: 12px; height: 12px; }
QSpinBox::down-arrow, QDateTimeEdit::down-arrow { image: url(:/icons/down@pale.svg); width: 12px; height: 12px; }
QComboBox QAbstractItemView { background: @surface; color: @ink; border: 1px solid @line;
    selection-background-color: @selection; selection-color: @onSelection; }
QScrollBar { background: transparent; border: none; margin: 0; }
QScrollBar:vertical { width: 16px; }
QScrollBar:horizontal { height: 16px; }
QScrollBar::handle { background: @line; border: 4px solid @ground; border-radius: 8px; }
QScrollBar::handle:hover { background: @ink; }
QScrollBar::handle:vertical { min-height: 24px; }
QScrollBar::handle:horizontal { min-width: 24px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QDialog { background: @ground; border: 2px solid @line; }
QListWidget { background: transparent; border: none; outline: none; }
QListWidget::item { padding: 4px; border: 2px solid transparent; border-radius: 6px; }
QListWidget::item:selected { background: @selection; color: @onSelection; }
QListWidget::item:focus { border: 2px solid @water; }
QMenuBar { background: @sunken; color: @ink; }
QMenuBar::item { padding: 6px 12px; }
QMenuBar::item:selected { background: @selection; color: @onSelection; }
QMenu { background: @surface; color: @ink; border: 1px solid @line; }
QMenu::item { padding: 7px 26px; }
QMenu::item:selected { background: @selection; color: @onSelection; }
QMenu::item:disabled { color: @quietInk; }
QMenu::separator { height: 1px; background: @hairline; margin: 4px 8px; }
QToolTip { background: @surface; color: @ink; border: 1px solid @line; padding: 4px; }
)";

}  // namespace

QString styleSheet(const Colours& colours, int textSize)
{
    QString sheet = QString::fromLatin1(pattern);
    const std::pair<const char*, int> sizes[] = {
        {"@textRow", metrics::textLane}, {"@textChoice", 20}, {"@textLive", 22}, {"@textAlert", 30}};
    for (const auto& [name, pixels] : sizes)
        sheet.replace(QLatin1String{name},
                      QStringLiteral("%1px").arg(std::min(pixels * textSize / 100, metrics::textAlert)));
    constexpr int middle = 128;
    sheet.replace(QLatin1String{"@pale"}, QLatin1String{colours.surface.lightness() < middle ? "-pale" : ""});
    // The text of the late colour has to be read on every ground, so it is the colour itself.
    const std::pair<const char*, QColor> names[] = {
        {"@lateText", colours.late},
        {"@alarm", colours.alarm},
        {"@onStep", colours.onAlarmStep},
        {"@step", colours.alarmStep},
        {"@onAlarm", colours.onAlarm},
        {"@surface", colours.surface},
        {"@sunken", colours.sunken},
        {"@hairline", colours.hairline},
        {"@line", colours.line},
        {"@quietInk", colours.quietInk},
        {"@ink", colours.ink},
        {"@onAction", colours.onAction},
        {"@action", colours.action},
        {"@waterWash", colours.waterWash},
        {"@water", colours.water},
        {"@onSoon", colours.onSoon},
        {"@soon", colours.soon},
        {"@onSelection", colours.onSelection},
        {"@selection", colours.selection},
        {"@ground", colours.ground},
    };
    for (const auto& [name, colour] : names)
        sheet.replace(QLatin1String{name}, colour.name());
    return sheet;
}

QString enlargedButtons(const QString& which, int textSize, int percent)
{
    if (percent == 100)
        return {};
    return which
        + QStringLiteral(" { font-size: %1px; min-height: %2px; }")
              .arg(Theme::enlargedFont(textSize, percent).pixelSize())
              .arg(metrics::targetLive * percent / 100);
}

}  // namespace app::desktop
