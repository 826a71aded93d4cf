#include "app/desktop/lanes/lane_card.h"
#include "app/desktop/lanes/lanes_grid.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "tests/app/desktop/rig.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

using namespace app::desktop;

namespace {

/// Names, digits and what is to be done, to be read from three metres.
class FarView : public testing::Test {
protected:
    FarView()
    {
        rig.window->resize(1280, 800);
        rig.window->document().replace(rig::Rig::service(), {});
        rig.startLanes();
    }

    void press(Qt::Key key)
    {
        rig.settle();
        QTest::keyClick(rig.window->focusWidget(), key);
        QTest::qWait(200);  // A button that was clicked by its key lets go, and the page is laid out.
    }
    bool shows(const char* name) const { return rig.find<QWidget>(name)->isVisible(); }
    /// As it is drawn, which a sheet of styles may change.
    int sentencePixels() const { return rig.find<QLabel>("nowSentence")->font().pixelSize(); }

    rig::Rig rig;
};

TEST_F(FarView, LeavesNamesDigitsAndWhatIsToBeDone)
{
    ASSERT_TRUE(shows("liveStrands") && shows("nowDetail") && shows("lane1"));
    press(Qt::Key_F);
    EXPECT_FALSE(shows("liveStrands"));
    EXPECT_FALSE(shows("nowDetail"));
    EXPECT_FALSE(shows("next1"));
    EXPECT_FALSE(shows("lastAnswer"));
    EXPECT_TRUE(shows("nowSentence") && shows("nowButton") && shows("undoLast") && shows("far"));
    EXPECT_EQ(sentencePixels(), metrics::textAlert);
    const auto* card = rig.find<LaneCard>("strip1");
    ASSERT_TRUE(card->isVisible());
    EXPECT_GT(LaneCard::compactDigits(card->size()), metrics::textDigits) << "larger than beside the picture";

    press(Qt::Key_F);
    EXPECT_TRUE(shows("liveStrands") && shows("nowDetail") && shows("next1") && shows("lane1"));
    EXPECT_EQ(sentencePixels(), metrics::textStep);
}

TEST_F(FarView, IsAnsweredByTheSameKeysAndGivesWayToAnAlarmAndToWhatIsAsked)
{
    rig.find<QPushButton>("far")->click();
    press(Qt::Key_Return);
    EXPECT_EQ(rig.session->facts().size(), 1U);

    press(Qt::Key_M);
    EXPECT_TRUE(shows("more"));
    EXPECT_EQ(sentencePixels(), metrics::textStep);
    press(Qt::Key_M);
    EXPECT_EQ(sentencePixels(), metrics::textAlert);

    rig.goOn(std::chrono::minutes{5});
    press(Qt::Key_Return);
    for (int minute = 0; minute < 120 && !shows("alert"); ++minute)
        rig.goOn(std::chrono::minutes{1});
    EXPECT_TRUE(shows("alert") && shows("strip1"));
}

TEST_F(FarView, HasLargerLettersInALargeWindow)
{
    press(Qt::Key_F);
    rig.window->resize(3840, 2160);
    QTest::qWait(200);
    EXPECT_EQ(sentencePixels(), metrics::textAlert * 250 / 100);
    EXPECT_GE(rig.find<QPushButton>("nowButton")->height(), 2 * metrics::targetLive);
    rig.window->resize(1280, 800);
    QTest::qWait(200);
    EXPECT_EQ(sentencePixels(), metrics::textAlert);
}

TEST_F(FarView, GivesWayToAnAlarmThatHasLargerLettersInALargeWindowToo)
{
    press(Qt::Key_Return);
    rig.goOn(std::chrono::minutes{5});
    press(Qt::Key_Return);
    for (int minute = 0; minute < 120 && !shows("alert"); ++minute)
        rig.goOn(std::chrono::minutes{1});
    ASSERT_TRUE(shows("alert"));
    const auto pixels = [this](const char* part) { return rig.find<QWidget>(part)->font().pixelSize(); };
    for (const int percent : {250, 100}) {
        rig.window->resize(percent == 250 ? QSize{3840, 2160} : QSize{1280, 800});
        QTest::qWait(200);
        EXPECT_EQ(pixels("alertHeadline"), metrics::textAlert * percent / 100);
        EXPECT_EQ(pixels("alertDetail"), metrics::textLarge * percent / 100);
        EXPECT_EQ(pixels("alertButton"), metrics::textStep * percent / 100);
        EXPECT_EQ(rig.find<LaneCard>("strip1")->height() > 300, percent == 250)
            << "in a large window the strip below is read from afar too";
    }
}

TEST_F(FarView, StaysWhenTheColoursChange)
{
    press(Qt::Key_F);
    rig.theme->choose(Theme::Choice::Dark);
    EXPECT_EQ(sentencePixels(), metrics::textAlert);
}

TEST_F(FarView, ShowsTheKeyboardOnItsButtonAlsoWhileThatIsIn)
{
    rig.activate();
    auto* const far = rig.find<QPushButton>("far");
    far->click();
    far->setFocus();
    ASSERT_TRUE(rig::Rig::wait([&] { return far->hasFocus(); }));
    const QImage with = far->grab().toImage();
    far->clearFocus();
    EXPECT_NE(far->grab().toImage(), with);
}

TEST_F(FarView, IsKept)
{
    press(Qt::Key_F);
    rig.openWindow();
    rig.window->resize(1280, 800);
    rig.window->showLanes();
    EXPECT_FALSE(shows("liveStrands"));
    EXPECT_TRUE(rig.find<QPushButton>("far")->isChecked());
}

}  // namespace
