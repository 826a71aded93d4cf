#include "app/desktop/look/metrics.h"
#include "app/desktop/look/strand_widget.h"
#include "app/desktop/setup/start_bar.h"
#include "app/desktop/setup/strand_grip.h"
#include "tests/app/desktop/rig.h"

#include <QAccessible>
#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

#include <cmath>

// Strands in Set-up are pulled with real mouse and key events. By hand: ready by 60, with 5 min of rinsing,
// water comes at 55; the root, 5 on and 20 of development, starts at 30 and at 35 at the latest, for it
// needs 15.

using namespace app::desktop;
using core::measure::Instant;
using std::chrono::minutes;

namespace {

Instant at(int minute)
{
    return rig::morning + minutes{minute};
}

class DragAStrand : public testing::Test {
protected:
    DragAStrand()
    {
        core::service::Service service = rig::Rig::service();
        service.readyBy = at(60);
        rig.window->document().replace(service, {});
        rig.activate();
        EXPECT_TRUE(rig::Rig::wait([this] { return isPlanned() && startOf(0) == at(30); }));
    }

    StrandWidget* strands() const { return rig.find<StrandWidget>("strands"); }
    bool isPlanned() const { return !strands()->isStale() && !strands()->picture().strands.empty(); }
    const app::view::Strand& strand(std::size_t place) const
    {
        return strands()->picture().strands.at(place);
    }
    Instant startOf(std::size_t place) const { return strand(place).application.from; }
    StrandGrip* root() const { return rig.find<StrandGrip>("grip1"); }
    StartBar* said() const { return rig.find<StartBar>("startBar"); }
    void press(const char* button) const { QTest::mouseClick(rig.find<QPushButton>(button), Qt::LeftButton); }
    const std::optional<Instant>& kept() const
    {
        return rig.window->document().service().coats[0].zones[0].notBefore;
    }

    StrandGeometry geometry() const { return {strands()->picture(), QRectF{strands()->rect()}}; }

    /// Of the root, at its middle.
    void takeHold()
    {
        m_held = root()->mapToGlobal(root()->rect().center());
        QTest::mousePress(root(), Qt::LeftButton, {}, root()->mapFromGlobal(m_held));
    }
    /// Which minute of the picture is where the root was taken hold of.
    double minuteAtTheHand() const
    {
        const double right = strands()->mapFromGlobal(m_held).x() - geometry().plot().left();
        const std::chrono::duration<double, std::ratio<60>> from = strands()->picture().reach.from - at(0);
        return from.count() + right / geometry().minuteWidth();
    }
    /// To where a pointer is that went so many minutes to the right since then.
    void pull(double by)
    {
        moveTo(5);  // Times move closer together once it moves at all.
        moveTo(static_cast<int>(std::lround(by * geometry().minuteWidth())));
    }
    void moveTo(int right) const
    {
        QTest::mouseMove(root(), root()->mapFromGlobal(m_held + QPoint{right, 0}));
        QTest::qWait(1);
    }
    void release() const { QTest::mouseRelease(root(), Qt::LeftButton, {}, root()->rect().center()); }

