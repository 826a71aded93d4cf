#include "app/desktop/lanes/lane_card.h"
#include "app/desktop/look/strand_widget.h"
#include "app/session/time_zones.h"
#include "app/view/lane_view.h"
#include "tests/app/desktop/rig.h"

#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMimeData>
#include <QPushButton>
#include <QTabBar>
#include <QTest>

#include <gtest/gtest.h>

using namespace app::desktop;
using core::service::Service;

namespace {

/// Several heads that are planned together and run as one.
class Heads : public testing::Test {
protected:
    Heads() { document().replaceAll({{called("The ghost"), {}}, {called("The countess"), {}}}); }

    static Service called(const char* name)
    {
        Service service = rig::Rig::service();
        service.name = name;
        service.head.name = name;
        return service;
    }

    ServiceDocument& document() { return rig.window->document(); }
    QTabBar* tabs() const { return rig.find<QTabBar>("heads"); }
    StrandWidget* strands() const { return rig.find<StrandWidget>("strands"); }
    bool isPlanned() const { return !strands()->isStale() && !strands()->picture().strands.empty(); }
    QString write(const char* name, const Service& service) const
    {
        const QString path = rig.folder.filePath(QLatin1String{name});
        EXPECT_FALSE(
            (ServiceFiles{std::make_shared<app::session::QtTimeZones>(), "UTC"}.write(path, service)));
        return path;
    }

