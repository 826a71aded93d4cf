#include "app/desktop/setup/part_table.h"
#include "tests/app/desktop/rig.h"

#include <QAccessible>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

using namespace app::desktop;

namespace {

/// The table of zones, as whoever has it read aloud is given it.
class TableReadAloud : public testing::Test {
protected:
    TableReadAloud()
    {
        rig.window->document().replace(rig::Rig::service(), {});
        EXPECT_TRUE(table() != nullptr && table()->tableInterface() != nullptr);
    }

    QTableView* view() const { return rig.find<QTableView>("zones"); }
    QAccessibleInterface* table() const { return QAccessible::queryAccessibleInterface(view()); }

    /// By its name, as a screen reader says it.
    QAccessibleInterface* cell(const char* name) const
    {
        for (int place = 0; place < table()->childCount(); ++place)
            if (QAccessibleInterface* each = table()->child(place); each != nullptr
                && each->role() == QAccessible::Cell && each->text(QAccessible::Name) == QLatin1String{name})
                return each;
        return nullptr;
    }
    static QString read(QAccessibleInterface* cell)
    {
        return cell->textInterface()->text(0, cell->textInterface()->characterCount());
    }
    static void write(QAccessibleInterface* cell, const QString& text)
    {
        cell->editableTextInterface()->replaceText(0, cell->textInterface()->characterCount(), text);
    }
    const core::service::Zone& root() const { return rig.window->document().service().coats[0].zones[0]; }

