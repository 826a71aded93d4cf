#include "app/desktop/lanes/lane_card.h"
#include "app/desktop/look/metrics.h"
#include "tests/app/desktop/rig.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>

using namespace app::desktop;
using core::run::Stage;

namespace {

class More : public testing::Test {
protected:
    More()
    {
        rig.window->document().replace(rig::Rig::service(), {});
        rig.startLanes();
    }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        ASSERT_NE(rig.window->focusWidget(), nullptr);
        rig.settle();
        QTest::keyClick(rig.window->focusWidget(), key, modifiers);
        // A button that is pressed by its key stays down for a moment before it acts.
        EXPECT_TRUE(rig::Rig::wait([this] {
            return std::ranges::none_of(rig.window->findChildren<QPushButton*>(), &QPushButton::isDown);
        }));
    }

    const core::service::Service& service() const { return rig.session->services().front(); }
    bool isOpen() const { return rig.find<QWidget>("more")->isVisible(); }
    QString said() const { return rig.find<QWidget>("changes")->accessibleName(); }

    rig::Rig rig;
};

TEST_F(More, OpensAndClosesWithItsKeyAndShowsAKeyOnEachButton)
{
    EXPECT_FALSE(isOpen());
    press(Qt::Key_M);
    ASSERT_TRUE(isOpen());
    for (const char* name : {"moreStop", "moreApart", "moreZone", "moreAway", "moreComes", "moreGone",
                             "moreHeat", "moreAnswers", "moreGiveUp", "moreButton"}) {
        const auto* button = rig.find<QPushButton>(name);
        ASSERT_NE(button, nullptr) << name;
        EXPECT_TRUE(button->isVisible()) << name;
        EXPECT_GE(button->height(), metrics::target) << name;
        EXPECT_FALSE(button->shortcut().isEmpty()) << name;
        EXPECT_TRUE(button->text().contains(
            QLatin1Char{'('} + button->shortcut().toString(QKeySequence::NativeText) + QLatin1Char{')'}))
            << name;
    }
    press(Qt::Key_M);
    EXPECT_FALSE(isOpen());
}

// A screen reader that looks for a button must not find the one that was there before, which does nothing.
TEST_F(More, HasEachOfItsButtonsOnceFromTheMomentItIsOpened)
{
    const auto* const panel = rig.find<QWidget>("more");
    const auto expectOnce = [panel](const char* name) {
        EXPECT_EQ(panel->findChildren<QPushButton*>(QLatin1String{name}).size(), 1) << name;
        EXPECT_TRUE(panel->findChild<QPushButton*>(QLatin1String{name})->isVisible()) << name;
    };
    rig.find<QPushButton>("moreButton")->click();
    ASSERT_TRUE(isOpen());
    for (const char* name : {"moreStop", "moreAway", "moreHeat", "moreGiveUp"})
        expectOnce(name);
    rig.find<QPushButton>("moreGiveUp")->click();
    expectOnce("option1");
    EXPECT_TRUE(panel->findChildren<QPushButton*>(QStringLiteral("moreGiveUp")).isEmpty());
    rig.find<QPushButton>("option2")->click();
    expectOnce("moreGiveUp");
    EXPECT_TRUE(panel->findChildren<QPushButton*>(QStringLiteral("option1")).isEmpty());
}

TEST_F(More, StopsAnApplicationThatIsUnderWayAndTakesThatBack)
{
    press(Qt::Key_M);
    EXPECT_FALSE(rig.find<QPushButton>("moreStop")->isEnabled());
    press(Qt::Key_M);
    press(Qt::Key_Return);
    rig.goOn(std::chrono::minutes{2});
    press(Qt::Key_M);
    press(Qt::Key_S);

    EXPECT_FALSE(isOpen());
    EXPECT_EQ(rig.session->state().lanes[0].stage, Stage::Developing);
    EXPECT_EQ(service().coats[0].zones.back().name, "Root, the rest");
    EXPECT_NE(rig.find<LaneCard>("lane3"), nullptr);
    EXPECT_TRUE(said().contains(QStringLiteral("Applying Root stopped"))) << said().toStdString();
    rig.find<QPushButton>("undoLast")->click();
    EXPECT_EQ(rig.session->state().lanes[0].stage, Stage::Applying);
    EXPECT_EQ(service().coats[0].zones.size(), 2u);
}

TEST_F(More, RinsesAZoneByItself)
{
    press(Qt::Key_M);
    press(Qt::Key_R);
    EXPECT_TRUE(rig.find<QLabel>("moreQuestion")->isVisible());
    press(Qt::Key_2, Qt::AltModifier);

    const auto& zones = service().coats[0].zones;
    EXPECT_NE(zones[0].group, zones[1].group);
    EXPECT_TRUE(said().contains(QStringLiteral("Ends is rinsed by itself"))) << said().toStdString();
}

TEST_F(More, PlansNothingForWhoIsAway)
{
    press(Qt::Key_M);
    press(Qt::Key_A);
    press(Qt::Key_2, Qt::AltModifier);

    const auto& away = service().crew.hands[0].away;
    ASSERT_EQ(away.size(), 1u);
    EXPECT_EQ(away[0].until - away[0].from, std::chrono::minutes{10});
    EXPECT_TRUE(said().contains(QStringLiteral("Stylist is away for 10 min"))) << said().toStdString();
}

