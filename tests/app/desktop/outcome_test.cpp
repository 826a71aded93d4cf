#include "app/desktop/look/metrics.h"
#include "core/run/outcomes.h"
#include "tests/app/desktop/rig.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

// How a coat turned out, asked once it is over and never in the way.

namespace {

using core::run::Answer;
using core::run::Outcome;
using core::run::Prompt;

class OutcomesOfHeads : public testing::Test {
protected:
    /// Answers all that is asked for at its time.
    void runToTheEnd()
    {
        for (int step = 0; step < 30 && !rig.session->state().finished; ++step) {
            const Prompt prompt = rig.session->state().prompts.front();
            rig.goOn(std::max(rig::Seconds{0}, rig::Seconds{prompt.due - rig.clock->now()}));
            const auto kind = prompt.asks == Prompt::Asks::Start ? Answer::Kind::Start
                : prompt.asks == Prompt::Asks::Look              ? Answer::Kind::Leave
                                                                 : Answer::Kind::Finish;
            ASSERT_FALSE(rig.session->answer({.kind = kind, .task = prompt.task}));
        }
    }

    bool isOffered() const { return rig.find<QWidget>("over")->isVisible(); }
    bool isOpen() const { return rig.find<QWidget>("outcome")->isVisible(); }
    QString question() const { return rig.find<QLabel>("outcomeQuestion")->text(); }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        ASSERT_NE(rig.window->focusWidget(), nullptr);
        rig.settle();
        QTest::keyClick(rig.window->focusWidget(), key, modifiers);
        QTest::qWait(150);  // A button that is pressed by its key stays down for a moment before it acts.
    }
    std::vector<core::run::ZoneOutcome> told() const { return core::run::outcomesOf(rig.session->facts()); }

    rig::Rig rig;
};

/// Of one head, whose lanes run.
class Outcomes : public OutcomesOfHeads {
protected:
    Outcomes()
    {
        rig.window->document().replace(rig::Rig::service(), {});
        rig.startLanes();
    }
};

TEST_F(Outcomes, AreAskedForOnceTheCoatIsOver)
{
    EXPECT_FALSE(isOffered());
    press(Qt::Key_O);
    EXPECT_FALSE(isOpen()) << "nothing is over yet";
    runToTheEnd();
    EXPECT_TRUE(isOffered());
    EXPECT_FALSE(isOpen()) << "nobody asked for it";
}

TEST_F(Outcomes, AreToldZoneByZoneWithTheKeyboardAlone)
{
    runToTheEnd();
    press(Qt::Key_O);
    ASSERT_TRUE(isOpen());
    EXPECT_TRUE(question().contains(QStringLiteral("Root"))) << question().toStdString();
    for (int option = 1; option <= 7; ++option) {
        const auto* button = rig.find<QPushButton>(qPrintable(QStringLiteral("outcome%1").arg(option)));
        ASSERT_NE(button, nullptr);
        EXPECT_GE(button->height(), app::desktop::metrics::target);
    }
    rig.find<QLineEdit>("outcomeWords")->setText(QStringLiteral(" a little  brassy "));
    press(Qt::Key_4, Qt::AltModifier);
    ASSERT_EQ(told().size(), 1u);
    EXPECT_EQ(told()[0].outcome, Outcome::TooWarm);
    EXPECT_EQ(told()[0].words, "a little brassy");
    EXPECT_TRUE(question().contains(QStringLiteral("Ends")));

    rig.find<QLineEdit>("outcomeWords")->setFocus();
    QTest::keyClicks(rig.find<QLineEdit>("outcomeWords"), QStringLiteral("quite soft"));
    press(Qt::Key_Return);
    ASSERT_EQ(told().size(), 2u);
    EXPECT_EQ(told()[1].outcome, std::nullopt);
    EXPECT_EQ(told()[1].words, "quite soft");

    ASSERT_NE(rig.find<QLineEdit>("outcomeNote"), nullptr);
    rig.find<QLineEdit>("outcomeNote")->setText(QStringLiteral("thinner sections"));
    press(Qt::Key_1, Qt::AltModifier);
    EXPECT_EQ(core::run::notesOf(rig.session->facts()).at(0).words, "thinner sections");
    EXPECT_FALSE(isOpen());
    EXPECT_FALSE(isOffered()) << "all of it is said";
}

TEST_F(Outcomes, CanBePassedOverAndToldLater)
{
    runToTheEnd();
    const std::size_t facts = rig.session->facts().size();
    rig.find<QPushButton>("overOffer2")->click();
    EXPECT_FALSE(isOffered());
    EXPECT_EQ(rig.session->facts().size(), facts);
    press(Qt::Key_O);
    ASSERT_TRUE(isOpen());
    rig.find<QPushButton>("outcome7")->click();  // Go on without.
    rig.find<QPushButton>("outcome1")->click();
    ASSERT_EQ(told().size(), 1u);
    EXPECT_EQ(told()[0].zone.item, 1u);
}

TEST_F(Outcomes, AreTakenBackByUndo)
{
    runToTheEnd();
    press(Qt::Key_O);
    rig.find<QPushButton>("outcome2")->click();
    ASSERT_EQ(told().size(), 1u);
    rig.find<QPushButton>("undoLast")->click();
    EXPECT_TRUE(told().empty());
}

// The first is over while the second waits for water.
TEST_F(OutcomesOfHeads, GiveWayToAnAlarm)
{
    auto quick = rig::Rig::service();
    quick.coats[0].zones.pop_back();
    auto slow = quick;
    quick.head.name = "Quick";
    slow.head.name = "Slow";
    slow.coats[0].zones[0].develop = {std::chrono::minutes{70}, std::chrono::minutes{80},
                                      std::chrono::minutes{90}};
    rig.window->document().replaceAll({{quick, {}}, {slow, {}}});
    rig.startLanes();
    ASSERT_TRUE(rig.session->current());
    bool opened = false;
    for (int step = 0; step < 30 && !rig.session->state().finished; ++step) {
        const Prompt prompt = rig.session->state().prompts.front();
        const bool slowWater = prompt.task.service == 1 && prompt.task.kind == core::stagger::TaskKind::Rinse
            && prompt.asks == Prompt::Asks::Start;
        if (slowWater) {
            ASSERT_TRUE(isOffered());
            rig.window->activateWindow();
            press(Qt::Key_O);
            ASSERT_TRUE(isOpen());
            opened = true;
        }
        rig.goOn(std::max(rig::Seconds{0}, rig::Seconds{prompt.due - rig.clock->now()}));
        if (slowWater) {
            EXPECT_TRUE(rig.find<QWidget>("alert")->isVisible());
            EXPECT_FALSE(isOpen());
            EXPECT_FALSE(isOffered());
            break;
        }
        ASSERT_FALSE(rig.session->answer(
            {.kind = prompt.asks == Prompt::Asks::Start ? Answer::Kind::Start : Answer::Kind::Finish,
             .task = prompt.task}));
    }
    EXPECT_TRUE(opened);
}

}  // namespace
