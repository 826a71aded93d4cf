#include "app/desktop/look/head_drawing.h"
#include "app/desktop/look/metrics.h"
#include "tests/app/desktop/rig.h"

#include <QAccessible>
#include <QAction>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

using namespace app::desktop;
using core::service::Place;
using core::service::Section;
using core::service::Stretch;

namespace {

/// Where zones are on the head, in Set-up.
class OnTheHead : public testing::Test {
protected:
    OnTheHead()
    {
        rig.window->document().replace(rig::Rig::service(), {});
        auto* parts = rig.find<QTabWidget>("parts");
        parts->setCurrentWidget(rig.find<QWidget>("headPanel"));
        QTest::qWait(50);
    }

    std::vector<QPushButton*> places(const char* where) const
    {
        std::vector<QPushButton*> found;
        for (QPushButton* button : drawing()->findChildren<QPushButton*>())
            if (button->isVisible() && button->accessibleName().startsWith(QLatin1String{where}))
                found.push_back(button);
        return found;
    }

    QPushButton* place(const char* where) const
    {
        const auto found = places(where);
        EXPECT_FALSE(found.empty()) << where;
        return found.empty() ? nullptr : found.front();
    }

    /// As a hand with a mouse does: to the middle of the shape.
    void press(const char* where) const
    {
        const QPushButton* button = place(where);
        ASSERT_NE(button, nullptr);
        const QPoint middle = button->mapTo(rig.window.get(), middleOf(*button));
        QTest::mouseClick(rig.window->childAt(middle), Qt::LeftButton, {},
                          rig.window->childAt(middle)->mapFrom(rig.window.get(), middle));
    }

    /// A point inside the shape, nearest to the middle of its rectangle.
    static QPoint middleOf(const QPushButton& button)
    {
        const QPoint centre = button.rect().center();
        QPoint best = centre;
        int least = -1;
        for (int x = 0; x < button.width(); x += 3)
            for (int y = 0; y < button.height(); y += 3) {
                const int off = (QPoint{x, y} - centre).manhattanLength();
                if (button.mask().contains(QPoint{x, y}) && (least < 0 || off < least)) {
                    best = {x, y};
                    least = off;
                }
            }
        return best;
    }

    HeadDrawing* drawing() const { return rig.find<HeadDrawing>("headDrawing"); }
    const std::vector<Place>& where(std::size_t zone) const
    {
        return rig.window->document().service().coats[0].zones[zone].where;
    }

    static constexpr Place crownRoots{Section::Crown, Stretch::Roots};

    rig::Rig rig;
};

TEST_F(OnTheHead, NamesEveryPlaceOfAHeadFromTheSideAndFromBehind)
{
    for (const char* section : {"Front hairline", "Crown", "Sides", "Nape"})
        for (const char* stretch : {"roots", "mids", "ends"}) {
            const std::string name = std::string{section} + ", " + stretch + ": no zone";
            EXPECT_GE(places(name.c_str()).size(), 1u) << name;
        }
    EXPECT_EQ(places("Front hairline").size(), 3u) << "seen from the side alone";
    EXPECT_EQ(places("Crown").size(), 6u);
    EXPECT_EQ(places("Sides").size(), 9u) << "both of them from behind";
}

TEST_F(OnTheHead, GivesAPlaceToTheChosenZoneAndTakesItBack)
{
    press("Crown, roots");
    EXPECT_EQ(where(0), std::vector{crownRoots});
    EXPECT_EQ(places("Crown, roots: Root").size(), 2u) << "on both sides of the drawing";
    EXPECT_EQ(rig.find<QAction>("undo")->text(), QStringLiteral("Undo where Root is"));

    press("Crown, roots");
    EXPECT_TRUE(where(0).empty());
    rig.find<QAction>("undo")->trigger();
    EXPECT_EQ(where(0), std::vector{crownRoots});
}

TEST_F(OnTheHead, MovesAPlaceFromOneZoneToAnother)
{
    press("Crown, roots");
    QTest::mouseClick(rig.find<QPushButton>("zoneOnHead2"), Qt::LeftButton);
    press("Crown, roots");
    EXPECT_TRUE(where(0).empty());
    EXPECT_EQ(where(1), std::vector{crownRoots});
    EXPECT_EQ(rig.find<QTableView>("zones")->currentIndex().row(), 1) << "the table follows";
}

TEST_F(OnTheHead, ChoosesTheZoneThatIsChosenInTheTable)
{
    auto* table = rig.find<QTableView>("zones");
    table->setCurrentIndex(table->model()->index(1, 2));
    EXPECT_TRUE(rig.find<QPushButton>("zoneOnHead2")->isChecked());
    EXPECT_FALSE(rig.find<QPushButton>("zoneOnHead1")->isChecked());
}

TEST_F(OnTheHead, IsWorkedWithTheKeyboardAlone)
{
    place("Crown, roots")->setFocus(Qt::TabFocusReason);
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Down);
    EXPECT_EQ(rig.window->focusWidget(), place("Crown, mids"));
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Down);
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Space);
    EXPECT_EQ(where(0), (std::vector{Place{Section::Crown, Stretch::Ends}}));
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Down);
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
    EXPECT_EQ(where(0).size(), 2u);
    EXPECT_EQ(where(0).back(), (Place{Section::Nape, Stretch::Roots}));
}

