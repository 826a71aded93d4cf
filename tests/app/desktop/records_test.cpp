#include "app/desktop/lanes/notice.h"
#include "app/desktop/records/card_view.h"
#include "app/desktop/records/records_window.h"
#include "app/desktop/setup/edits.h"
#include "app/session/stored_services.h"
#include "app/session/time_zones.h"
#include "core/run/outcomes.h"
#include "tests/app/desktop/pdf_text.h"
#include "tests/app/desktop/rig.h"

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

// The record cards of runs that are over.

namespace {

using namespace app::desktop;
using app::session::MemoryJournal;
using app::session::QtTimeZones;
using app::session::Session;
using app::session::textsOf;
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

TEST_F(RecordCards, TellWhatWasSaidBeforeTheStart)
{
    ASSERT_TRUE(rig::Rig::wait([this] { return rig.find<QPushButton>("start")->isEnabled(); }));
    rig.find<QPushButton>("prepareTests")->click();
    rig.find<QLineEdit>("prepareWhy")->setText(QStringLiteral("the same as in March"));
    rig.find<QPushButton>("prepareSkip")->click();
    run();
    open();
    for (const char* said :
         {"Said before the start", "What Sound, Said heard",
          "What Strand test, Said skipped, Why the same as in March", "What Gloves, apron, air, Said open"})
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

TEST_F(RecordCards, StayWithTheirRunWhereAnotherBeginsAndEndsMeanwhile)
{
    run();
    open();
    const QString card = words();
    auto* list = rig.find<QListWidget>("recordsList");
    rig.window->document().edit(QStringLiteral("its name"),
                                [](auto& service) { service.name = "The other"; });
    rig.startLanes();
    ASSERT_EQ(list->count(), 2);
    EXPECT_EQ(list->item(0)->text(), QStringLiteral("This run, so far"));
    EXPECT_EQ(list->currentRow(), 1);
    EXPECT_EQ(words(), card);

    ASSERT_FALSE(rig.session->end());
    rig.session->leave();
    ASSERT_EQ(list->count(), 2);
    EXPECT_TRUE(list->item(0)->text().contains(QStringLiteral("The other")));
    EXPECT_EQ(list->currentRow(), 1);
    EXPECT_EQ(words(), card);
    list->setCurrentRow(0);
    EXPECT_TRUE(words().contains(QStringLiteral("The other"))) << words().toStdString();
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

/// A run of the service of the rig of which only what is left after erasing is there.
std::unique_ptr<MemoryJournal> journalWithAnErasedRun()
{
    using core::run::Fact;
    using core::run::FactKind;
    auto journal = std::make_unique<MemoryJournal>();
    const QtTimeZones zones;
    const auto run =
        journal->begin({textsOf({rig::Rig::service()}, zones), {}, rig::morning, false, {}}).value();
    std::vector<Fact> facts;
    const auto add = [&](FactKind kind, int minute) -> Fact& {
        const auto at = rig::morning + std::chrono::minutes{minute};
        facts.push_back({.kind = kind, .task = {.item = 1}, .happened = at, .recorded = at});
        return facts.back();
    };
    add(FactKind::Started, 2);
    add(FactKind::Finished, 9);
    Fact& said = add(FactKind::TurnedOut, 40);
    said.outcome = core::run::Outcome::TooWarm;
    said.tone = "brassy";
    add(FactKind::Ended, 41).task = {};
    journal->append(run, facts).value();
    EXPECT_TRUE(journal->eraseServices(run).has_value());
    return journal;
}

TEST_F(RecordCards, SayWhatIsLeftOfARunThatWasErased)
{
    const auto zones = std::make_shared<QtTimeZones>();
    Session session{
        {.journal = journalWithAnErasedRun(), .clock = rig.clock, .zones = zones, .plansApart = false}};
    RecordsWindow records{*rig.theme, session, zones, nullptr};
    auto* list = records.findChild<QListWidget*>(QStringLiteral("recordsList"));
    ASSERT_EQ(list->count(), 1);
    EXPECT_TRUE(list->item(0)->text().contains(QStringLiteral("erased")));
    const QString said = records.findChild<CardView*>(QStringLiteral("card"))->accessibleDescription();
    for (const char* left : {"was erased", "Apply zone 2", "Zone 2", "too warm"})
        EXPECT_TRUE(said.contains(QLatin1String{left})) << left << " is not in " << said.toStdString();
    for (const char* gone : {"Ends", "Rig", "brassy"})
        EXPECT_FALSE(said.contains(QLatin1String{gone})) << gone;
    EXPECT_TRUE(records.findChild<QLabel*>(QStringLiteral("recordsWrong"))->text().isEmpty());
    for (const char* button : {"recordsOutcome", "recordsAgain"})
        EXPECT_FALSE(records.findChild<QPushButton*>(QLatin1String{button})->isEnabled()) << button;
    EXPECT_TRUE(records.findChild<QPushButton*>(QStringLiteral("recordsPdf"))->isEnabled());
}

TEST_F(RecordCards, BeginTheNextCoatWithItsServiceAndWhatWasSaidInView)
{
    auto service = rig::Rig::service();
    service.readyBy = rig::morning + std::chrono::hours{6};
    service.coats[0].bowls[0].note = "30 g with 45 g";
    rig.window->document().replace(service, {});
    run();
    open();
    auto* records = rig.find<RecordsWindow>("records");
    const auto press = [&](const char* button) {
        records->findChild<QPushButton*>(QLatin1String{button})->click();
        QTest::qWait(20);  // What was asked before goes by then.
    };
    press("recordsOutcome");
    press("outcome3");  // Root: too dark.
    press("outcome7");  // Ends: go on without.
    records->findChild<QLineEdit*>(QStringLiteral("outcomeNote"))
        ->setText(QStringLiteral("thinner sections"));
    press("outcome1");
    rig.window->document().replace(app::desktop::edits::blankService(), {});

    rig.find<QPushButton>("recordsAgain")->click();
    EXPECT_FALSE(records->isVisible());
    EXPECT_FALSE(rig.window->showsLanes());
    service.readyBy.reset();  // That was then.
    EXPECT_EQ(rig.window->document().service(), service);
    EXPECT_TRUE(rig.window->document().path().isEmpty());
    auto* notice = rig.find<Notice>("lastTime");
    ASSERT_TRUE(notice->isVisible());
    for (const char* said : {"Root", "too dark", "thinner sections", "2027"})
        EXPECT_TRUE(notice->text().contains(QLatin1String{said})) << notice->text().toStdString();
    EXPECT_TRUE(rig::Rig::wait([this] { return rig.find<QPushButton>("start")->isEnabled(); }));
}

TEST_F(RecordCards, LeaveWhatWasSaidLastTimeUntilItIsPutAwayOrSomethingElseIsOpened)
{
    run();
    open();
    rig.find<QPushButton>("recordsAgain")->click();
    ASSERT_TRUE(rig.find<Notice>("lastTime")->isVisible());
    rig.find<QPushButton>("lastTimeOffer1")->click();
    EXPECT_FALSE(rig.find<Notice>("lastTime")->isVisible());

    open();
    rig.find<QPushButton>("recordsAgain")->click();
    ASSERT_TRUE(rig.find<Notice>("lastTime")->isVisible());
    rig.window->files().openDemo(QStringLiteral("wig-room-three-zones"));
    EXPECT_FALSE(rig.find<Notice>("lastTime")->isVisible());
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
