#include "app/desktop/look/metrics.h"
#include "app/desktop/look/strand_widget.h"
#include "app/desktop/setup/part_table.h"
#include "tests/app/desktop/rig.h"

#include <QAction>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

using namespace app::desktop;

namespace {

class SetUp : public testing::Test {
protected:
    SetUp() { rig.window->document().replace(rig::Rig::service(), {}); }

    StrandWidget* strands() const { return rig.find<StrandWidget>("strands"); }
    bool isPlanned() const { return !strands()->isStale() && !strands()->picture().strands.empty(); }
    /// The button of a cure; nothing where there is none to press.
    QPushButton* cure(int number) const
    {
        for (QPushButton* button :
             rig.window->findChildren<QPushButton*>(QStringLiteral("cure%1").arg(number)))
            if (button->isVisible())
                return button;
        return nullptr;
    }
    QPushButton* start() const { return rig.find<QPushButton>("start"); }

    void type(int row, int column, const char* entry)
    {
        auto* model = rig.find<QTableView>("zones")->model();
        model->setData(model->index(row, column), QString::fromLatin1(entry));
    }

    static constexpr int targetColumn = 7;
    static constexpr int mostColumn = 8;

    rig::Rig rig;
};

TEST_F(SetUp, LeavesThePlanInViewAlsoAfterTheHeadWasShown)
{
    rig.window->resize(1024, 700);
    ASSERT_TRUE(rig::Rig::wait([this] { return isPlanned(); }));
    const auto inView = [this] { return strands()->visibleRegion().boundingRect().height(); };
    constexpr int oneZoneAndTheHours = 60;
    ASSERT_TRUE(rig::Rig::wait([&] { return inView() >= oneZoneAndTheHours; })) << inView();

    auto* parts = rig.find<QTabWidget>("parts");
    parts->setCurrentWidget(rig.find<QWidget>("headPanel"));
    QTest::qWait(100);
    parts->setCurrentIndex(0);
    EXPECT_TRUE(rig::Rig::wait([&] { return inView() >= oneZoneAndTheHours; })) << inView();
}

TEST_F(SetUp, ShowsTheStaggerOfWhatWasOpened)
{
    ASSERT_TRUE(rig::Rig::wait([this] { return isPlanned(); }));

    const auto& picture = strands()->picture();
    ASSERT_EQ(picture.strands.size(), 2u);
    EXPECT_EQ(picture.rinseLines.size(), 1u);
    // By hand: the root's 20 minutes and the ends' 10 end together; the ends go on 4 minutes before their 10.
    EXPECT_EQ(picture.strands[0].development(), std::chrono::minutes{20});
    EXPECT_EQ(picture.strands[1].development(), std::chrono::minutes{10});
    EXPECT_EQ(picture.strands[1].application.from - picture.strands[0].application.from,
              std::chrono::minutes{11});
    EXPECT_TRUE(start()->isEnabled());
}

TEST_F(SetUp, NeverShowsThePlanOfWhatWas)
{
    ASSERT_TRUE(rig::Rig::wait([this] { return isPlanned(); }));
    type(0, targetColumn, "22");

    EXPECT_TRUE(strands()->isStale());
    EXPECT_FALSE(start()->isEnabled());
    ASSERT_TRUE(rig::Rig::wait([this] { return isPlanned(); }));
    EXPECT_EQ(strands()->picture().strands[0].development(), std::chrono::minutes{22});
}

// The picture of before is drawn again, pale, until the plan without the zone is there.
TEST_F(SetUp, DrawsThePictureOfAZoneThatIsGone)
{
    ASSERT_TRUE(rig::Rig::wait([this] { return isPlanned(); }));
    rig.window->document().edit(QStringLiteral("a zone"),
                                [](auto& service) { service.coats[0].zones.pop_back(); });
    ASSERT_TRUE(strands()->isStale());
    EXPECT_FALSE(strands()->grab().isNull());
    ASSERT_TRUE(rig::Rig::wait([this] { return isPlanned(); }));
    EXPECT_EQ(strands()->picture().strands.size(), 1u);
}

TEST_F(SetUp, SaysWhatIsWrongAndGoesThere)
{
    type(0, mostColumn, "12");

    auto* problems = rig.find<QListWidget>("problems");
    ASSERT_EQ(problems->count(), 1);
    EXPECT_TRUE(problems->isVisible());
    EXPECT_FALSE(strands()->isVisible());
    EXPECT_FALSE(start()->isEnabled());

    Q_EMIT problems->itemActivated(problems->item(0));
    const QModelIndex cell = rig.find<QTableView>("zones")->currentIndex();
    EXPECT_EQ(cell.column(), mostColumn);
    EXPECT_EQ(cell.row(), 0);
    EXPECT_FALSE(rig.find<QLabel>("zonesWrong")->text().isEmpty());
}

TEST_F(SetUp, PlansAgainOnceItIsPutRight)
{
    type(0, mostColumn, "12");
    rig.window->document().undoStack().undo();

    EXPECT_TRUE(rig::Rig::wait([this] { return isPlanned() && start()->isEnabled(); }));
    EXPECT_FALSE(rig.find<QListWidget>("problems")->isVisible());
}

TEST_F(SetUp, SaysWhyNothingFits)
{
    rig.window->document().edit(QStringLiteral("a promise"), [](auto& service) {
        service.readyBy = rig::morning + std::chrono::minutes{10};
    });

    auto* summary = rig.find<QLabel>("planSummary");
    ASSERT_TRUE(rig::Rig::wait([&] { return !strands()->isVisible(); }));
    EXPECT_FALSE(summary->text().isEmpty());
    EXPECT_FALSE(start()->isEnabled());
}

TEST_F(SetUp, OffersWhatWouldMakeItFitAsButtonsThatCanBeUndone)
{
    const auto promise = rig::morning + std::chrono::minutes{20};
    rig.window->document().edit(QStringLiteral("a promise"),
                                [promise](auto& service) { service.readyBy = promise; });
    ASSERT_TRUE(rig::Rig::wait([this] { return cure(1) != nullptr; }));
    EXPECT_FALSE(rig.find<QLabel>("planSummary")->text().isEmpty());
    EXPECT_GE(cure(1)->height(), metrics::target);
    const QString what = cure(1)->accessibleName();
    EXPECT_FALSE(cure(1)->accessibleDescription().isEmpty());

    cure(1)->click();
    ASSERT_TRUE(rig::Rig::wait([this] { return isPlanned() && start()->isEnabled(); }));
    EXPECT_EQ(rig.find<QAction>("undo")->text(), QStringLiteral("Undo %1").arg(what));
    EXPECT_EQ(cure(1), nullptr);

    rig.find<QAction>("undo")->trigger();
    EXPECT_EQ(rig.window->document().service().readyBy, promise);
    EXPECT_TRUE(rig::Rig::wait([this] { return cure(1) != nullptr; }));
}

TEST_F(SetUp, DropsTheCuresOfWhatWasChangedMeanwhile)
{
    rig.window->document().edit(QStringLiteral("a promise"), [](auto& service) {
        service.readyBy = rig::morning + std::chrono::minutes{20};
    });
    ASSERT_TRUE(rig::Rig::wait([this] { return cure(1) != nullptr; }));
    rig.window->document().edit(QStringLiteral("no promise"), [](auto& service) { service.readyBy.reset(); });
    EXPECT_EQ(cure(1), nullptr);
    EXPECT_TRUE(rig::Rig::wait([this] { return isPlanned(); }));
}

TEST_F(SetUp, SaysInMinutesWhatThePlanHoldsFor)
{
    const auto* holding = rig.find<QLabel>("planHolding");
    ASSERT_TRUE(rig::Rig::wait([this] { return isPlanned(); }));
    EXPECT_FALSE(holding->isVisible());  // Applying takes as long as it takes.

    rig.window->document().edit(QStringLiteral("a range"), [](auto& service) {
        service.coats[0].zones[0].apply = {std::chrono::minutes{4}, std::chrono::minutes{5},
                                           std::chrono::minutes{7}};
    });
    ASSERT_TRUE(rig::Rig::wait([&] { return holding->text().contains(QStringLiteral("Forecast")); }));
    EXPECT_TRUE(holding->isVisible());
    EXPECT_TRUE(holding->text().contains(QStringLiteral("Holds even if Root takes up to 7 min (or only 4)")))
        << holding->text().toStdString();
    EXPECT_TRUE(holding->text().contains(QStringLiteral("inside its limits every time")));
    EXPECT_FALSE(holding->text().contains(QLatin1Char{'%'}));
    const auto& strands = this->strands()->picture().strands;
    ASSERT_TRUE(strands[0].forecast && strands[1].forecast);
    EXPECT_EQ(strands[0].forecast->inside, strands[0].forecast->runs);
}

TEST_F(SetUp, AddsAZoneAndTakesItBack)
{
    rig.find<QPushButton>("zonesAdd")->click();
    EXPECT_EQ(rig.find<QTableView>("zones")->model()->rowCount(), 3);
    rig.find<QAction>("undo")->trigger();
    EXPECT_EQ(rig.find<QTableView>("zones")->model()->rowCount(), 2);
}

}  // namespace
