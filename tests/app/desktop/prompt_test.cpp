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

    rig::Rig rig;
};

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
