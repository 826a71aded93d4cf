#include "app/desktop/records/card_view.h"
#include "app/desktop/records/records_window.h"
#include "core/run/outcomes.h"
#include "tests/app/desktop/pdf_text.h"
#include "tests/app/desktop/rig.h"

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

// The record cards of runs that are over.

namespace {

using namespace app::desktop;
using core::run::Answer;
using core::run::Prompt;

class RecordCards : public testing::Test {
protected:
    RecordCards() { rig.window->document().replace(rig::Rig::service(), {}); }

    /// One whole run, from Set-up until it is put away.
    void run()
    {
        rig.startLanes();
        for (int step = 0; step < 30 && !rig.session->state().finished; ++step) {
            const Prompt prompt = rig.session->state().prompts.front();
            rig.goOn(std::max(rig::Seconds{0}, rig::Seconds{prompt.due - rig.clock->now()}));
            const bool look = prompt.asks == Prompt::Asks::Look;
            const auto kind = prompt.asks == Prompt::Asks::Start ? Answer::Kind::Start
                : look                                           ? Answer::Kind::Leave
                                                                 : Answer::Kind::Finish;
            ASSERT_FALSE(
                rig.session->answer({.kind = kind, .task = prompt.task, .tone = look ? "pale yellow" : ""}));
        }
        ASSERT_FALSE(rig.session->end());
        rig.session->leave();
        rig.find<QPushButton>("toSetup")->click();
    }

    RecordsWindow* open()
    {
        QTest::keyClick(rig.window.get(), Qt::Key_R, Qt::ControlModifier);
        return rig.find<RecordsWindow>("records");
    }
    QString words() const { return rig.find<CardView>("card")->accessibleDescription(); }

    rig::Rig rig;
};

TEST_F(RecordCards, TeachWhereThereAreNone)
{
    RecordsWindow* records = open();
    ASSERT_NE(records, nullptr);
    EXPECT_FALSE(records->isModal());
    EXPECT_TRUE(rig.find<QLabel>("recordsEmpty")->isVisible());
    EXPECT_TRUE(rig.find<QLabel>("recordsEmpty")->text().contains(QStringLiteral("record card is made")));
    EXPECT_FALSE(rig.find<QPushButton>("recordsPrint")->isEnabled());
}

TEST_F(RecordCards, ListTheLatestFirstAndShowWhatHappened)
{
    run();
    rig.clock->goOn(std::chrono::hours{30});
    rig.window->document().edit(QStringLiteral("its name"),
                                [](auto& service) { service.name = "The other"; });
    run();
    open();
    auto* list = rig.find<QListWidget>("recordsList");
    ASSERT_EQ(list->count(), 2);
    EXPECT_TRUE(list->item(0)->text().contains(QStringLiteral("The other")));
    EXPECT_TRUE(list->item(1)->text().contains(QStringLiteral("Rig")));
    list->setCurrentRow(1);
    for (const char* said : {"Rig", "Record card", "Root", "Ends", "pale yellow", "on target"})
        EXPECT_TRUE(words().contains(QLatin1String{said})) << said << " is not in " << words().toStdString();
}

TEST_F(RecordCards, TakeHowARunTurnedOutAfterwards)
{
    run();
    open();
    rig.find<QPushButton>("recordsOutcome")->click();
    auto* records = rig.find<RecordsWindow>("records");
    records->findChild<QPushButton*>(QStringLiteral("outcome3"))->click();
    EXPECT_TRUE(words().contains(QStringLiteral("too dark"))) << words().toStdString();
    records->readRuns();
    EXPECT_TRUE(words().contains(QStringLiteral("too dark"))) << "it is in the journal";
}

TEST_F(RecordCards, ArePrintedAsThePlanIs)
{
    run();
    open();
    const QString path = rig.folder.filePath(QStringLiteral("card.pdf"));
    rig.find<RecordsWindow>("records")->printing().savePdfTo(path);
    const pdf::Read read = pdf::read(path);
    EXPECT_EQ(read.pages, 1);
    for (const char* said : {"Record card", "Root", "How it turned out", "pale yellow"})
        EXPECT_TRUE(read.text.contains(QLatin1String{said})) << said;
}

TEST_F(RecordCards, ShowTheRunThatGoesOnSoFar)
{
    rig.startLanes();
    open();
    ASSERT_EQ(rig.find<QListWidget>("recordsList")->count(), 1);
    EXPECT_TRUE(words().contains(QStringLiteral("Not ended yet")));
    EXPECT_FALSE(rig.find<QPushButton>("recordsOutcome")->isEnabled());
}

}  // namespace