TEST_F(OnTheHead, IsReadAndPressedByAScreenReader)
{
    QAccessibleInterface* read = QAccessible::queryAccessibleInterface(place("Nape, ends"));
    ASSERT_NE(read, nullptr);
    EXPECT_EQ(read->role(), QAccessible::Button);
    EXPECT_EQ(read->text(QAccessible::Name), QStringLiteral("Nape, ends: no zone"));
    EXPECT_EQ(read->text(QAccessible::Description), QStringLiteral("Press to give it to Root"));
    ASSERT_NE(read->actionInterface(), nullptr);
    read->actionInterface()->doAction(read->actionInterface()->actionNames().front());
    rig::Rig::wait(
        [this] { return !where(0).empty(); });  // A button that is pressed from outside is seen to go down.
    EXPECT_EQ(read->text(QAccessible::Name), QStringLiteral("Nape, ends: Root"));
    EXPECT_EQ(read->text(QAccessible::Description), QStringLiteral("Press to take it from Root"));
}

TEST_F(OnTheHead, ShowsPiecesOfWhatIsMadeOfThem)
{
    rig.window->document().edit(QStringLiteral("wefts"),
                                [](auto& service) { service.head.kind = core::service::HeadKind::Wefts; });
    QTest::qWait(20);
    EXPECT_EQ(places("Piece 4").size(), 3u);
    EXPECT_TRUE(places("Crown").empty());
    press("Piece 2, ends");
    EXPECT_EQ(where(0), (std::vector{Place{Section::PieceTwo, Stretch::Ends}}));
}

TEST_F(OnTheHead, HasPlacesThatAFingerFinds)
{
    for (const auto kind : {core::service::HeadKind::Person, core::service::HeadKind::Wefts}) {
        rig.window->document().edit(QStringLiteral("kind"),
                                    [kind](auto& service) { service.head.kind = kind; });
        QTest::qWait(20);
        for (const QPushButton* button : drawing()->findChildren<QPushButton*>())
            if (button->isVisible()) {
                EXPECT_GE(button->width(), metrics::target) << button->accessibleName().toStdString();
                EXPECT_GE(button->height(), metrics::target) << button->accessibleName().toStdString();
            }
    }
}

// Colour alone would not do: the same zone in the same place, its name and number left out.
TEST_F(OnTheHead, DrawsZonesInPatternsOfTheirOwn)
{
    const auto drawn = [this](std::size_t zone) {
        QImage image{40, 40, QImage::Format_RGB32};
        image.fill(Qt::white);
        QPainter painter{&image};
        QPainterPath shape;
        shape.addRect(0, 0, 40, 40);
        QPainterPath fibre{{20, 0}};
        fibre.lineTo(20, 40);
        HeadDrawing::paintPattern(painter, shape, {fibre}, zone, *rig.theme);
        painter.end();
        int changes = 0;
        for (int y = 1; y < 40; ++y)
            changes += image.pixel(20, y) != image.pixel(20, y - 1) ? 1 : 0;
        return changes;
    };
    EXPECT_LE(drawn(0), 2) << "unbroken";
    EXPECT_GT(drawn(1), drawn(0));
    EXPECT_NE(drawn(2), drawn(1));
}

}  // namespace
