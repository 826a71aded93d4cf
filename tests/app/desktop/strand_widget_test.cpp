#include "app/desktop/look/strand_widget.h"

#include "app/desktop/look/theme.h"
#include "app/session/time_zones.h"
#include "tests/app/desktop/strand_moments.h"

#include <QApplication>

#include <gtest/gtest.h>

using namespace app::desktop;
using app::view::Instant;
using strand_moments::atMinute;

namespace {

app::view::StrandPicture picture()
{
    app::view::Strand root;
    root.name = "Root";
    root.application = {atMinute(0), atMinute(10)};
    root.clockStart = atMinute(10);
    root.water = root.targetAt = atMinute(40);
    root.leastAt = atMinute(35);
    root.mostAt = atMinute(45);
    root.rinseEnd = atMinute(45);
    app::view::StrandPicture picture;
    picture.strands = {root, root};
    picture.strands[1].name = "Ends";
    picture.rinseLines = {{atMinute(40), "All"}};
    picture.hands = {{"Stylist", {}}};
    picture.reach = {atMinute(0), atMinute(50)};
    return picture;
}

class Strands : public testing::Test {
protected:
    Strands() { widget.resize(900, 300); }

    void show(const app::view::StrandPicture& shown)
    {
        widget.showPicture(shown, WallClock{std::make_shared<app::session::QtTimeZones>(), "UTC"},
                           [](const app::view::TaskId&) { return QStringLiteral("job"); });
    }

    Theme theme{*qApp};
    StrandWidget widget{theme};
};

TEST_F(Strands, EndInWaterAtTheRinseLine)
{
    show(picture());
    const StrandGeometry geometry{picture(), QRectF{widget.rect()}};
    const QImage image = widget.grab().toImage();
    const auto y = static_cast<int>(geometry.row(0).bottom() - 10);
    const auto line = static_cast<int>(geometry.x(atMinute(40)));

    EXPECT_EQ(image.pixelColor(line, y), theme.colours().water);
    EXPECT_EQ(image.pixelColor(line + 12, y), theme.colours().waterWash);
    EXPECT_EQ(image.pixelColor(line - 12, y), theme.colours().ground);
}

TEST_F(Strands, TellEverythingToThoseWhoListen)
{
    show(picture());
    // 1 800 000 000 is 15 January 2027, 08:00 UTC.
    EXPECT_TRUE(widget.accessibleDescription().contains(
        QStringLiteral("Root: applied from 08:00 to 08:10, water at 08:40, 30 min development.")));
}

TEST_F(Strands, AreDimmedWhileAnotherPlanIsMade)
{
    show(picture());
    const QImage fresh = widget.grab().toImage();
    widget.setStale(true);
    EXPECT_NE(fresh, widget.grab().toImage());
    show(picture());
    EXPECT_FALSE(widget.isStale());
}

TEST_F(Strands, MarkAWindowThatIsNotKeptByMoreThanColour)
{
    auto late = picture();
    late.strands[0].mostAt = atMinute(38);
    show(late);
    const QImage image = widget.grab().toImage();
    show(picture());
    EXPECT_NE(image, widget.grab().toImage());
    EXPECT_FALSE(late.strands[0].keepsItsWindow());
}

TEST(StrandGeometry, PutsMomentsInProportion)
{
    const StrandGeometry geometry{picture(), QRectF{0, 0, 900, 300}};
    const double left = geometry.x(atMinute(0));
    const double right = geometry.x(atMinute(50));

    EXPECT_DOUBLE_EQ(left, geometry.plot().left());
    EXPECT_DOUBLE_EQ(right, geometry.plot().right());
    EXPECT_DOUBLE_EQ(geometry.x(atMinute(25)), (left + right) / 2);
}

TEST(StrandGeometry, KeepsTheTextsOfTheAxisApart)
{
    for (const int minutes : {20, 90, 400, 900}) {
        auto wide = picture();
        wide.reach.until = atMinute(minutes);
        const StrandGeometry geometry{wide, QRectF{0, 0, 700, 300}};
        EXPECT_GE(geometry.x(atMinute(0) + geometry.axisStep()) - geometry.x(atMinute(0)), 60) << minutes;
    }
}

}  // namespace
