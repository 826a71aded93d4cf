#include "app/desktop/setup/edits.h"

#include <QCoreApplication>

#include <algorithm>
#include <string>

namespace app::desktop::edits {
namespace {

using core::measure::Seconds;
using core::service::After;
using core::service::Zone;

struct EditsText {
    Q_DECLARE_TR_FUNCTIONS(Edits)
};

/// What somebody may call otherwise afterwards.
std::string name(const QString& text)
{
    return text.toStdString();
}

constexpr Seconds minutes(int count)
{
    return Seconds{count * 60};
}

/// "Zone 3", or the next number that is free.
template <typename List>
std::string freeName(const List& list, const QString& word)
{
    for (std::size_t number = list.size() + 1;; ++number) {
        const std::string name = QStringLiteral("%1 %2").arg(word).arg(number).toStdString();
        if (std::ranges::none_of(list, [&](const auto& item) { return item.name == name; }))
            return name;
    }
}

Zone usualZone(std::string name)
{
    Zone zone;
    zone.name = std::move(name);
    zone.apply = {minutes(8), minutes(10), minutes(13)};
    zone.develop = {minutes(25), minutes(30), minutes(35)};
    return zone;
}

/// Every `after` of the coat, sent through `change`; false drops it.
template <typename Change>
void changeAfter(Coat& coat, Change change)
{
    for (Zone& zone : coat.zones)
        std::erase_if(zone.after, [&](After& after) { return !change(after); });
}

void removeZone(Coat& coat, std::size_t row)
{
    changeAfter(coat, [row](After& after) {
        if (after.zone == row)
            return false;
        after.zone -= after.zone > row ? 1 : 0;
        return true;
    });
    coat.zones.erase(coat.zones.begin() + static_cast<std::ptrdiff_t>(row));
}

void swapReference(std::size_t& reference, std::size_t row)
{
    if (reference == row)
        ++reference;
    else if (reference == row + 1)
        --reference;
}

template <typename List>
void eraseAt(List& list, std::size_t row)
{
    list.erase(list.begin() + static_cast<std::ptrdiff_t>(row));
}

void addCoat(Service& service)
{
    Coat coat = blankService().coats.front();
    coat.name = freeName(service.coats, EditsText::tr("Coat"));
    service.coats.push_back(std::move(coat));
}

/// A gap leads to a next coat, and the last one has none.
void endWithoutGap(Service& service)
{
    service.coats.back().gapLeast.reset();
    service.coats.back().gapMost.reset();
}

}  // namespace

std::size_t count(const Service& service, std::size_t coat, Part part)
{
    if (part == Part::Hands)
        return service.crew.hands.size();
    if (part == Part::Coats)
        return service.coats.size();
    if (coat >= service.coats.size())
        return 0;
    const Coat& found = service.coats[coat];
    if (part == Part::Zones)
        return found.zones.size();
    return part == Part::Bowls ? found.bowls.size() : found.groups.size();
}

void add(Service& service, std::size_t coat, Part part)
{
    if (part == Part::Coats)
        return addCoat(service);
    Coat& found = service.coats[coat];
    if (part == Part::Zones)
        found.zones.push_back(usualZone(freeName(found.zones, EditsText::tr("Zone"))));
    else if (part == Part::Bowls)
        found.bowls.push_back({freeName(found.bowls, EditsText::tr("Bowl")), minutes(3), minutes(45), {}});
    else if (part == Part::Groups)
        found.groups.push_back({freeName(found.groups, EditsText::tr("Rinse")), minutes(5), {}, {}});
    else
        service.crew.hands.push_back({freeName(service.crew.hands, EditsText::tr("Hands")), {}, {}});
}

bool mayRemove(const Service& service, std::size_t coat, Part part, std::size_t row)
{
    const std::size_t rows = count(service, coat, part);
    if (rows < 2 || row >= rows)
        return false;
    if (part == Part::Zones || part == Part::Coats || part == Part::Hands)
        return true;
    return std::ranges::none_of(service.coats[coat].zones, [&](const Zone& zone) {
        return (part == Part::Bowls ? zone.bowl : zone.group) == row;
    });
}

void remove(Service& service, std::size_t coat, Part part, std::size_t row)
{
    if (part == Part::Coats) {
        eraseAt(service.coats, row);
        return endWithoutGap(service);
    }
    Coat& found = service.coats[coat];
    if (part == Part::Zones)
        return removeZone(found, row);
    if (part == Part::Hands)
        return eraseAt(service.crew.hands, row);
    for (Zone& zone : found.zones) {
        std::size_t& reference = part == Part::Bowls ? zone.bowl : zone.group;
        reference -= reference > row ? 1 : 0;
    }
    if (part == Part::Bowls)
        eraseAt(found.bowls, row);
    else
        eraseAt(found.groups, row);
}

void swapDown(Service& service, std::size_t coat, Part part, std::size_t row)
{
    if (row + 1 >= count(service, coat, part))
        return;
    if (part == Part::Coats) {
        std::swap(service.coats[row], service.coats[row + 1]);
        return endWithoutGap(service);
    }
    Coat& found = service.coats[coat];
    if (part == Part::Hands)
        return std::swap(service.crew.hands[row], service.crew.hands[row + 1]);
    if (part == Part::Zones) {
        changeAfter(found, [row](After& after) {
            swapReference(after.zone, row);
            return true;
        });
        return std::swap(found.zones[row], found.zones[row + 1]);
    }
    for (Zone& zone : found.zones)
        swapReference(part == Part::Bowls ? zone.bowl : zone.group, row);
    if (part == Part::Bowls)
        std::swap(found.bowls[row], found.bowls[row + 1]);
    else
        std::swap(found.groups[row], found.groups[row + 1]);
}

Service blankService()
{
    Service service;
    service.name = name(EditsText::tr("New service"));
    service.head.kind =
        core::service::HeadKind::Person;  // So that the cautions come up unless somebody says otherwise.
    service.crew.hands.push_back({name(EditsText::tr("Stylist")), {}, {}});
    Coat coat;
    coat.name = name(EditsText::tr("Coat 1"));
    coat.bowls.push_back({name(EditsText::tr("Bowl 1")), minutes(3), minutes(45), {}});
    coat.zones.push_back(usualZone(name(EditsText::tr("Root"))));
    coat.groups.push_back({name(EditsText::tr("All together")), minutes(5), {}, {}});
    service.coats.push_back(std::move(coat));
    return service;
}

}  // namespace app::desktop::edits