    rig::Rig rig;
};

TEST_F(Heads, HaveATabEachAndArePlannedTogether)
{
    ASSERT_TRUE(rig::Rig::wait([this] { return isPlanned(); }));
    ASSERT_EQ(tabs()->count(), 2);
    EXPECT_EQ(tabs()->tabText(0), QStringLiteral("The ghost"));
    EXPECT_EQ(tabs()->tabText(1), QStringLiteral("The countess"));

    // One pair of hands: what is applied on one head is never while something is applied on the other.
    const auto first = strands()->picture();
    tabs()->setCurrentIndex(1);
    EXPECT_TRUE(isPlanned());  // It is planned already, so it is there at once.
    const auto second = strands()->picture();
    for (const auto& one : first.strands)
        for (const auto& other : second.strands)
            EXPECT_TRUE(one.application.until <= other.application.from
                        || other.application.until <= one.application.from);
    ASSERT_EQ(first.hands.size(), 1u);
    EXPECT_TRUE(std::ranges::any_of(first.hands[0].jobs, &app::view::HandsJob::elsewhere));
}

TEST_F(Heads, ChangeApartAndUndoTogether)
{
    tabs()->setCurrentIndex(1);
    document().edit(QStringLiteral("the target"), [](Service& service) {
        service.coats[0].zones[0].develop.target = std::chrono::minutes{22};
    });
    tabs()->setCurrentIndex(0);
    EXPECT_EQ(document().service().coats[0].zones[0].develop.target, std::chrono::minutes{20});

    document().undoStack().undo();
    EXPECT_EQ(tabs()->currentIndex(), 1);  // What is undone is shown.
    EXPECT_EQ(document().service().coats[0].zones[0].develop.target, std::chrono::minutes{20});
}

TEST_F(Heads, ShareOneCrew)
{
    document().edit(QStringLiteral("the basins"), [](Service& service) { service.crew.basins = 2; });
    EXPECT_EQ(document().services()[1].crew.basins, 2u);
    document().undoStack().undo();
    EXPECT_EQ(document().services()[1].crew.basins, 1u);
}

TEST_F(Heads, AreAddedAndTakenOutAndBothCanBeUndone)
{
    document().addHead({called("The fishmonger"), {}});
    EXPECT_EQ(document().undoStack().undoText(), QStringLiteral("adding The fishmonger"));
    ASSERT_EQ(tabs()->count(), 3);
    EXPECT_EQ(tabs()->currentIndex(), 2);
    rig.find<QPushButton>("removeHead")->click();
    EXPECT_EQ(document().undoStack().undoText(), QStringLiteral("removing The fishmonger"));
    ASSERT_EQ(tabs()->count(), 2);
    document().undoStack().undo();
    EXPECT_EQ(tabs()->count(), 3);
    document().undoStack().undo();
    EXPECT_EQ(tabs()->count(), 2);
}

TEST_F(Heads, SayWhoseCrewIsKept)
{
    document().edit(QStringLiteral("the basins"), [](Service& service) { service.crew.basins = 2; });
    Service other = called("The fishmonger");
    other.crew.hands.push_back({"Mate", {}, {}});
    document().addHead({other, {}});
    EXPECT_EQ(document().services()[2].crew.hands.size(), 1u);
    EXPECT_TRUE(
        rig.find<QLabel>("crewNote")->text().contains(QStringLiteral("2 pairs of hands here, 1 there")))
        << rig.find<QLabel>("crewNote")->text().toStdString();

    document().replaceAll({{called("The ghost"), {}}, {other, {}}});  // Only one names a crew: all have it.
    EXPECT_EQ(document().services()[0].crew.hands.size(), 2u);
    EXPECT_TRUE(rig.find<QLabel>("crewNote")->text().isEmpty());
}

TEST_F(Heads, SayWhoseProblemItIsAndGoThere)
{
    tabs()->setCurrentIndex(1);
    document().edit(QStringLiteral("a limit"), [](Service& service) {
        service.coats[0].zones[0].develop.most = std::chrono::minutes{1};
    });
    tabs()->setCurrentIndex(0);
    auto* problems = rig.find<QListWidget>("problems");
    ASSERT_EQ(problems->count(), 1);
    EXPECT_TRUE(problems->item(0)->text().startsWith(QStringLiteral("The countess: ")));
    EXPECT_FALSE(rig.find<QPushButton>("start")->isEnabled());

    Q_EMIT problems->itemActivated(problems->item(0));
    EXPECT_EQ(tabs()->currentIndex(), 1);
}

TEST_F(Heads, RunAsOneAndAreNamedOnEveryPromptAndLane)
{
    rig.startLanes();
    ASSERT_TRUE(rig.session->current());
    ASSERT_EQ(rig.session->services().size(), 2u);
    EXPECT_TRUE(rig.find<QLabel>("fileName")->text().contains(QStringLiteral("The ghost and The countess")));
    for (const char* lane : {"lane1", "lane2"})
        EXPECT_EQ(rig.find<LaneCard>(lane)->lane().head, "The ghost");
    for (const char* lane : {"lane3", "lane4"})
        EXPECT_TRUE(rig.find<LaneCard>(lane)->accessibleName().startsWith(QStringLiteral("The countess: ")));

    for (int step = 0; step < 60 && !rig.session->state().finished; ++step) {
        const core::run::Prompt prompt = rig.session->state().prompts.front();
        const QString head =
            QString::fromStdString(app::view::headOf(rig.session->services(), prompt.task.service));
        rig.goOn(std::max(rig::Seconds{0}, rig::Seconds{prompt.due - rig.clock->now()}));
        const bool alert = rig.find<QWidget>("alert")->isVisible();
        EXPECT_TRUE(rig.find<QLabel>(alert ? "alertHeadline" : "nowSentence")
                        ->text()
                        .contains(head + QStringLiteral(": ")))
            << rig.find<QLabel>(alert ? "alertHeadline" : "nowSentence")->text().toStdString();
        rig.settle();
        if (prompt.asks == core::run::Prompt::Asks::Look)
            rig.find<QPushButton>("leave")->click();
        else
            QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
    }
    EXPECT_TRUE(rig.session->state().finished);
}

TEST_F(Heads, AreOpenedFromSeveralFilesAndOpenedAgain)
{
    const QStringList paths{write("one.json", called("The ghost")),
                            write("two.json", called("The countess"))};
    document().replace(rig::Rig::service(), {});
    ASSERT_TRUE(rig.window->files().open(paths));
    ASSERT_EQ(document().services().size(), 2u);
    EXPECT_EQ(document().pathOf(1), paths[1]);
    EXPECT_FALSE(document().isChanged());
    EXPECT_EQ(rig.settings->value(QStringLiteral("open")).toStringList(), paths);
}

TEST_F(Heads, OfAFileThatCannotBeReadAddsNone)
{
    const QString good = write("one.json", called("The fishmonger"));
    rig.pressInDialog("notOpened", "OK");
    EXPECT_FALSE(rig.window->files().add({good, rig.folder.filePath(QStringLiteral("nowhere.json"))}));
    EXPECT_EQ(document().services().size(), 2u);
}

TEST_F(Heads, DraggedInComeBesideOrInsteadAsThePersonSays)
{
    const QString path = write("one.json", called("The fishmonger"));
    rig.pressInDialog("beside", "Plan together");
    rig.window->files().receive({path});
    ASSERT_EQ(document().services().size(), 3u);
    EXPECT_EQ(document().service().name, "The fishmonger");

    document().undoStack().undo();
    rig.pressInDialog("beside", "Open in its place");
    rig.window->files().receive({path});
    EXPECT_EQ(document().services().size(), 1u);
}

TEST_F(Heads, OfTheDemoFitTogether)
{
    ASSERT_TRUE(rig.window->files().openPremiere());
    EXPECT_EQ(tabs()->count(), 3);
}

}  // namespace
