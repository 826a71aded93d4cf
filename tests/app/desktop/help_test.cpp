#include "app/desktop/help/help_sheet.h"

#include "app/desktop/language.h"
#include "app/desktop/records/records_window.h"
#include "app/desktop/sound_check.h"
#include "tests/app/desktop/rig.h"

#include <QAction>
#include <QApplication>
#include <QImage>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>

// What F1 shows on each page, and that it is never in the way.

using namespace app::desktop;

namespace {

class Help : public testing::Test {
protected:
    Help() { rig.window->document().replace(rig::Rig::service(), {}); }

    void press(Qt::Key key)
    {
        QWidget* const keyboard = rig.window->focusWidget();
        rig.settle();
        QTest::keyClick(keyboard != nullptr ? keyboard : rig.window.get(), key);
        QTest::qWait(200);  // A button that was clicked by its key lets go.
    }
    bool shows(const char* name) const { return rig.find<QWidget>(name)->isVisible(); }
    static QString titleOf(const QWidget& sheet)
    {
        return sheet.findChild<QLabel*>(QStringLiteral("helpTitle"))->text();
    }

    rig::Rig rig;
};

TEST_F(Help, OfEachPageIsShownByTheSameKey)
{
    press(Qt::Key_F1);
    EXPECT_TRUE(shows("setupHelp"));
    EXPECT_EQ(titleOf(*rig.find<QWidget>("setupHelp")), helpText(HelpFor::Setup).title);
    press(Qt::Key_F1);
    EXPECT_FALSE(shows("setupHelp"));

    rig.startLanes();
    press(Qt::Key_F1);
    EXPECT_TRUE(shows("lanesHelp"));
    EXPECT_EQ(titleOf(*rig.find<QWidget>("lanesHelp")), helpText(HelpFor::Lanes).title);

    rig.find<QAction>("fileRecords")->trigger();
    auto* records = rig.find<RecordsWindow>("records");
    records->activateWindow();
    // A window counts as active already while the one that it belongs to is.
    ASSERT_TRUE(rig::Rig::wait([&] { return QApplication::activeWindow() == records; }));
    QTest::keyClick(records, Qt::Key_F1);
    EXPECT_TRUE(shows("recordsHelp"));
    EXPECT_EQ(titleOf(*rig.find<QWidget>("recordsHelp")), helpText(HelpFor::Records).title);
    QTest::keyClick(records, Qt::Key_Escape);
    EXPECT_TRUE(rig::Rig::wait([this] { return !shows("recordsHelp"); }));
    EXPECT_TRUE(records->isVisible());
}

TEST_F(Help, OfTheSoundCheckLeavesItsAlarmsToBePlayed)
{
    SoundCheck check{*rig.theme, rig.sound, rig.window.get()};
    check.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&check));
    check.activateWindow();
    ASSERT_TRUE(rig::Rig::wait([&] { return QApplication::activeWindow() == &check; }));
    const auto part = [&check](const char* name) { return check.findChild<QWidget*>(QLatin1String{name}); };
    const QSize before = check.size();
    QTest::keyClick(&check, Qt::Key_F1);
    ASSERT_TRUE(part("soundHelp")->isVisible());
    EXPECT_EQ(titleOf(*part("soundHelp")), helpText(HelpFor::Sound).title);
    EXPECT_TRUE(check.isVisible());
    // On a narrow screen it stands in the place of the check, else beside it.
    if (part("playWater")->isVisible()) {
        QTest::keyClick(&check, Qt::Key_4);
        EXPECT_TRUE(rig::Rig::wait([this] { return rig.sound.checks == 1; }));
    }
    QTest::keyClick(&check, Qt::Key_Escape);
    EXPECT_TRUE(rig::Rig::wait([&] { return !part("soundHelp")->isVisible(); }));
    EXPECT_TRUE(check.isVisible());
    EXPECT_TRUE(part("playWater")->isVisible());
    EXPECT_EQ(check.size(), before);
    QTest::keyClick(&check, Qt::Key_Return);
    EXPECT_EQ(check.verdict(), SoundCheck::Verdict::Heard) << "Enter answers as before";
}

TEST_F(Help, NamesOnlyKeysThatTheWindowHas)
{
    rig.startLanes();
    rig.find<QAction>("fileRecords")->trigger();
    const SoundCheck check{*rig.theme, rig.sound, rig.window.get()};
    const std::pair<HelpFor, const QWidget*> pages[] = {
        {HelpFor::Setup, rig.window.get()},
        {HelpFor::Lanes, rig.window.get()},
        {HelpFor::Records, rig.find<RecordsWindow>("records")},
        {HelpFor::Sound, &check}};
    for (const auto& [page, window] : pages)
        for (const HelpText::Key& key : helpText(page).keys) {
            for (const char* part : key.parts)
                EXPECT_FALSE(keysOf(*window, {{part}, {}}).isEmpty()) << part << " has no key";
            EXPECT_FALSE(keysOf(*window, key).isEmpty()) << key.what.toStdString();
        }
    EXPECT_TRUE(keysOf(*rig.window, {{"nothingOfThisName"}, {}}).isEmpty());
    EXPECT_EQ(keysOf(*rig.window, {{"leave", "lookAgain", "rinseZone"}, {}}), QStringLiteral("1, 2, 3"));
}

