#include "app/desktop/setup/part_table.h"

#include "tests/app/desktop/rig.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

using namespace app::desktop;
using edits::Part;

namespace {

class ZoneTable : public testing::Test {
protected:
    ZoneTable() { document.replace(rig::Rig::service(), {}); }

    /// The cell of row `row` in the column with this title.
    QModelIndex cell(int row, const char* title) const
    {
        for (int column = 0; column < table.columnCount(); ++column)
            if (table.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString() == QLatin1String{title})
                return table.index(row, column);
        return {};
    }

    QString text(int row, const char* title) const { return cell(row, title).data().toString(); }
    bool type(int row, const char* title, const char* entry)
    {
        return table.setData(cell(row, title), QString::fromLatin1(entry));
    }

    const core::service::Zone& zone(std::size_t row) const { return document.service().coats[0].zones[row]; }

    ServiceDocument document;
    PartTable table{document, Part::Zones};
};

TEST_F(ZoneTable, ShowsMinutes)
{
    EXPECT_EQ(text(0, "Zone"), QStringLiteral("Root"));
    EXPECT_EQ(text(0, "Usual"), QStringLiteral("5"));
    EXPECT_EQ(text(1, "First look"), QStringLiteral("5"));
    EXPECT_EQ(text(0, "First look"), QString{});
}

TEST_F(ZoneTable, ChangesTheServiceAsItIsTyped)
{
    EXPECT_TRUE(type(0, "Most", "27:30"));
    EXPECT_EQ(zone(0).develop.most, core::measure::Seconds{1650});
    EXPECT_EQ(text(0, "Most"), QStringLiteral("27:30"));
}

TEST_F(ZoneTable, LeavesACellAsItWasWhenTheEntryMakesNoSense)
{
    QSignalSpy refused{&table, &PartTable::refused};

    EXPECT_FALSE(type(0, "Most", "soon"));

    EXPECT_EQ(zone(0).develop.most, core::measure::Seconds{1500});
    ASSERT_EQ(refused.count(), 1);
    EXPECT_TRUE(refused[0][0].toString().contains(QStringLiteral("such as 12")));
    EXPECT_FALSE(document.isChanged());
}

TEST_F(ZoneTable, SaysWhatIsWrongInTheCellThatIsWrong)
{
    type(0, "Most", "12");  // Target is 20.

    EXPECT_TRUE(cell(0, "Most").data(PartTable::WrongRole).toBool());
    EXPECT_FALSE(table.wrongAt(cell(0, "Most")).isEmpty());
    EXPECT_FALSE(cell(1, "Most").data(PartTable::WrongRole).toBool());
    EXPECT_FALSE(cell(0, "Usual").data(PartTable::WrongRole).toBool());
}

TEST_F(ZoneTable, FindsTheCellOfEveryPlaceOfAZone)
{
    EXPECT_EQ(table.cellOf("coats[0].zones[1].develop.target"), cell(1, "Target"));
    EXPECT_EQ(table.cellOf("coats[0].zones[1].late[0].before"), cell(1, "Late jobs"));
    EXPECT_EQ(table.cellOf("coats[0].zones[1].looks.tolerance"), cell(1, "First look"));
    EXPECT_EQ(table.cellOf("coats[0].zones[1]"), table.index(1, 0));
    EXPECT_FALSE(table.cellOf("coats[1].zones[1].name").isValid());
    EXPECT_FALSE(table.cellOf("coats[0].zones[11].name").isValid());
    EXPECT_FALSE(table.cellOf("coats[0].bowls[0].name").isValid());
}

TEST_F(ZoneTable, SaysWhatAnUndoUndoes)
{
    type(0, "Target", "22");

    EXPECT_EQ(document.undoStack().undoText(), QStringLiteral("Target of Root to 22"));
    document.undoStack().undo();
    EXPECT_EQ(zone(0).develop.target, core::measure::Seconds{1200});
    document.undoStack().redo();
    EXPECT_EQ(zone(0).develop.target, core::measure::Seconds{1320});
}

TEST_F(ZoneTable, MovesLooksAlongWithATargetTheyWentOnUntil)
{
    type(1, "Target", "12");
    EXPECT_EQ(zone(1).looks->until, core::measure::Seconds{720});
}

TEST_F(ZoneTable, MakesAndTakesOutLooks)
{
    type(0, "First look", "10");
    ASSERT_TRUE(zone(0).looks);
    EXPECT_TRUE(document.problems().empty());
    type(0, "Then every", "3");
    EXPECT_EQ(zone(0).looks->every, core::measure::Seconds{180});
    EXPECT_EQ(zone(0).looks->tolerance, core::measure::Seconds{90});  // Half of every.
    type(0, "First look", "");
    EXPECT_FALSE(zone(0).looks);
}

TEST_F(ZoneTable, NamesTheZonesThatComeBefore)
{
    EXPECT_TRUE(type(1, "After", "Root"));
    ASSERT_EQ(zone(1).after.size(), 1u);
    EXPECT_EQ(text(1, "After"), QStringLiteral("Root"));
    EXPECT_FALSE(type(1, "After", "Fringe"));
    EXPECT_TRUE(type(1, "After", ""));
    EXPECT_TRUE(zone(1).after.empty());
}

TEST_F(ZoneTable, OffersChoicesAndTakesOnlyThose)
{
    EXPECT_EQ(cell(0, "Bowl").data(PartTable::ChoicesRole).toStringList(),
              QStringList{QStringLiteral("Colour")});
    EXPECT_FALSE(type(0, "Bowl", "Another"));
    EXPECT_TRUE(type(0, "Alone", "yes"));
    EXPECT_TRUE(zone(0).alone);
}

TEST(PartTables, RoundTripEveryCellThatCanBeTyped)
{
    ServiceDocument document;
    document.replace(rig::Rig::service(), {});
    for (const Part part : {Part::Zones, Part::Bowls, Part::Groups, Part::Coats, Part::Hands}) {
        PartTable table{document, part};
        const auto before = document.service();
        for (int row = 0; row < table.rowCount(); ++row)
            for (int column = 0; column < table.columnCount(); ++column) {
                const QModelIndex cell = table.index(row, column);
                if (cell.flags().testFlag(Qt::ItemIsEditable) && !cell.data().toString().isEmpty()) {
                    EXPECT_TRUE(table.setData(cell, cell.data()))
                        << table.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().toStdString();
                }
            }
        EXPECT_EQ(document.service(), before);
        EXPECT_FALSE(document.isChanged());
    }
}

}  // namespace