    rig::Rig rig;
};

TEST_F(TableReadAloud, NamesEachCellByItselfAndTellsWhatStandsInIt)
{
    ASSERT_NE(cell("Zone 1"), nullptr);
    EXPECT_EQ(read(cell("Zone 1")), QStringLiteral("Root"));
    ASSERT_NE(cell("Target of Ends"), nullptr);
    EXPECT_EQ(read(cell("Target of Ends")), QStringLiteral("10"));
    EXPECT_TRUE(
        cell("Target of Ends")->text(QAccessible::Description).contains(QStringLiteral("development")));
    EXPECT_EQ(table()->tableInterface()->rowCount(), 2);
    EXPECT_EQ(cell("Target of Ends")->tableCellInterface()->rowIndex(), 1);
    EXPECT_EQ(
        cell("Target of Ends")->tableCellInterface()->columnHeaderCells().at(0)->text(QAccessible::Name),
        QStringLiteral("Target"));
}

TEST_F(TableReadAloud, IsWrittenInWithoutAKeyboardAndUndoneLikeAnyChange)
{
    QAccessibleInterface* target = cell("Target of Root");
    ASSERT_NE(target, nullptr);
    ASSERT_NE(target->editableTextInterface(), nullptr);
    EXPECT_TRUE(target->state().editable);
    write(target, QStringLiteral("22"));
    EXPECT_EQ(root().develop.target, std::chrono::minutes{22});
    EXPECT_EQ(read(target), QStringLiteral("22"));
    EXPECT_EQ(rig.window->document().undoStack().undoText(), QStringLiteral("Target of Root to 22"));
    write(cell("Zone 1"), QStringLiteral("Crown"));
    EXPECT_NE(cell("Target of Crown"), nullptr);

    rig.window->document().undoStack().undo();
    rig.window->document().undoStack().undo();
    EXPECT_EQ(root().develop.target, std::chrono::minutes{20});
}

TEST_F(TableReadAloud, RefusesWhatMakesNoSenseAndSaysWhatIsWrong)
{
    QAccessibleInterface* target = cell("Target of Root");
    ASSERT_NE(target, nullptr);
    write(target, QStringLiteral("soon"));
    EXPECT_EQ(read(target), QStringLiteral("20"));
    EXPECT_TRUE(rig.find<QLabel>("zonesWrong")->text().contains(QStringLiteral("'soon' was not understood")));
    write(target, QStringLiteral("60"));
    ASSERT_FALSE(rig.window->document().problems().empty());
    int wrong = 0;
    for (int column = 0; column < view()->model()->columnCount(); ++column) {
        const QModelIndex place = view()->model()->index(0, column);
        if (!place.data(PartTable::WrongRole).toBool())
            continue;
        ++wrong;
        EXPECT_TRUE(table()
                        ->tableInterface()
                        ->cellAt(0, column)
                        ->text(QAccessible::Description)
                        .contains(QStringLiteral("60")));
    }
    EXPECT_GT(wrong, 0);
}

TEST_F(TableReadAloud, OpensACellAsEnterDoes)
{
    QAccessibleInterface* target = cell("Target of Ends");
    ASSERT_NE(target, nullptr);
    target->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    auto* editor = view()->findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    EXPECT_EQ(editor->text(), QStringLiteral("10"));
    EXPECT_EQ(editor->accessibleName(), QStringLiteral("Target"));
    EXPECT_TRUE(target->state().selected);
    EXPECT_EQ(table()->focusChild(), target);
}

TEST_F(TableReadAloud, SaysWhichTableItIs)
{
    EXPECT_EQ(table()->text(QAccessible::Name), QStringLiteral("Zones of coat 1, Coat"));
    rig.window->document().edit(QStringLiteral("another name"),
                                [](auto& service) { service.coats[0].name = "Toner"; });
    EXPECT_EQ(table()->text(QAccessible::Name), QStringLiteral("Zones of coat 1, Toner"));
    QStringList names;
    for (const auto* each : rig.window->findChildren<QTableView*>())
        names << each->accessibleName();
    names.removeDuplicates();
    EXPECT_EQ(names.size(), 5) << names.join(QLatin1Char{';'}).toStdString();
    EXPECT_TRUE(names.contains(QStringLiteral("Rinse groups of coat 1, Toner")));
    EXPECT_TRUE(names.contains(QStringLiteral("Pairs of hands")));
}

TEST_F(TableReadAloud, TellsOfAHeadingWhatStandsAboveIt)
{
    const auto heading = [this](const char* name) {
        QStringList said;
        for (int place = 0; place < table()->childCount(); ++place)
            if (QAccessibleInterface* each = table()->child(place); each->role() == QAccessible::ColumnHeader
                && each->text(QAccessible::Name) == QLatin1String{name})
                said << each->text(QAccessible::Description);
        return said.join(QLatin1Char{';'});
    };
    EXPECT_EQ(heading("Least"),
              QStringLiteral("Development, min: Fewest minutes of development, from the leaflet"));
    EXPECT_TRUE(heading("Quickest").startsWith(QStringLiteral("Applying, min: ")));
    EXPECT_EQ(heading("Zone"), QStringLiteral("What this part of the head is called"));
}

// The view counts headings when it tells which cell has the keyboard.
TEST_F(TableReadAloud, CountsItsPartsAsTheViewDoes)
{
    for (int place = 0; place < table()->childCount(); ++place)
        EXPECT_EQ(table()->indexOfChild(table()->child(place)), place);
    const int across = view()->model()->columnCount() + 1;
    EXPECT_EQ(table()->indexOfChild(cell("Zone 1")), across + 1);
    EXPECT_EQ(table()->child(0)->text(QAccessible::Name), QString{}) << "the corner";
    EXPECT_EQ(table()->child(1)->role(), QAccessible::ColumnHeader);
    EXPECT_EQ(table()->child(1)->text(QAccessible::Name), QStringLiteral("Zone"));
}

TEST_F(TableReadAloud, FollowsRowsThatComeAndGo)
{
    QAccessibleInterface* last = cell("Target of Ends");
    ASSERT_NE(last, nullptr);
    rig.window->document().edit(QStringLiteral("one less"),
                                [](auto& service) { service.coats[0].zones.pop_back(); });
    EXPECT_FALSE(last->isValid());
    EXPECT_EQ(last->text(QAccessible::Name), QString{});
    rig.window->document().undoStack().undo();
    EXPECT_TRUE(last->isValid());
    EXPECT_EQ(cell("Target of Ends"), last);
}

}  // namespace
