#include "app/desktop/lanes/lane_card.h"
#include "app/desktop/language.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/strand_geometry.h"
#include "tests/app/desktop/pictures/scenes.h"
#include "tests/app/desktop/sizes/cut.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

#include <map>

// Nothing is cut, covered or outside the window, at any size and with large text.

namespace {

using app::desktop::LaneCard;
using app::desktop::StrandGeometry;

struct Wanted {
    int text = 100;  ///< Its size in percent.
    const char* language = "en";
};

class Sizes : public testing::TestWithParam<Wanted> {
protected:
    Sizes() { app::desktop::language::use(QLatin1String{GetParam().language}); }
    ~Sizes() override
    {
        app::desktop::language::use(QStringLiteral("en"));
        app::desktop::Theme{*qobject_cast<QApplication*>(QCoreApplication::instance())}.setTextSize(100);
    }
};

TEST_P(Sizes, LeaveNothingCut)
{
    for (const pictures::Scene& scene : pictures::scenes()) {
        rig::Rig rig{[](app::desktop::Theme& theme) { theme.setTextSize(GetParam().text); }};
        scene.stage(rig);
        for (const QSize& size : {QSize{1024, 700}, QSize{1280, 800}, QSize{1920, 1080}, QSize{3840, 2160}}) {
            QWidget& shown = pictures::shownBy(rig);
            shown.resize(size);
            QTest::qWait(100);
            // On a busy machine it takes longer until everything is laid out.
            rig::Rig::wait([&shown] { return sizes::cutIn(shown).isEmpty(); }, 3000);
            EXPECT_EQ(shown.size(), size) << scene.name.toStdString();
            EXPECT_EQ(sizes::cutIn(shown).join(QLatin1Char{'\n'}).toStdString(), "")
                << scene.name.toStdString() << " at " << size.width() << " x " << size.height();
        }
    }
}

TEST_P(Sizes, LeaveRoomForTheTableAndForStrandsInASmallWindow)
{
    rig::Rig rig{[](app::desktop::Theme& theme) { theme.setTextSize(GetParam().text); }};
    pictures::scenes().front().stage(rig);
    rig.window->resize(1024, 700);
    QTest::qWait(100);
    const auto* zones = rig.find<QTableView>("zones");
    const int rows = app::desktop::Theme::textIsLarge() ? 4 : 3;
    EXPECT_TRUE(
        rig::Rig::wait([&] { return zones->viewport()->height() >= rows * zones->rowHeight(0); }, 3000));
    const QWidget* picture = rig.find<QWidget>("strands")->parentWidget();
    EXPECT_GE(picture->height(), StrandGeometry::axisHeight() + 2 * StrandGeometry::leastRow());
    EXPECT_FALSE(rig.find<QPushButton>("start")->visibleRegion().isEmpty());
    // What is above the table scrolls away too, where the table would not have room else.
    const auto* page = rig.find<QScrollArea>("setupScroll");
    page->verticalScrollBar()->setValue(zones->mapTo(page->widget(), QPoint{}).y());
    EXPECT_EQ(zones->visibleRegion().boundingRect().height(), zones->height());
}

/// Buttons that each stop of the tour speaks of.
const std::map<QString, QStringList> spokenOf{
    {QStringLiteral("tour-step"), {QStringLiteral("nowButton")}},
    {QStringLiteral("tour-look"),
     {QStringLiteral("leave"), QStringLiteral("lookAgain"), QStringLiteral("rinseZone")}},
    {QStringLiteral("tour-alarm"), {QStringLiteral("alertButton")}},
};

TEST_P(Sizes, LeaveNoButtonOfTheTourBehindItsCard)
{
    for (const pictures::Scene& scene : pictures::scenes()) {
        if (!scene.name.startsWith(QLatin1String{"tour-"}))
            continue;
        rig::Rig rig{[](app::desktop::Theme& theme) { theme.setTextSize(GetParam().text); }};
        scene.stage(rig);
        QWidget& tour = pictures::shownBy(rig);
        tour.resize(1024, 700);
        QTest::qWait(200);
        const auto* view = tour.findChild<QAbstractScrollArea*>(QStringLiteral("tourView"))->viewport();
        const auto found = spokenOf.find(scene.name);
        for (const auto* button : view->findChildren<QAbstractButton*>()) {
            const int top = button->mapTo(view, QPoint{}).y();
            const bool whole = top + button->height() <= view->height();
            const bool spoken = found != spokenOf.end() && found->second.contains(button->objectName());
            if (button->isVisible()) {
                EXPECT_TRUE(whole || (!spoken && top >= view->height()))
                    << scene.name.toStdString() << ": " << button->text().toStdString() << " from " << top
                    << ", of " << view->height() << " that can be seen";
            }
        }
    }
}

TEST_P(Sizes, LeaveTheDigitsOfTheFarViewTwentyMillimetresHigh)
{
    rig::Rig rig{[](app::desktop::Theme& theme) { theme.setTextSize(GetParam().text); }};
    for (const pictures::Scene& scene : pictures::scenes())
        if (scene.name == QLatin1String{"lanes-far"})
            scene.stage(rig);
    rig.window->resize(1024, 700);
    QTest::qWait(100);
    const auto* card = rig.find<LaneCard>("strip1");
    ASSERT_NE(card, nullptr);
    ASSERT_TRUE(card->isVisible());
    EXPECT_TRUE(rig::Rig::wait(
        [card] { return LaneCard::compactDigits(card->size()) >= app::desktop::metrics::textDigits; }, 3000))
        << LaneCard::compactDigits(card->size()) << " on " << card->width() << " x " << card->height();
}

// Where text is as usual: the list before the start and what can be done with a record card.
TEST_P(Sizes, LeaveButtonsOnOneLineInASmallWindow)
{
    if (GetParam().text > 100)
        return;
    for (const char* language : {"en", "de", "fr", "es"}) {
        app::desktop::language::use(QLatin1String{language});
        for (const pictures::Scene& scene : pictures::scenes()) {
            const bool card = scene.name == QLatin1String{"card"};
            if (!card && scene.name != QLatin1String{"setup"})
                continue;
            rig::Rig rig;
            scene.stage(rig);
            QWidget& shown = pictures::shownBy(rig);
            shown.resize(1024, 700);
            QTest::qWait(100);
            const auto* first =
                shown.findChild<QWidget*>(QLatin1String{card ? "recordsAgain" : "prepareSound"});
            const auto* last =
                shown.findChild<QWidget*>(QLatin1String{card ? "recordsClose" : "prepareBowls"});
            EXPECT_EQ(first->y(), last->y()) << language << ", " << scene.name.toStdString();
        }
    }
}

std::string called(const testing::TestParamInfo<Wanted>& wanted)
{
    return wanted.param.language + std::to_string(wanted.param.text);
}

#ifdef EVERY_LOOK
INSTANTIATE_TEST_SUITE_P(Every, Sizes,
                         testing::Values(Wanted{150}, Wanted{100, "de"}, Wanted{150, "fr"},
                                         Wanted{150, "es"}),
                         called);
#else
// German has the longest words.
INSTANTIATE_TEST_SUITE_P(Text, Sizes, testing::Values(Wanted{100}, Wanted{200}, Wanted{150, "de"}), called);

// The test of the test.
TEST(Cut, IsSeen)
{
    QWidget window;
    auto* label = new QLabel{QStringLiteral("Something that wants more room"), &window};
    auto* button = new QPushButton{QStringLiteral("Press"), &window};
    label->setGeometry(0, 0, 20, 20);
    button->setGeometry(10, 0, 200, 60);
    window.resize(400, 100);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    const QString found = sizes::cutIn(window).join(QLatin1Char{'\n'});
    EXPECT_TRUE(found.contains(QStringLiteral("too narrow"))) << found.toStdString();
    EXPECT_TRUE(found.contains(QStringLiteral("overlap"))) << found.toStdString();

    button->setMask(QRegion{150, 0, 50, 60});
    EXPECT_FALSE(sizes::cutIn(window).join(QLatin1Char{'\n'}).contains(QStringLiteral("overlap")))
        << "the shape of the button is elsewhere";
    button->clearMask();
    label->setGeometry(0, 70, 380, 25);
    EXPECT_TRUE(sizes::cutIn(window).isEmpty()) << sizes::cutIn(window).join(QLatin1Char{'\n'}).toStdString();
    button->setGeometry(300, 0, 200, 60);
    EXPECT_TRUE(sizes::cutIn(window).join(QLatin1Char{'\n'}).contains(QStringLiteral("sticks out")));
}
#endif

}  // namespace
