#include "app/desktop/setup/columns.h"

#include "app/desktop/setup/column_makers.h"
#include "app/desktop/setup/zone_columns.h"

#include <QCoreApplication>

namespace app::desktop {
namespace {

using core::service::Bowl;
using core::service::Coat;
using core::service::Hands;
using core::service::RinseGroup;
using edits::Part;

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Columns)
};

std::vector<Column> bowlColumns()
{
    return {
        makers::text<Bowl>(Text::tr("Bowl"), Text::tr("What the mixture is called"), "name", &Bowl::name),
        makers::length<Bowl>(Text::tr("Mixing"), Text::tr("Minutes of mixing; 0 where it needs no planning"),
                             "mix", [](Bowl& bowl) -> core::measure::Seconds& { return bowl.mix; }),
        makers::optionalLength<Bowl>(Text::tr("Pot life"),
                                     Text::tr("Minutes a mixture may be used after mixing, from the leaflet"),
                                     "pot_life", &Bowl::potLife),
        makers::text<Bowl>(Text::tr("What goes in"), Text::tr("In your own words; shown when it is mixed"),
                           "note", &Bowl::note),
    };
}

std::vector<Column> groupColumns()
{
    return {
        makers::text<RinseGroup>(Text::tr("Rinse group"), Text::tr("Zones that go under the water together"),
                                 "name", &RinseGroup::name),
        makers::length<RinseGroup>(Text::tr("Rinsing"), Text::tr("Minutes at the basin"), "length",
                                   [](RinseGroup& group) -> core::measure::Seconds& { return group.rinse; }),
    };
}

std::vector<Column> coatColumns()
{
    return {
        makers::text<Coat>(Text::tr("Coat"), Text::tr("What this pass is called"), "name", &Coat::name),
        makers::length<Coat>(Text::tr("Drying"), Text::tr("Minutes of drying by hand"), "dry.hands",
                             [](Coat& coat) -> core::measure::Seconds& { return coat.dryHands; }),
        makers::length<Coat>(Text::tr("Drying alone"), Text::tr("Minutes that it dries on by itself"),
                             "dry.unattended",
                             [](Coat& coat) -> core::measure::Seconds& { return coat.dryUnattended; }),
        makers::length<Coat>(Text::tr("Judging"), Text::tr("Minutes to look at the dry result"), "assess",
                             [](Coat& coat) -> core::measure::Seconds& { return coat.assess; }),
        makers::optionalLength<Coat>(Text::tr("Least gap"), Text::tr("Fewest minutes before the next coat"),
                                     "gap.least", &Coat::gapLeast),
        makers::optionalLength<Coat>(Text::tr("Most gap"), Text::tr("Most minutes before the next coat"),
                                     "gap.most", &Coat::gapMost),
    };
}

std::vector<Column> handsColumns()
{
    return {makers::text<Hands>(Text::tr("Pair of hands"), Text::tr("Who works"), "name", &Hands::name)};
}

}  // namespace

std::vector<Column> columnsOf(Part part)
{
    switch (part) {
    case Part::Zones: return zoneColumns();
    case Part::Bowls: return bowlColumns();
    case Part::Groups: return groupColumns();
    case Part::Coats: return coatColumns();
    case Part::Hands: return handsColumns();
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
        return Text::tr("Choose one of the list.");
    if (column.key == "after")
        return Text::tr("Name zones of this coat, with commas between them.");
    return Text::tr("Type minutes, such as 12, 12.5 or 12:30.");
}

}  // namespace app::desktop
