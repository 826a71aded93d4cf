#include "app/desktop/look/metrics.h"
#include "tests/app/desktop/rig.h"

#include <QAccessible>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

using namespace app::desktop;

namespace {

constexpr const char* lines[] = {"prepareSound", "prepareTests", "prepareProtection", "prepareBowls"};

/// The list before the start, in Set-up.
class BeforeTheStart : public testing::Test {
protected:
    BeforeTheStart()
    {
        rig.window->document().replace(rig::Rig::service(), {});
        EXPECT_TRUE(rig::Rig::wait([this] { return button("start")->isEnabled(); }));
    }

    QPushButton* button(const char* name) const { return rig.find<QPushButton>(name); }
    QString hint() const { return rig.find<QLabel>("startHint")->text(); }
    QString about() const { return rig.find<QLabel>("prepareAbout")->text(); }
    bool isOpen() const { return rig.find<QWidget>("prepareAnswer")->isVisible(); }

    /// As a person does: the key goes to whatever has the keyboard.
    void press(Qt::Key key)
    {
        ASSERT_NE(rig.window->focusWidget(), nullptr);
        QTest::keyClick(rig.window->focusWidget(), key);
    }

    void type(const char* words) { QTest::keyClicks(rig.window->focusWidget(), QLatin1String{words}); }

    void hear()
    {
        rig.pressInDialog("soundCheck", "heard");
        QTest::mouseClick(button("prepareSound"), Qt::LeftButton);
        QTest::mouseClick(button("prepareDone"), Qt::LeftButton);
        rig.activate();
    }