TEST_F(Help, LeavesRoomForWhatAKeyDoesInEveryLanguage)
{
    for (const language::Offered& each : language::offered()) {
        language::use(each.code);
        rig.openWindow();
        rig.window->resize(1024, 700);
        press(Qt::Key_F1);
        const auto* sheet = rig.find<QWidget>("setupHelp");
        ASSERT_TRUE(sheet->isVisible());
        for (const auto* meaning : sheet->findChildren<QLabel*>(QStringLiteral("keyMeaning")))
            EXPECT_GE(meaning->width(), 140)
                << each.code.toStdString() << ": " << meaning->text().toStdString();
    }
    language::use(QStringLiteral("en"));
}

TEST_F(Help, LeavesTheKeyboardToTheOneThingToDo)
{
    rig.startLanes();
    const QWidget* const button = rig.find<QPushButton>("nowButton");
    press(Qt::Key_F1);
    ASSERT_TRUE(shows("lanesHelp"));
    EXPECT_EQ(rig.window->focusWidget(), button);
    EXPECT_TRUE(button->isVisible());
    EXPECT_TRUE(shows("nowSentence"));
    press(Qt::Key_Return);
    EXPECT_EQ(rig.session->facts().size(), 1U);
    EXPECT_TRUE(shows("lanesHelp"));
    press(Qt::Key_Escape);
    EXPECT_FALSE(shows("lanesHelp"));
    EXPECT_EQ(rig.window->focusWidget(), button);

    // Also from somebody who went into the help to read it.
    press(Qt::Key_F1);
    rig.find<QWidget>("lanesHelp")->findChild<QPushButton*>(QStringLiteral("helpClose"))->setFocus();
    press(Qt::Key_Escape);
    EXPECT_FALSE(shows("lanesHelp"));
    EXPECT_EQ(rig.window->focusWidget(), button);
}

TEST_F(Help, GivesTheKeyboardBackInSetUp)
{
    QWidget* const zones = rig.find<QWidget>("zones");
    ASSERT_NE(zones, nullptr);
    zones->setFocus();
    press(Qt::Key_F1);
    EXPECT_EQ(rig.window->focusWidget(), zones);
    rig.find<QWidget>("setupHelp")->findChild<QPushButton*>(QStringLiteral("helpClose"))->setFocus();
    press(Qt::Key_Escape);
    EXPECT_EQ(rig.window->focusWidget(), zones);
    EXPECT_TRUE(shows("start"));

    // Where both have no room the table gives way, and has the keyboard again afterwards.
    rig.window->resize(1024, 700);
    QTest::qWait(50);
    press(Qt::Key_F1);
    EXPECT_FALSE(zones->isVisible());
    EXPECT_TRUE(shows("start"));
    press(Qt::Key_Escape);
    EXPECT_TRUE(zones->isVisible());
    EXPECT_EQ(rig.window->focusWidget(), zones);
}

TEST_F(Help, GivesWayAtOnceToAnAlarmThatTakesTheWindow)
{
    rig.sound.works = false;  // Every due step takes the window then.
    rig.startLanes();
    for (int waited = 0; !shows("alert") && waited < 3; ++waited)
        rig.goOn(std::chrono::seconds{10});
    ASSERT_TRUE(shows("alert"));
    press(Qt::Key_F1);
    EXPECT_FALSE(shows("lanesHelp")) << "not in the place of an alarm";

    press(Qt::Key_Return);  // Root is being applied, and nothing is due.
    ASSERT_FALSE(shows("alert"));
    press(Qt::Key_F1);
    ASSERT_TRUE(shows("lanesHelp"));
    rig.goOn(std::chrono::minutes{5} + std::chrono::seconds{5});
    ASSERT_TRUE(shows("alert"));
    EXPECT_FALSE(shows("lanesHelp"));
    press(Qt::Key_Return);
    EXPECT_EQ(rig.session->facts().size(), 2U) << "Enter is the answer to the alarm";
}

TEST_F(Help, IsClosedByWhatElseAsksForItsRoom)
{
    rig.startLanes();
    press(Qt::Key_F1);
    press(Qt::Key_M);
    EXPECT_TRUE(shows("more"));
    EXPECT_FALSE(shows("lanesHelp"));
    press(Qt::Key_F1);
    EXPECT_FALSE(shows("more"));
    EXPECT_TRUE(shows("lanesHelp"));
    const auto lanes = rig.window->findChildren<QWidget*>(QStringLiteral("lane1"));
    EXPECT_TRUE(std::ranges::any_of(lanes, &QWidget::isVisible)) << "the digits stay in view";
}

TEST_F(Help, IsReadOnWithKeys)
{
    rig.startLanes();
    rig.window->resize(1024, 700);
    press(Qt::Key_F1);
    const QScrollBar* const bar = rig.find<QWidget>("lanesHelp")
                                      ->findChild<QScrollArea*>(QStringLiteral("helpScroll"))
                                      ->verticalScrollBar();
    ASSERT_GT(bar->maximum(), 0);
    press(Qt::Key_PageDown);
    EXPECT_GT(bar->value(), 0);
    press(Qt::Key_PageUp);
    EXPECT_EQ(bar->value(), 0);
}

// A shape that is not there would leave the sample of a bare strand.
TEST_F(Help, DrawsEachShapeDifferently)
{
    using Kind = StrandSample::Kind;
    QList<QImage> drawn;
    for (const Kind kind :
         {Kind::Applied, Kind::Develops, Kind::Filled, Kind::Water, Kind::Window, Kind::Broken, Kind::Looks,
          Kind::Late, Kind::Forecast, Kind::Planned, Kind::Hands}) {
        StrandSample sample{*rig.theme, kind};
        sample.resize(sample.sizeHint());
        const QImage image = sample.grab().toImage();
        EXPECT_FALSE(drawn.contains(image)) << static_cast<int>(kind);
        drawn << image;
    }
}

}  // namespace
