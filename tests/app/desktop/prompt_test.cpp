#include "app/desktop/lanes/lane_card.h"
#include "app/desktop/lanes/live_button.h"
#include "tests/app/desktop/rig.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

using namespace app::desktop;

namespace {

/// Two zones whose looks are to be made at one moment.
core::service::Service twoLooks()
{
    core::service::Service service = rig::Rig::service();
    auto& zones = service.coats[0].zones;
    zones[0].looks = zones[1].looks;
    zones[0].looks->first = rig::Seconds{15 * 60};  // Root counts from minute 5, Ends from 15: both at 20.
    zones[0].looks->until = rig::Seconds{20 * 60};
    return service;
}

class OnePrompt : public testing::Test {
protected:
    OnePrompt()
    {
        rig.window->document().replace(twoLooks(), {});
        rig.startLanes();
        for (int step = 0; step < 12 && !lookIsDue(); ++step) {
            const auto& prompt = rig.session->state().prompts.front();
            rig.goOn(std::max(rig::Seconds{0}, rig::Seconds{prompt.due - rig.clock->now()}));
            rig.settle();
            if (!lookIsDue())
                QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
        }
        EXPECT_TRUE(lookIsDue());
    }

    bool lookIsDue() const
    {
        const auto& state = rig.session->state();
        return state.prompts.front().asks == core::run::Prompt::Asks::Look
            && state.prompts.front().due <= state.now;
    }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        rig.settle();
        QTest::keyClick(rig.window.get(), key, modifiers);
        EXPECT_TRUE(rig::Rig::wait([this] {
            return std::ranges::none_of(rig.window->findChildren<QPushButton*>(), &QPushButton::isDown);
        }));
    }

    LiveButton* answer(const char* name) const { return rig.find<LiveButton>(name); }
    void resize(int width, int height)
    {
        rig.window->resize(width, height);
        EXPECT_TRUE(rig::Rig::wait([&] { return answer("leave2")->isVisible(); }));
        QTest::qWait(50);
    }

    rig::Rig rig;
};

TEST_F(OnePrompt, HasARowOfAnswersForEachZone)
{
    for (const auto& [width, height, least] :
         {std::tuple{1024, 700, 44}, std::tuple{1280, 800, 76}, std::tuple{1920, 1080, 76}}) {
        resize(width, height);
        EXPECT_EQ(rig.find<QLabel>("lookZone")->text(), QStringLiteral("Root"));
        EXPECT_EQ(rig.find<QLabel>("lookZone2")->text(), QStringLiteral("Ends"));
        for (const auto& [above, below] : {std::pair{"leave", "leave2"}, std::pair{"lookAgain", "lookAgain2"},
                                           std::pair{"rinseZone", "rinseZone2"}}) {
            EXPECT_EQ(answer(above)->x(), answer(below)->x()) << below;
            EXPECT_NEAR(answer(above)->width(), answer("leave")->width(), 1) << above;
            EXPECT_NEAR(answer(below)->width(), answer("leave")->width(), 1) << below;
            EXPECT_GE(answer(below)->y(), answer(above)->geometry().bottom()) << below;
            EXPECT_GE(answer(above)->height(), least) << above << " at " << width;
            EXPECT_EQ(answer(below)->height(), answer(above)->height()) << below;
        }
        EXPECT_LT(rig.find<QLabel>("lookZone2")->geometry().right(), answer("leave2")->x());
        EXPECT_GE(answer("leaveAll")->height(), least);
    }
}

TEST_F(OnePrompt, TakesTheAnswerOfAnyRowAndTheOthersGoOn)
{
    resize(1280, 800);
    EXPECT_EQ(answer("rinseZone2")->accessibleName().section(QLatin1Char{','}, 0, 0),
              QStringLiteral("Rinse Ends now"));
    answer("sooner")->click();
    EXPECT_TRUE(answer("lookAgain2")->text().contains(QStringLiteral("2 min")));
    answer("lookAgain2")->click();
    EXPECT_EQ(rig.session->facts().back().task.item, 1U);
    EXPECT_EQ(rig.find<QLabel>("nowSentence")->text(), QStringLiteral("Look at Root"));
    EXPECT_FALSE(answer("leave2")->isVisible());
    EXPECT_FALSE(rig.find<QLabel>("lookZone")->isVisible()) << "one zone needs no name";
    EXPECT_EQ(answer("leave")->text(), QStringLiteral("Leave it on  (1)"));
    answer("leave")->click();
    EXPECT_EQ(rig.session->facts().back().task.item, 0U);
}

