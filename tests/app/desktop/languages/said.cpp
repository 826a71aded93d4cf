#include "tests/app/desktop/languages/said.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QAction>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QRegularExpression>
#include <QSpinBox>
#include <QTabBar>

#include <algorithm>

namespace said {
namespace {

constexpr QChar opening{u'⟦'};
constexpr QChar closing{u'⟧'};

void addTable(const QAbstractItemView& view, QSet<QString>& texts)
{
    const QAbstractItemModel* model = view.model();
    if (model == nullptr)
        return;
    for (const int role :
         {Qt::DisplayRole, Qt::ToolTipRole, Qt::AccessibleTextRole, Qt::AccessibleDescriptionRole}) {
        for (int column = 0; column < model->columnCount(); ++column) {
            texts << model->headerData(column, Qt::Horizontal, role).toString();
            for (int row = 0; row < model->rowCount(); ++row)
                texts << model->index(row, column).data(role).toString();
        }
    }
}

/// Of those that say something else beside what all widgets have.
void addOfKind(const QWidget& part, QSet<QString>& texts)
{
    if (const auto* label = qobject_cast<const QLabel*>(&part))
        texts << label->text();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&part))
        texts << button->text();
    if (const auto* line = qobject_cast<const QLineEdit*>(&part))
        texts << line->placeholderText() << line->text();
    if (const auto* menu = qobject_cast<const QMenu*>(&part))
        texts << menu->title();
    if (const auto* spin = qobject_cast<const QSpinBox*>(&part))
        texts << spin->prefix() << spin->suffix() << spin->specialValueText();
    if (const auto* box = qobject_cast<const QMessageBox*>(&part))
        texts << box->text() << box->informativeText();
    if (const auto* choices = qobject_cast<const QComboBox*>(&part))
        for (int place = 0; place < choices->count(); ++place)
            texts << choices->itemText(place);
    if (const auto* tabs = qobject_cast<const QTabBar*>(&part))
        for (int place = 0; place < tabs->count(); ++place)
            texts << tabs->tabText(place) << tabs->tabToolTip(place) << tabs->accessibleTabName(place);
    if (const auto* view = qobject_cast<const QAbstractItemView*>(&part))
        addTable(*view, texts);
}

void addReadAloud(QAccessibleInterface* part, QSet<QString>& texts, int depth = 0)
{
    constexpr int deepest = 40;
    if (part == nullptr || depth > deepest)
        return;
    for (const QAccessible::Text kind : {QAccessible::Name, QAccessible::Description, QAccessible::Help})
        texts << part->text(kind);
    for (int place = 0; place < part->childCount(); ++place)
        addReadAloud(part->child(place), texts, depth + 1);
}

void addOfWidget(const QWidget& part, QSet<QString>& texts)
{
    texts << part.toolTip() << part.statusTip() << part.whatsThis() << part.accessibleName()
          << part.accessibleDescription();
    if (part.isWindow())
        texts << part.windowTitle();
    addOfKind(part, texts);
}

}  // namespace

QString Bracketing::translate(const char* /*context*/, const char* source, const char* /*comment*/,
                              int /*count*/) const
{
    return opening + QString::fromUtf8(source) + closing;
}

QSet<QString> textsIn(QWidget& window)
{
    QSet<QString> texts;
    addOfWidget(window, texts);
    for (const QWidget* part : window.findChildren<QWidget*>())
        addOfWidget(*part, texts);
    for (const QAction* action : window.findChildren<QAction*>())
        texts << action->text() << action->toolTip() << action->statusTip();
    addReadAloud(QAccessible::queryAccessibleInterface(&window), texts);
    texts.remove(QString{});
    return texts;
}

QString notTranslated(QString text, const QStringList& names)
{
    QString outside;
    int depth = 0;
    for (const QChar letter : text) {
        if (letter == opening)
            ++depth;
        else if (letter == closing)
            --depth;
        else if (depth == 0)
            outside += letter;
    }
    // A countdown, "1h45", is the same in every language.
    static const QRegularExpression countdown{QStringLiteral("\\b\\d+h\\d\\d\\b")};
    outside.remove(countdown);
    QStringList longestFirst = names;
    std::ranges::sort(longestFirst, std::ranges::greater{}, &QString::size);
    for (const QString& name : longestFirst)
        if (!name.isEmpty())
            outside.remove(name);
    const bool says = std::ranges::any_of(outside, [](QChar letter) { return letter.isLetter(); });
    return says ? outside.simplified() : QString{};
}

}  // namespace said