    rig::Rig rig;

private:
    QPoint m_held;
};

TEST_F(DragAStrand, ShowsWhatStartingLaterDoesAndSpringsBack)
{
    const auto before = strands()->picture();
    takeHold();
    pull(3);
    ASSERT_TRUE(rig::Rig::wait([this] { return startOf(0) == at(33); }));

    EXPECT_EQ(strand(0).development(), minutes{17});
    ASSERT_TRUE(strand(0).planned);
    EXPECT_EQ(strand(0).planned->application.from, at(30));
    EXPECT_TRUE(said()->isVisible());
    EXPECT_NE(said()->text().indexOf(QStringLiteral("Root develops 17 min instead of 20 min")), -1)
        << said()->text().toStdString();
    EXPECT_FALSE(rig.find<QLabel>("planSummary")->isVisible());
    EXPECT_EQ(kept(), std::nullopt);
    EXPECT_FALSE(rig.window->document().undoStack().canUndo());

    release();
    EXPECT_TRUE(said()->isVisible());
    press("letGoStart");
    EXPECT_FALSE(said()->isVisible());
    EXPECT_TRUE(rig.find<QLabel>("planSummary")->isVisible());
    EXPECT_EQ(strand(0).application, before.strands[0].application);
    EXPECT_FALSE(strand(0).planned);
}

TEST_F(DragAStrand, GoesWithTheHandAndLeavesRoomForWhatIsLater)
{
    const auto whole = [this] {
        const auto& reach = strands()->picture().reach;
        return reach.until - reach.from;
    };
    takeHold();
    const auto planned = whole();
    const double underTheHand = minuteAtTheHand();
    pull(0);
    EXPECT_GT(whole(), planned * 5 / 4);
    EXPECT_NEAR(minuteAtTheHand(), underTheHand, 0.05);

    const double left = geometry().x(startOf(0));
    const double minute = geometry().minuteWidth();
    pull(4);
    ASSERT_TRUE(rig::Rig::wait([this] { return startOf(0) == at(34); }));
    EXPECT_NEAR(geometry().x(startOf(0)) - left, 4 * minute, 0.5) << "as far as the hand has gone";
    EXPECT_NEAR(minuteAtTheHand(), underTheHand, 0.05) << "times stay where they are while it is pulled";

    const auto held = whole();
    release();
    EXPECT_LT(whole(), held);
}

TEST_F(DragAStrand, KeepsAStartAsAChangeThatSaysWhatItUndoes)
{
    takeHold();
    pull(2);
    ASSERT_TRUE(rig::Rig::wait([this] { return startOf(0) == at(32) && said()->canKeep(); }));
    release();
    press("keepStart");

    EXPECT_EQ(kept(), at(32));
    EXPECT_FALSE(said()->isVisible());
    const QString clock = WallClock::text(core::measure::LocalTime{at(32).time_since_epoch()});
    EXPECT_EQ(rig.find<QAction>("undo")->text(), QStringLiteral("Undo Root not before %1").arg(clock));
    ASSERT_TRUE(rig::Rig::wait([this] { return isPlanned() && startOf(0) == at(32); }));
    ASSERT_TRUE(strand(0).wanted);
    EXPECT_EQ(strand(0).wanted->at, at(32));

    rig.find<QAction>("undo")->trigger();
    EXPECT_EQ(kept(), std::nullopt);
    EXPECT_TRUE(rig::Rig::wait([this] { return isPlanned() && startOf(0) == at(30); }));
}

TEST_F(DragAStrand, GoesNoFurtherThanALimitAndSaysWhich)
{
    takeHold();
    pull(9);
    ASSERT_TRUE(rig::Rig::wait([this] { return strand(0).wanted && strand(0).wanted->latest.has_value(); }));
    ASSERT_TRUE(rig::Rig::wait([this] { return startOf(0) == at(35); }));

    EXPECT_EQ(strand(0).wanted->latest, at(35));
    EXPECT_EQ(strand(0).wanted->earliest, at(30));
    EXPECT_EQ(strand(0).wanted->at, at(35));
    EXPECT_EQ(root()->value(), 5);
    EXPECT_EQ(root()->maximum(), 5);
    const QString text = said()->text();
    EXPECT_NE(text.indexOf(QStringLiteral("Root cannot start later than")), -1) << text.toStdString();
    EXPECT_NE(text.indexOf(QStringLiteral("development of at least 15 min")), -1) << text.toStdString();
    pull(20);
    EXPECT_EQ(root()->value(), 5);
    pull(1);
    EXPECT_TRUE(rig::Rig::wait([this] { return startOf(0) == at(31); }));
    EXPECT_EQ(said()->text().indexOf(QStringLiteral("cannot start later")), -1);
}

TEST_F(DragAStrand, DoesNotGoBeforeWhereItStartsByItself)
{
    takeHold();
    pull(-6);

    EXPECT_EQ(root()->value(), 0);
    EXPECT_EQ(startOf(0), at(30));
    EXPECT_NE(said()->text().indexOf(QStringLiteral("by itself")), -1) << said()->text().toStdString();
    EXPECT_FALSE(rig.find<QPushButton>("keepStart")->isEnabled());
}

TEST_F(DragAStrand, IsAsItWasWhereItWasOnlyTouched)
{
    takeHold();
    release();

    EXPECT_FALSE(said()->isVisible());
    EXPECT_EQ(startOf(0), at(30));
    EXPECT_FALSE(strand(0).wanted);
}

TEST_F(DragAStrand, IsPulledWithKeys)
{
    root()->setFocus();
    QTest::keyClick(root(), Qt::Key_Right);
    EXPECT_EQ(root()->value(), 1);
    QTest::keyClick(root(), Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_TRUE(rig::Rig::wait([this] { return root()->maximum() == 5; }));
    EXPECT_EQ(root()->value(), 5);
    QTest::keyClick(root(), Qt::Key_Left);
    EXPECT_TRUE(rig::Rig::wait([this] { return startOf(0) == at(34); }));

    QTest::keyClick(root(), Qt::Key_Escape);
    EXPECT_EQ(startOf(0), at(30));
    EXPECT_FALSE(said()->isVisible());
    EXPECT_TRUE(root()->hasFocus());

    QTest::keyClick(root(), Qt::Key_Right);
    ASSERT_TRUE(rig::Rig::wait([this] { return said()->canKeep(); }));
    QTest::keyClick(root(), Qt::Key_Return);
    EXPECT_EQ(kept(), at(31));
    EXPECT_TRUE(root()->hasFocus());
}

TEST_F(DragAStrand, IsPulledBackToWheneverIsBest)
{
    rig.window->document().edit(QStringLiteral("a start"),
                                [](auto& service) { service.coats[0].zones[0].notBefore = at(33); });
    ASSERT_TRUE(rig::Rig::wait([this] { return isPlanned() && startOf(0) == at(33); }));
    root()->setFocus();
    for (int press = 0; press < 4; ++press)
        QTest::keyClick(root(), Qt::Key_Left);
    ASSERT_TRUE(rig::Rig::wait([this] { return startOf(0) == at(30) && said()->canKeep(); }));
    QTest::keyClick(root(), Qt::Key_Return);

    EXPECT_EQ(kept(), std::nullopt);
    EXPECT_EQ(rig.find<QAction>("undo")->text(), QStringLiteral("Undo Root whenever is best"));
}

TEST_F(DragAStrand, CanBeTakenAwayInTheTable)
{
    auto* model = rig.find<QTableView>("zones")->model();
    const int column = model->columnCount() - 1;
    ASSERT_EQ(model->headerData(column, Qt::Horizontal).toString(), QStringLiteral("Not before"));
    const QString clock = WallClock::text(core::measure::LocalTime{at(34).time_since_epoch()});
    ASSERT_TRUE(model->setData(model->index(0, column), clock));
    EXPECT_EQ(kept(), at(34));
    EXPECT_EQ(model->index(0, column).data().toString(), clock);
    ASSERT_TRUE(model->setData(model->index(0, column), QString{}));
    EXPECT_EQ(kept(), std::nullopt);
}

// What a screen reader finds: a slider with a name, a value that can be set, and what comes of it.
TEST_F(DragAStrand, IsASliderToWhoCannotSeeIt)
{
    QAccessibleInterface* slider = QAccessible::queryAccessibleInterface(root());
    ASSERT_NE(slider, nullptr);
    EXPECT_EQ(slider->role(), QAccessible::Slider);
    EXPECT_EQ(slider->text(QAccessible::Name), QStringLiteral("Start of Root, minutes later than planned"));
    ASSERT_NE(slider->valueInterface(), nullptr);
    slider->valueInterface()->setCurrentValue(2);
    ASSERT_TRUE(rig::Rig::wait([this] { return startOf(0) == at(32); }));

    EXPECT_EQ(slider->valueInterface()->currentValue().toInt(), 2);
    EXPECT_EQ(slider->text(QAccessible::Description), said()->text());
    EXPECT_FALSE(said()->text().isEmpty());
}

TEST_F(DragAStrand, CanBeHitWithAFinger)
{
    for (const char* name : {"grip1", "grip2"}) {
        const auto* grip = rig.find<StrandGrip>(name);
        ASSERT_NE(grip, nullptr);
        EXPECT_GE(grip->width(), metrics::target);
        EXPECT_GE(grip->height(), metrics::target - 1);
    }
    takeHold();
    pull(2);
    ASSERT_TRUE(rig::Rig::wait([this] { return said()->isVisible(); }));
    for (const char* name : {"keepStart", "letGoStart"})
        EXPECT_GE(rig.find<QPushButton>(name)->height(), metrics::target);
}

TEST_F(DragAStrand, EndsWhereSomethingElseIsChanged)
{
    takeHold();
    pull(3);
    ASSERT_TRUE(rig::Rig::wait([this] { return startOf(0) == at(33); }));
    rig.window->document().edit(QStringLiteral("a zone"),
                                [](auto& service) { service.coats[0].zones.pop_back(); });

    EXPECT_FALSE(said()->isVisible());
    ASSERT_TRUE(rig::Rig::wait([this] { return isPlanned() && strands()->picture().strands.size() == 1; }));
    EXPECT_FALSE(strand(0).planned);
    EXPECT_FALSE(rig.find<StrandGrip>("grip2")->isVisible());
}

}  // namespace
