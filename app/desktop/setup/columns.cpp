#include "app/desktop/setup/columns.h"

#include "app/desktop/setup/column_makers.h"
#include "app/desktop/setup/zone_columns.h"

#include <QCoreApplication>

#include <algorithm>

namespace app::desktop {
namespace {

using core::service::Bowl;
using core::service::Coat;
using core::service::Hands;
using core::service::RinseGroup;
using edits::Part;

struct ColumnsText {
    Q_DECLARE_TR_FUNCTIONS(Columns)
};

std::vector<Column> bowlColumns()
{
    return {
        makers::text<Bowl>(ColumnsText::tr("Bowl"), ColumnsText::tr("What the mixture is called"), "name",
                           &Bowl::name),
        makers::length<Bowl>(ColumnsText::tr("Mixing"),
                             ColumnsText::tr("Minutes of mixing; 0 where it needs no planning"), "mix",
                             [](Bowl& bowl) -> core::measure::Seconds& { return bowl.mix; }),
        makers::optionalLength<Bowl>(
            ColumnsText::tr("Pot life"),
            ColumnsText::tr("Minutes a mixture may be used after mixing, from the leaflet"), "pot_life",
            &Bowl::potLife),
        makers::text<Bowl>(ColumnsText::tr("What goes in"),
                           ColumnsText::tr("In your own words; shown when it is mixed"), "note", &Bowl::note),
    };
}

/// The day that is worked on.
core::measure::Instant baseOf(const edits::Service& service, const Moments& moments)
{
    return service.readyBy.value_or(moments.now());
}

QString momentHelp()
{
    return ColumnsText::tr("Type a clock time, such as 14:30, or 2026-11-28 14:30 for another day.");
}

template <typename Item>
Column moment(QString title, QString tip, std::string key, std::optional<core::measure::Instant> Item::*field,
              const Moments& moments)
{
    const auto read = [=](const edits::Service& service, const CellPlace& at) {
        const auto& instant = makers::item<Item>(service, at).*field;
        return instant ? moments.text(*instant, service.timeZone, baseOf(service, moments)) : QString{};
    };
    const auto write = [=](edits::Service& service, const CellPlace& at, const QString& entry) {
        const auto instant = moments.of(entry, service.timeZone, baseOf(service, moments));
        if (!instant && !entry.trimmed().isEmpty())
            return false;
        makers::item<Item>(service, at).*field = instant;
        return true;
    };
    return {std::move(title), std::move(tip), std::move(key), read, write, {}, momentHelp()};
}

std::vector<Column> allZoneColumns(const Moments& moments)
{
    std::vector<Column> columns = zoneColumns();
    columns.push_back(
        moment(ColumnsText::tr("Not before"),
               ColumnsText::tr("The clock time that applying it is not to start before, as it can be "
                               "pulled and kept on the strand; empty for whenever is best"),
               "not_before", &core::service::Zone::notBefore, moments));
    columns.back().group = columns[columns.size() - 2].group;  // As what it is to come after.
    return columns;
}

std::vector<Column> groupColumns(const Moments& moments)
{
    return {
        makers::text<RinseGroup>(ColumnsText::tr("Rinse group"),
                                 ColumnsText::tr("Zones that go under the water together"), "name",
                                 &RinseGroup::name),
        makers::length<RinseGroup>(ColumnsText::tr("Rinsing"), ColumnsText::tr("Minutes at the basin"),
                                   "length",
                                   [](RinseGroup& group) -> core::measure::Seconds& { return group.rinse; }),
        moment(ColumnsText::tr("Water from"),
               ColumnsText::tr("The earliest clock time of its water, where the basin is booked"),
               "water.earliest", &RinseGroup::waterEarliest, moments),
        moment(ColumnsText::tr("Water until"),
               ColumnsText::tr("The latest clock time of its water, where the basin is booked"),
               "water.latest", &RinseGroup::waterLatest, moments),
    };
}

std::vector<Column> coatColumns()
{
    return {
        makers::text<Coat>(ColumnsText::tr("Coat"), ColumnsText::tr("What this pass is called"), "name",
                           &Coat::name),
        makers::length<Coat>(ColumnsText::tr("Drying"), ColumnsText::tr("Minutes of drying by hand"),
                             "dry.hands",
                             [](Coat& coat) -> core::measure::Seconds& { return coat.dryHands; }),
        makers::length<Coat>(ColumnsText::tr("Drying alone"),
                             ColumnsText::tr("Minutes that it dries on by itself"), "dry.unattended",
                             [](Coat& coat) -> core::measure::Seconds& { return coat.dryUnattended; }),
        makers::length<Coat>(ColumnsText::tr("Judging"), ColumnsText::tr("Minutes to look at the dry result"),
                             "assess", [](Coat& coat) -> core::measure::Seconds& { return coat.assess; }),
        makers::optionalLength<Coat>(ColumnsText::tr("Least gap"),
                                     ColumnsText::tr("Fewest minutes before the next coat"), "gap.least",
                                     &Coat::gapLeast),
        makers::optionalLength<Coat>(ColumnsText::tr("Most gap"),
                                     ColumnsText::tr("Most minutes before the next coat"), "gap.most",
                                     &Coat::gapMost),
    };
}

Column awayColumn(const Moments& moments)
{
    const auto read = [moments](const edits::Service& service, const CellPlace& at) {
        return moments.text(makers::item<Hands>(service, at).away, service.timeZone,
                            baseOf(service, moments));
    };
    const auto write = [moments](edits::Service& service, const CellPlace& at, const QString& entry) {
        const auto spans = moments.spansOf(entry, service.timeZone, baseOf(service, moments));
        if (spans)
            makers::item<Hands>(service, at).away = *spans;
        return spans.has_value();
    };
    return {ColumnsText::tr("Away"),
            ColumnsText::tr("When nothing can be asked of them, such as 13:00–13:30; empty for never"),
            "away",
            read,
            write,
            {},
            ColumnsText::tr("Type from when to when, such as 13:00–13:30, with commas between several.")};
}

/// In the order of `core::service::Work`.
QStringList workNames()
{
    return {ColumnsText::tr("mixing"),    ColumnsText::tr("applying"), ColumnsText::tr("looks"),
            ColumnsText::tr("late jobs"), ColumnsText::tr("rinsing"),  ColumnsText::tr("drying"),
            ColumnsText::tr("judging")};
}

/// No kinds at all means every kind.
Column kindsColumn()
{
    const auto read = [](const edits::Service& service, const CellPlace& at) {
        QStringList names;
        for (const core::service::Work work : makers::item<Hands>(service, at).kinds)
            names << workNames()[static_cast<qsizetype>(work)];
        return names.isEmpty() ? ColumnsText::tr("everything") : names.join(QStringLiteral(", "));
    };
    const auto write = [](edits::Service& service, const CellPlace& at, const QString& entry) {
        std::vector<core::service::Work> kinds;
        const bool everything = entry.trimmed().isEmpty() || entry.trimmed() == ColumnsText::tr("everything");
        for (const QString& part : entry.split(QLatin1Char{','}, Qt::SkipEmptyParts)) {
            const auto place = workNames().indexOf(part.trimmed().toLower());
            if (place < 0 && !everything)
                return false;
            if (!everything)
                kinds.push_back(static_cast<core::service::Work>(place));
        }
        std::ranges::sort(kinds);
        kinds.erase(std::unique(kinds.begin(), kinds.end()), kinds.end());
        makers::item<Hands>(service, at).kinds = std::move(kinds);
        return true;
    };
    return {ColumnsText::tr("Does"),
            ColumnsText::tr("What they are asked to do; empty for everything"),
            "does",
            read,
            write,
            {},
            ColumnsText::tr("Name, with commas between them: %1. Empty for everything.")
                .arg(workNames().join(QStringLiteral(", ")))};
}

std::vector<Column> handsColumns(const Moments& moments)
{
    return {makers::text<Hands>(ColumnsText::tr("Pair of hands"), ColumnsText::tr("Who works"), "name",
                                &Hands::name),
            awayColumn(moments), kindsColumn()};
}

}  // namespace

std::vector<Column> columnsOf(Part part, const Moments& moments)
{
    switch (part) {
    case Part::Zones: return allZoneColumns(moments);
    case Part::Bowls: return bowlColumns();
    case Part::Groups: return groupColumns(moments);
    case Part::Coats: return coatColumns();
    case Part::Hands: return handsColumns(moments);
    }
    return {};
}

std::string placeOf(Part part, const CellPlace& place)
{
    const std::string row = '[' + std::to_string(place.row) + ']';
    if (part == Part::Hands)
        return "crew.hands" + row;
    if (part == Part::Coats)
        return "coats" + row;
    const std::string coat = "coats[" + std::to_string(place.coat) + "].";
    if (part == Part::Zones)
        return coat + "zones" + row;
    return coat + (part == Part::Bowls ? "bowls" : "rinse") + row;
}

QString entryHelp(const Column& column)
{
    if (column.choices)
        return ColumnsText::tr("Choose one of the list.");
    if (!column.help.isEmpty())
        return column.help;
    return ColumnsText::tr("Type minutes, such as 12, 12.5 or 12:30.");
}

}  // namespace app::desktop
