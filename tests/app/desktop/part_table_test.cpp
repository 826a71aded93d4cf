#include "app/desktop/setup/part_table.h"

#include "tests/app/desktop/rig.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

#include <chrono>

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

TEST_F(ZoneTable, TakesLateJobsAsTheyAreSaid)
{
    using core::service::LateJob;
    constexpr auto minutes = [](int count) { return core::measure::Seconds{count * 60}; };
    EXPECT_TRUE(type(0, "Late jobs", "Emulsify 2, 5 before water"));
    ASSERT_EQ(zone(0).late, (std::vector{LateJob{"Emulsify", minutes(5), minutes(2)}}));
    EXPECT_EQ(text(0, "Late jobs"), QStringLiteral("Emulsify 2, 5 before water"));

    document.edit(QStringLiteral("a tolerance"),
                  [&](auto& service) { service.coats[0].zones[0].late[0].tolerance = minutes(3); });
    EXPECT_TRUE(type(0, "Late jobs", "Draw through 1:30 min, 8; Emulsify 2, 4"));
    ASSERT_EQ(zone(0).late.size(), 2u);
    EXPECT_EQ(zone(0).late[0], (LateJob{"Draw through", minutes(8), core::measure::Seconds{90}}));
    EXPECT_EQ(zone(0).late[1], (LateJob{"Emulsify", minutes(4), minutes(2), minutes(3)}));

    EXPECT_FALSE(type(0, "Late jobs", "Emulsify"));
    EXPECT_EQ(zone(0).late.size(), 2u);
    EXPECT_TRUE(type(0, "Late jobs", ""));
    EXPECT_TRUE(zone(0).late.empty());
}

/// Tables with clock times: it is 09:00 UTC on 28 November 2026.
class ClockTables : public testing::Test {
protected:
    ClockTables() { document.replace(rig::Rig::service(), {}); }

    static core::measure::Instant at(int hour, int minute, int days = 0)
    {
        using namespace std::chrono;
        return sys_days{2026y / 11 / 28} + std::chrono::days{days} + hours{hour}
        + std::chrono::minutes{minute};
    }

    const core::service::Hands& hands() const { return document.service().crew.hands[0]; }
    const core::service::RinseGroup& group() const { return document.service().coats[0].groups[0]; }

    ServiceDocument document;
    Moments moments{std::make_shared<core::measure::UtcOnly>(), [] { return at(9, 0); }};
};

TEST_F(ClockTables, TakeTimesAway)
{
    PartTable table{document, Part::Hands, moments};
    const QModelIndex away = table.index(0, 1);
    EXPECT_TRUE(table.setData(away, QStringLiteral("15:00-15:10, 13:00 to 13:30")));
    EXPECT_EQ(hands().away,
              (std::vector<core::measure::Interval>{{at(13, 0), at(13, 30)}, {at(15, 0), at(15, 10)}}));
    EXPECT_EQ(away.data().toString(), QStringLiteral("13:00\u201313:30, 15:00\u201315:10"));
    EXPECT_TRUE(table.setData(away, away.data()));

    for (const char* nonsense : {"13:00", "14:00-13:00", "13:00-13:30, 13:10-13:40", "25:00-26:00", "soon"})
        EXPECT_FALSE(table.setData(away, QString::fromLatin1(nonsense))) << nonsense;
    EXPECT_EQ(hands().away.size(), 2u);
    EXPECT_TRUE(table.setData(away, QStringLiteral("2026-11-29 08:00-2026-11-29 09:00")));
    EXPECT_EQ(hands().away, (std::vector<core::measure::Interval>{{at(8, 0, 1), at(9, 0, 1)}}));
    EXPECT_EQ(away.data().toString(), QStringLiteral("2026-11-29 08:00\u20132026-11-29 09:00"));
    EXPECT_TRUE(table.setData(away, QString{}));
    EXPECT_TRUE(hands().away.empty());
}

TEST_F(ClockTables, TakeWhatHandsDo)
{
    using core::service::Work;
    PartTable table{document, Part::Hands, moments};
    const QModelIndex does = table.index(0, 2);
    EXPECT_EQ(does.data().toString(), QStringLiteral("everything"));
    EXPECT_TRUE(table.setData(does, QStringLiteral("Rinsing, mixing")));
    EXPECT_EQ(hands().kinds, (std::vector{Work::Mix, Work::Rinse}));
    EXPECT_EQ(does.data().toString(), QStringLiteral("mixing, rinsing"));
    EXPECT_FALSE(table.setData(does, QStringLiteral("dancing")));
    EXPECT_TRUE(table.setData(does, QStringLiteral("everything")));
    EXPECT_TRUE(hands().kinds.empty());
}

TEST_F(ClockTables, TakeBookedWater)
{
    document.edit(QStringLiteral("a promise"), [](auto& service) { service.readyBy = at(12, 0, 1); });
    PartTable table{document, Part::Groups, moments};
    EXPECT_TRUE(table.setData(table.index(0, 2), QStringLiteral("10:15")));
    EXPECT_EQ(group().waterEarliest, at(10, 15, 1));  // Of the day that it is promised for.
    EXPECT_TRUE(table.setData(table.index(0, 3), QStringLiteral("10:45")));
    EXPECT_EQ(group().waterLatest, at(10, 45, 1));
    EXPECT_EQ(table.index(0, 3).data().toString(), QStringLiteral("10:45"));
    EXPECT_FALSE(table.setData(table.index(0, 3), QStringLiteral("10.45")));
    EXPECT_TRUE(table.setData(table.index(0, 3), QString{}));
    EXPECT_FALSE(group().waterLatest);
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