    rig::Rig rig;
};

TEST_F(BeforeTheStart, StandsInViewBesideTheStart)
{
    rig.window->resize(1024, 700);
    QTest::qWait(50);
    for (const char* line : lines) {
        ASSERT_NE(button(line), nullptr);
        EXPECT_EQ(button(line)->visibleRegion().boundingRect(), button(line)->rect()) << line;
        EXPECT_GE(button(line)->height(), metrics::target) << line;
        EXPECT_FALSE(button(line)->accessibleName().isEmpty()) << line;
    }
}

TEST_F(BeforeTheStart, HoldsNobodyUpAndSaysWhatIsOpen)
{
    EXPECT_TRUE(hint().contains(QStringLiteral("Still open"))) << hint().toStdString();
    for (const char* name : {"Sound", "Strand test", "Gloves", "Bowls"})
        EXPECT_TRUE(hint().contains(QLatin1String{name})) << hint().toStdString();
    QTest::mouseClick(button("start"), Qt::LeftButton);
    EXPECT_EQ(rig.window->findChild<QDialog*>(), nullptr) << "nothing asks";
    EXPECT_TRUE(rig.session->current());
}

TEST_F(BeforeTheStart, IsAnsweredWithTheKeyboardAlone)
{
    rig.window->setFocus();
    press(Qt::Key_F4);
    ASSERT_TRUE(isOpen());
    rig.pressInDialog("soundCheck", "heard");
    press(Qt::Key_Return);
    rig.activate();
    EXPECT_TRUE(button("prepareSound")->text().contains(QStringLiteral("heard")));
    EXPECT_TRUE(button("prepareTests")->isChecked()) << "the next that is open";
    press(Qt::Key_Return);
    press(Qt::Key_Space);
    EXPECT_TRUE(hint().contains(QStringLiteral("Still open (F4): Bowls"))) << hint().toStdString();
    press(Qt::Key_Return);
    EXPECT_FALSE(isOpen());
    EXPECT_FALSE(hint().contains(QStringLiteral("Still open"))) << hint().toStdString();
    EXPECT_TRUE(button("start")->hasFocus());
}

TEST_F(BeforeTheStart, SkipsWithAReasonOnly)
{
    QTest::mouseClick(button("prepareTests"), Qt::LeftButton);
    QTest::mouseClick(button("prepareSkip"), Qt::LeftButton);
    EXPECT_TRUE(rig.find<QLineEdit>("prepareWhy")->hasFocus()) << "it asks why";
    EXPECT_TRUE(hint().contains(QStringLiteral("Strand test")));
    type("  same mixture as  on Tuesday ");
    press(Qt::Key_Return);
    EXPECT_TRUE(button("prepareTests")->text().contains(QStringLiteral("skipped")));
    EXPECT_TRUE(button("prepareTests")
                    ->accessibleDescription()
                    .startsWith(QStringLiteral("same mixture as on Tuesday; said at ")));
    EXPECT_FALSE(hint().contains(QStringLiteral("Strand test"))) << hint().toStdString();

    QTest::mouseClick(button("prepareTests"), Qt::LeftButton);
    EXPECT_EQ(rig.find<QLineEdit>("prepareWhy")->text(), QStringLiteral("same mixture as on Tuesday"));
    QTest::mouseClick(button("prepareBack"), Qt::LeftButton);
    EXPECT_TRUE(hint().contains(QStringLiteral("Strand test"))) << "it can be taken back";
}

TEST_F(BeforeTheStart, ClosesALineAndReturnsToIt)
{
    QTest::mouseClick(button("prepareProtection"), Qt::LeftButton);
    ASSERT_TRUE(isOpen());
    press(Qt::Key_Escape);
    EXPECT_FALSE(isOpen());
    EXPECT_TRUE(button("prepareProtection")->hasFocus());
    EXPECT_TRUE(hint().contains(QStringLiteral("Gloves"))) << "closing answers nothing";
}

// A screen reader toggles what can be checked, which is no click.
TEST_F(BeforeTheStart, OpensForAScreenReader)
{
    QAccessibleInterface* line = QAccessible::queryAccessibleInterface(button("prepareTests"));
    ASSERT_NE(line, nullptr);
    ASSERT_NE(line->actionInterface(), nullptr);
    line->actionInterface()->doAction(line->actionInterface()->actionNames().front());
    EXPECT_TRUE(isOpen());
    EXPECT_TRUE(line->state().checked);
}

TEST_F(BeforeTheStart, AsksForSkinTestsOnAPersonOnly)
{
    EXPECT_TRUE(button("prepareTests")->text().startsWith(QStringLiteral("Strand test:")));
    rig.window->document().edit(QStringLiteral("head"),
                                [](auto& service) { service.head.kind = core::service::HeadKind::Person; });
    EXPECT_TRUE(button("prepareTests")->text().startsWith(QStringLiteral("Skin and strand tests:")));
    QTest::mouseClick(button("prepareTests"), Qt::LeftButton);
    EXPECT_TRUE(about().contains(QStringLiteral("leaflet"))) << "it defers";
}

// Ends go on last, but their bowl takes longest to mix and is listed first, so the order of the table would
// not do: by hand, Root goes on first (20 minutes to develop against 10).
TEST_F(BeforeTheStart, NamesTheBowlsAsThePlanHasThemMixed)
{
    rig.window->document().edit(QStringLiteral("bowls"), [](auto& service) {
        auto& coat = service.coats[0];
        coat.bowls = {{"Ends gloss", std::chrono::minutes{3}, {}, {}},
                      {"Root colour", std::chrono::minutes{2}, {}, {}}};
        coat.zones[0].bowl = 1;
        coat.zones[1].bowl = 0;
    });
    ASSERT_TRUE(rig::Rig::wait([this] { return button("start")->isEnabled(); }));
    QTest::mouseClick(button("prepareBowls"), Qt::LeftButton);
    const int root = static_cast<int>(about().indexOf(QStringLiteral("Root colour at")));
    const int ends = static_cast<int>(about().indexOf(QStringLiteral("Ends gloss at")));
    EXPECT_GE(root, 0) << about().toStdString();
    EXPECT_GT(ends, root) << about().toStdString();
}

TEST_F(BeforeTheStart, IsFreshForTheNextHeadsButWhatWasHeardIsHeard)
{
    hear();
    press(Qt::Key_Return);  // The tests.
    ASSERT_FALSE(hint().contains(QStringLiteral("Strand test"))) << hint().toStdString();
    rig.window->document().replace(rig::Rig::service(), {});
    ASSERT_TRUE(rig::Rig::wait([this] { return button("start")->isEnabled(); }));
    EXPECT_TRUE(hint().contains(QStringLiteral("Strand test"))) << hint().toStdString();
    EXPECT_FALSE(hint().contains(QStringLiteral("Sound"))) << hint().toStdString();

    rig.sound.works = false;
    Q_EMIT rig.sound.healthChanged();
    EXPECT_TRUE(hint().contains(QStringLiteral("Sound"))) << "the loudspeaker is gone";
}

TEST_F(BeforeTheStart, IsKeptWithTheRunAndNotWithTheNext)
{
    QTest::mouseClick(button("prepareTests"), Qt::LeftButton);
    QTest::mouseClick(button("prepareSkip"), Qt::LeftButton);
    type("the same as in March");
    press(Qt::Key_Return);
    QTest::mouseClick(button("start"), Qt::LeftButton);
    ASSERT_TRUE(rig.session->current());
    const auto kept = rig.session->setup().prepared;
    ASSERT_EQ(kept.size(), Preparation::all.size());
    for (const Prepared& each : kept)
        EXPECT_EQ(each.state,
                  each.what == Preparing::Tests ? Prepared::State::Skipped : Prepared::State::Open);
    EXPECT_EQ(kept[1].why, "the same as in March");
    EXPECT_EQ(kept[1].at, rig.clock->now());

    ASSERT_FALSE(rig.session->end());
    rig.session->leave();
    rig.find<QPushButton>("toSetup")->click();
    QTest::mouseClick(button("start"), Qt::LeftButton);
    ASSERT_TRUE(rig.session->current());
    for (const Prepared& each : rig.session->setup().prepared)
        EXPECT_EQ(each.state, Prepared::State::Open);
}

TEST_F(BeforeTheStart, AsksBeforeEachRunWhetherTheAlarmsAreHeard)
{
    hear();
    QTest::mouseClick(button("start"), Qt::LeftButton);
    ASSERT_TRUE(rig.session->current());
    EXPECT_EQ(rig.session->setup().prepared[0].state, Prepared::State::Done);
    ASSERT_FALSE(rig.session->end());
    rig.session->leave();
    rig.find<QPushButton>("toSetup")->click();
    EXPECT_TRUE(hint().contains(QStringLiteral("Sound"))) << hint().toStdString();
}

TEST_F(BeforeTheStart, LetsTheScreenTellAtOnceWhatNobodySaidTheyHear)
{
    QTest::mouseClick(button("start"), Qt::LeftButton);
    rig.goOn(std::chrono::seconds{1});
    EXPECT_TRUE(rig.find<QWidget>("alert")->isVisible());
}

TEST_F(BeforeTheStart, StartlesNobodyWhoHearsTheAlarms)
{
    hear();
    QTest::mouseClick(button("start"), Qt::LeftButton);
    rig.goOn(std::chrono::seconds{1});
    EXPECT_FALSE(rig.find<QWidget>("alert")->isVisible());
}

}  // namespace
