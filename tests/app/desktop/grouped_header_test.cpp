#include "app/desktop/setup/grouped_header.h"

#include "app/desktop/look/metrics.h"
#include "tests/app/desktop/rig.h"

#include <QImage>
#include <QPaintEvent>
#include <QScrollBar>
#include <QTabWidget>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>

using namespace app::desktop;

namespace {

/// How much of the width was drawn at once, at most.
class PaintedWidth : public QObject {
public:
    explicit PaintedWidth(QWidget& watched) { watched.installEventFilter(this); }
    bool eventFilter(QObject*, QEvent* event) override
    {
        if (event->type() == QEvent::Paint)
            width = std::max(width, static_cast<QPaintEvent*>(event)->region().boundingRect().width());
        return false;
    }
    int width = 0;
};

/// The headings of the zones at the least size of the window.
class GroupedHeadings : public testing::Test {
protected:
    GroupedHeadings()
    {
        rig.window->document().replace(rig::Rig::service(), {});
        rig.window->resize(1024, 700);
        QTest::qWait(50);
    }

    QTableView* table(const char* name = "zones") const { return rig.find<QTableView>(name); }
    GroupedHeader* header(const char* name = "zones") const
    {
        return qobject_cast<GroupedHeader*>(table(name)->horizontalHeader());
    }
    int column(const char* title) const
    {
        for (int place = 0; place < header()->count(); ++place)
            if (table()->model()->headerData(place, Qt::Horizontal).toString() == QLatin1String{title})
                return place;
        return -1;
    }
    QImage drawnAbove(int place) const
    {
        return header()
            ->grab(QRect{header()->sectionViewportPosition(place), 0, header()->sectionSize(place),
                         header()->groupHeight() - 1})
            .toImage();
    }
    static bool isBlank(const QImage& image)
    {
        for (int x = 0; x < image.width() - 2; ++x)  // What parts two groups may stand at the edge.
            for (int y = 0; y < image.height(); ++y)
                if (image.pixel(x, y) != image.pixel(0, 0))
                    return false;
        return true;
    }

    rig::Rig rig;
};

TEST_F(GroupedHeadings, SayOnceWhatColumnsAreAbout)
{
    ASSERT_NE(header(), nullptr);
    const QRect group = header()->groupPlace(column("Quickest"));
    EXPECT_EQ(group, header()->groupPlace(column("Slowest")));
    EXPECT_EQ(group.left(), header()->sectionViewportPosition(column("Quickest")));
    EXPECT_EQ(group.right() + 1, header()->sectionViewportPosition(column("Counts from")));
    EXPECT_FALSE(isBlank(drawnAbove(column("Quickest"))));
    EXPECT_TRUE(isBlank(drawnAbove(column("Zone"))));
    EXPECT_TRUE(isBlank(drawnAbove(column("Slowest")))) << "it is said at the left";
}

TEST_F(GroupedHeadings, HaveRoomForWhatTheySay)
{
    const QFontMetrics words{Theme::font(metrics::textSmall, true)};
    table()->resize(4000, table()->height());
    for (int place = 0; place < header()->count(); ++place) {
        const QString group =
            table()->model()->headerData(place, Qt::Horizontal, GroupedHeader::GroupRole).toString();
        if (!group.isEmpty()) {
            EXPECT_GT(header()->groupPlace(place).width(), words.horizontalAdvance(group))
                << group.toStdString();
        }
    }
}

TEST_F(GroupedHeadings, StayInViewAsLongAsOneOfTheirColumnsDoes)
{
    const int first = column("Quickest");
    const int past = header()->sectionPosition(first) + header()->sectionSize(first) / 2;
    table()->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    table()->horizontalScrollBar()->setValue(past);
    ASSERT_EQ(table()->horizontalScrollBar()->value(), past);
    EXPECT_EQ(header()->groupPlace(first).left(), 0);
    // What was there before must not be moved with the columns, so all of it is drawn anew.
    QTest::qWait(20);
    PaintedWidth painted{*header()->viewport()};
    table()->horizontalScrollBar()->setValue(past + 1);
    QTest::qWait(20);
    EXPECT_EQ(painted.width, header()->viewport()->width());
}

TEST_F(GroupedHeadings, CostTheLineThatTheyAreAndNoRow)
{
    EXPECT_EQ(header("bowls")->groupHeight(), 0);
    EXPECT_GT(header()->groupHeight(), 10);
    rig.find<QTabWidget>("parts")->setCurrentIndex(1);
    QTest::qWait(20);
    EXPECT_EQ(header()->sizeHint().height(), header("bowls")->sizeHint().height() + header()->groupHeight());
    rig.find<QTabWidget>("parts")->setCurrentIndex(0);
    QTest::qWait(20);
    EXPECT_GE(table()->viewport()->height(), 3 * table()->verticalHeader()->defaultSectionSize());
}

}  // namespace