TEST_F(More, TakesANameForWhoComesAndThenKnowsWhoCanGo)
{
    press(Qt::Key_M);
    press(Qt::Key_C);
    EXPECT_FALSE(rig.find<QPushButton>("helperComes")->isEnabled());
    QTest::keyClicks(rig.window->focusWidget(),
                     QStringLiteral("Emma"));  // With keys that mean something else.
    press(Qt::Key_Return);

    ASSERT_EQ(service().crew.hands.size(), 2u);
    EXPECT_EQ(service().crew.hands[1].name, "Emma");
    EXPECT_FALSE(isOpen());
    press(Qt::Key_M);
    press(Qt::Key_G);
    press(Qt::Key_2, Qt::AltModifier);
    EXPECT_TRUE(said().contains(QStringLiteral("Emma has gone"))) << said().toStdString();
    ASSERT_EQ(service().crew.hands[1].away.size(), 1u);
}

TEST_F(More, AsksOnceBeforeACoatIsGivenUp)
{
    press(Qt::Key_M);
    press(Qt::Key_U);
    const std::size_t facts = rig.session->facts().size();
    EXPECT_TRUE(rig.find<QLabel>("moreQuestion")->text().contains(QStringLiteral("Give up Coat?")));
    press(Qt::Key_2, Qt::AltModifier);  // Keep it.
    EXPECT_EQ(rig.session->facts().size(), facts);
    press(Qt::Key_U);
    press(Qt::Key_1, Qt::AltModifier);

    EXPECT_GT(rig.session->facts().size(), facts);
    EXPECT_EQ(rig.session->state().lanes[0].stage, Stage::Dropped);
    rig.window->findChild<QPushButton*>(QStringLiteral("undoLast"))->click();
    EXPECT_EQ(rig.session->state().lanes[0].stage, Stage::Waiting);
}

TEST_F(More, PutsHeatOnSaysThatTheWindowsKnowNothingOfItAndAsksForItsEnd)
{
    press(Qt::Key_M);
    EXPECT_FALSE(rig.find<QPushButton>("moreHeat")->isEnabled());
    press(Qt::Key_M);
    press(Qt::Key_Return);
    press(Qt::Key_M);
    press(Qt::Key_H);
    EXPECT_TRUE(rig.find<QLabel>("moreQuestion")->text().contains(QStringLiteral("those without heat")));
    press(Qt::Key_1, Qt::AltModifier);  // 5 minutes.

    ASSERT_EQ(rig.session->state().heats.size(), 1u);
    const auto* band = rig.find<QWidget>("heat");
    EXPECT_TRUE(band->isVisible());
    EXPECT_TRUE(band->accessibleName().contains(QStringLiteral("to be taken off at 08:05")))
        << band->accessibleName().toStdString();
    EXPECT_TRUE(band->accessibleName().contains(QStringLiteral("stay those without heat")));
    rig.goOn(std::chrono::minutes{5});
    const auto& prompts = rig.session->state().prompts;
    EXPECT_TRUE(std::ranges::any_of(prompts, [](const core::run::Prompt& prompt) {
        return prompt.task.kind == core::stagger::TaskKind::Heat
            && prompt.due <= rig::morning + rig::Seconds{300};
    }));
    press(Qt::Key_M);
    press(Qt::Key_H);
    EXPECT_TRUE(rig.session->state().heats.empty());
    EXPECT_FALSE(band->isVisible());
    rig.find<QPushButton>("undoLast")->click();
    EXPECT_EQ(rig.session->state().heats.size(), 1u);
}

TEST_F(More, AddsAZoneThatIsLikeAnother)
{
    press(Qt::Key_M);
    press(Qt::Key_Z);
    press(Qt::Key_2, Qt::AltModifier);
    EXPECT_FALSE(rig.find<QPushButton>("zoneAdd")->isEnabled());
    QTest::keyClicks(rig.window->focusWidget(), QStringLiteral("Nape"));
    rig.find<QSpinBox>("zoneMinutes")->setValue(3);
    press(Qt::Key_Return);

    ASSERT_EQ(service().coats[0].zones.size(), 3u);
    EXPECT_EQ(service().coats[0].zones[2].name, "Nape");
    EXPECT_EQ(service().coats[0].zones[2].apply.usual, rig::Seconds{180});
    EXPECT_EQ(service().coats[0].zones[2].develop, service().coats[0].zones[1].develop);
    EXPECT_NE(rig.find<LaneCard>("lane3"), nullptr);
    EXPECT_TRUE(said().contains(QStringLiteral("Nape is a zone more"))) << said().toStdString();
    rig.find<QPushButton>("undoLast")->click();
    EXPECT_EQ(service().coats[0].zones.size(), 2u);
}

TEST_F(More, PutsAnEarlierAnswerRight)
{
    press(Qt::Key_Return);
    rig.goOn(std::chrono::minutes{5});
    press(Qt::Key_Return);
    rig.goOn(std::chrono::minutes{1});
    press(Qt::Key_M);
    press(Qt::Key_P);
    EXPECT_TRUE(
        rig.find<QPushButton>("option2")->text().contains(QStringLiteral("Apply Root: started 08:00")));
    press(Qt::Key_1, Qt::AltModifier);  // The end.
    EXPECT_TRUE(rig.find<QLabel>("moreQuestion")->text().contains(QStringLiteral("Apply Root: done 08:05")));
    press(Qt::Key_3, Qt::AltModifier);  // 2 min earlier.
    EXPECT_FALSE(isOpen());
    EXPECT_EQ(rig.session->state().lanes[0].applicationEnd, rig::morning + std::chrono::minutes{3});

    press(Qt::Key_M);
    press(Qt::Key_P);
    press(Qt::Key_2, Qt::AltModifier);  // The start.
    press(Qt::Key_7, Qt::AltModifier);  // It was Ends.
    EXPECT_EQ(rig.session->state().lanes[0].stage, Stage::Waiting);
    EXPECT_EQ(rig.session->state().lanes[1].applicationEnd, rig::morning + std::chrono::minutes{3});
    EXPECT_TRUE(said().contains(QStringLiteral("That answer is about Ends now"))) << said().toStdString();
}

}  // namespace