// A key that fell twice answers one zone, not the next one too.
TEST_F(OnePrompt, TakesNoSecondPressForTheNextZone)
{
    const std::size_t facts = rig.session->facts().size();
    press(Qt::Key_1);
    ASSERT_EQ(rig.session->facts().size(), facts + 1);
    QTest::keyClick(rig.window.get(), Qt::Key_1);
    QTest::qWait(150);
    EXPECT_EQ(rig.session->facts().size(), facts + 1);
    press(Qt::Key_1);
    EXPECT_TRUE(rig::Rig::wait([&] { return rig.session->facts().size() == facts + 2; }));
}

TEST_F(OnePrompt, AsksForBothLooksAtOnceAndTakesOneAnswerForBoth)
{
    EXPECT_EQ(rig.find<QLabel>("nowSentence")->text(), QStringLiteral("Look at Root and Ends"));
    ASSERT_TRUE(rig.find<LiveButton>("leaveAll")->isVisible());
    ASSERT_FALSE(rig.sound.sounded.empty());
    EXPECT_EQ(rig.sound.sounded.back().alarms.size(), 2U) << "one sound for both";
    const std::size_t facts = rig.session->facts().size();
    press(Qt::Key_4);
    EXPECT_EQ(rig.session->facts().size(), facts + 2);
    EXPECT_TRUE(rig.session->alarms().empty());
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rig.session->alarms().size(), 2U) << "one answer is undone as one";
}

TEST_F(OnePrompt, TakesEachByItselfAndTheOtherGoesOn)
{
    press(Qt::Key_1);
    EXPECT_EQ(rig.find<QLabel>("nowSentence")->text(), QStringLiteral("Look at Ends"));
    EXPECT_FALSE(rig.find<LiveButton>("leaveAll")->isVisible());
    ASSERT_EQ(rig.session->alarms().size(), 1U);
    EXPECT_EQ(rig.session->alarms().front().kind, core::alarm::Kind::Due);
}

TEST_F(OnePrompt, IsSilencedForAWhileAndStaysInView)
{
    const auto* muted = rig.find<QWidget>("muted");
    EXPECT_FALSE(muted->isVisible());
    ASSERT_TRUE(rig.find<QPushButton>("quiet")->isVisible());
    press(Qt::Key_Q);
    EXPECT_TRUE(rig.session->audible().empty());
    ASSERT_TRUE(muted->isVisible());
    EXPECT_TRUE(muted->accessibleName().contains(QStringLiteral("Root")));
    EXPECT_TRUE(muted->accessibleName().contains(QStringLiteral("Ends")));
    EXPECT_FALSE(rig.find<QPushButton>("quiet")->isVisible());
    EXPECT_EQ(rig.find<QLabel>("nowSentence")->text(), QStringLiteral("Look at Root and Ends"));

    const std::size_t sounded = rig.sound.sounded.size();
    rig.goOn(std::chrono::seconds{100});
    EXPECT_EQ(rig.sound.sounded.size(), sounded);
    rig.goOn(std::chrono::seconds{20});
    EXPECT_EQ(rig.sound.sounded.size(), sounded + 1);
    EXPECT_FALSE(muted->isVisible());

    press(Qt::Key_Q);
    press(Qt::Key_Q, Qt::ShiftModifier);
    EXPECT_EQ(rig.session->audible().size(), 2U);
    EXPECT_EQ(rig.sound.sounded.size(), sounded + 2) << "what may sound again sounds at once";
}

}  // namespace
