#include "tests/app/desktop/sizes/cut.h"

#include "app/desktop/lanes/lane_card.h"
#include "app/desktop/lanes/lanes_grid.h"
#include "app/desktop/lanes/live_button.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>

#include <algorithm>

namespace sizes {
namespace {

/// Nobody sees a pixel that is missing of an edge, and the toolkit rounds.
constexpr int unseen = 1;

QString nameOf(const QWidget& part)
{
    QString name = QString::fromLatin1(part.metaObject()->className()) + QLatin1Char{' '} + part.objectName();
    if (const auto* label = qobject_cast<const QLabel*>(&part))
        name += QLatin1Char{'"'} + label->text() + QLatin1Char{'"'};
    if (const auto* button = qobject_cast<const QAbstractButton*>(&part))
        name += QLatin1Char{'"'} + button->text() + QLatin1Char{'"'};
    return name;
}

/// Parts of the toolkit's own parts are its own business.
bool isOurs(const QWidget& part, const QWidget& window)
{
    if (!part.isVisible() || part.isWindow() || part.objectName().startsWith(QLatin1String{"qt_"}))
        return false;
    for (const QWidget* above = part.parentWidget(); above != nullptr && above != &window;
         above = above->parentWidget())
        if (qobject_cast<const QAbstractItemView*>(above) != nullptr
            || qobject_cast<const QTabBar*>(above) != nullptr
            || qobject_cast<const QScrollBar*>(above) != nullptr)
            return false;
    return qobject_cast<const QScrollBar*>(&part) == nullptr;
}

bool isScrolled(const QWidget& part)
{
    const QWidget* above = part.parentWidget();
    const auto* area = above == nullptr ? nullptr : qobject_cast<const QScrollArea*>(above->parentWidget());
    return area != nullptr && area->widget() == &part;
}

QString wordsCut(const QWidget& part)
{
    if (const auto* label = qobject_cast<const QLabel*>(&part);
        label != nullptr && !label->text().isEmpty()) {
        if (label->wordWrap())
            return label->heightForWidth(label->width()) > label->height() + unseen
                ? QStringLiteral("too low")
                : QString{};
        return label->sizeHint().width() > label->width() + unseen ? QStringLiteral("too narrow") : QString{};
    }
    const bool plain = part.metaObject() == &QPushButton::staticMetaObject
        || part.metaObject() == &app::desktop::LiveButton::staticMetaObject;
    if (plain
        && (part.sizeHint().width() > part.width() + unseen
            || part.sizeHint().height() > part.height() + unseen))
        return QStringLiteral("its words do not fit");
    return {};
}

/// The field of a list is as wide as the list leaves it, and is to hold what it asks for.
bool holdsItsWords(const QLineEdit& field)
{
    return field.fontMetrics().horizontalAdvance(field.placeholderText()) <= field.width()
        && field.fontMetrics().height() <= field.height();
}

QString placeCut(const QWidget& part)
{
    if (const auto* field = qobject_cast<const QLineEdit*>(&part);
        field != nullptr && qobject_cast<const QComboBox*>(field->parentWidget()) != nullptr)
        return holdsItsWords(*field) ? QString{} : QStringLiteral("its words do not fit");
    QSize least = part.minimumSizeHint();
    // Lanes may be squeezed by so much before their digits are cut.
    constexpr int squeezed = 32;
    if (qobject_cast<const app::desktop::LaneCard*>(&part) != nullptr
        || qobject_cast<const app::desktop::LanesGrid*>(&part) != nullptr)
        least.rheight() -= squeezed;
    if (part.width() + unseen < least.width() || part.height() + unseen < least.height())
        return QStringLiteral("smaller than its least");
    const QRect room = part.parentWidget()->rect();
    if (isScrolled(part))
        return part.width() > room.width() ? QStringLiteral("wider than what can be seen") : QString{};
    return room.adjusted(-unseen, -unseen, unseen, unseen).contains(part.geometry())
        ? QString{}
        : QStringLiteral("sticks out");
}

/// What of its parent a part takes; one with a shape of its own takes no more than that.
QRegion taken(const QWidget& part)
{
    return part.mask().isEmpty() ? QRegion{part.geometry()} : part.mask().translated(part.pos());
}

/// Shapes that share an edge are rounded to pixels each for itself.
bool overlap(const QWidget& one, const QWidget& other)
{
    if (one.mask().isEmpty() && other.mask().isEmpty())
        return one.geometry().intersects(other.geometry());
    constexpr int rounding = 4;
    const QRegion both = taken(one).intersected(taken(other));
    return std::any_of(both.begin(), both.end(), [](const QRect& rect) { return rect.width() > rounding; });
}

void addCovered(const QWidget& window, const QWidget& part, QStringList& found)
{
    for (const QObject* child : part.parentWidget()->children()) {
        const auto* other = qobject_cast<const QWidget*>(child);
        if (other == nullptr || other >= &part || !isOurs(*other, window))
            continue;
        if (overlap(*other, part))
            found << nameOf(part) + QStringLiteral(" and ") + nameOf(*other) + QStringLiteral(" overlap");
    }
}

}  // namespace

QStringList cutIn(const QWidget& window)
{
    QStringList found;
    for (const QWidget* part : window.findChildren<QWidget*>()) {
        if (!isOurs(*part, window) || part->visibleRegion().isEmpty())
            continue;
        for (const QString& fault : {wordsCut(*part), placeCut(*part)})
            if (!fault.isEmpty())
                found << nameOf(*part) + QStringLiteral(": ") + fault
                        + QStringLiteral(" (%1 x %2, wants %3 x %4)")
                              .arg(part->width())
                              .arg(part->height())
                              .arg(part->sizeHint().width())
                              .arg(part->sizeHint().height());
        addCovered(window, *part, found);
    }
    return found;
}

}  // namespace sizes
