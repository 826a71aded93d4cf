#include "app/storage/sqlite_journal.h"

#include "app/storage/database.h"
#include "tests/app/storage/journal_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <unistd.h>

namespace app::storage {
namespace {

using core::run::FactKind;
using samples::ending;
using samples::moment;
using samples::newRun;
using samples::opened;
using samples::someFacts;
using samples::standsAnywhere;
using session::Fact;
using session::FactNumber;
using session::JournalError;
using session::RunId;
using testing::HasSubstr;

TEST(SqliteJournal, GivesBackEveryFactAsItWasAfterItIsOpenedAgain)
{
    const samples::Folder folder;
    const auto facts = someFacts(50);
    const RunId run = opened(folder)->begin(newRun()).value();
    opened(folder)->append(run, facts).value();

    EXPECT_EQ(opened(folder)->facts(run).value(), facts);
    EXPECT_EQ(opened(folder)->run(run).value(), (session::StoredRun{run, newRun(), {}}));
}

TEST(SqliteJournal, NumbersTheFactsOfEachRunFromOne)
{
    const samples::Folder folder;
    const auto journal = opened(folder);
    const RunId first = journal->begin(newRun()).value();
    const RunId second = journal->begin(newRun()).value();
    const auto facts = someFacts(3);

    EXPECT_EQ(journal->append(first, facts).value(),
              (std::vector{FactNumber{1}, FactNumber{2}, FactNumber{3}}));
    EXPECT_EQ(journal->append(second, facts).value().front(), FactNumber{1});
    EXPECT_EQ(journal->append(first, facts).value().back(), FactNumber{6});
    EXPECT_EQ(journal->facts(second).value(), facts);
}

TEST(SqliteJournal, ListsWhatHasNotEndedTheLatestFirst)
{
    const samples::Folder folder;
    const auto journal = opened(folder);
    auto early = newRun();
    auto late = newRun();
    late.began = moment(3600);
    const RunId over = journal->begin(newRun()).value();
    const RunId second = journal->begin(late).value();
    const RunId first = journal->begin(early).value();
    journal->append(over, std::vector{ending(90)}).value();

    const auto open = journal->unfinished().value();

    ASSERT_EQ(open.size(), 2u);
    EXPECT_EQ(open[0].id, second);
    EXPECT_EQ(open[1].id, first);
    EXPECT_EQ(journal->run(over).value().ended, moment(90));
}

TEST(SqliteJournal, RefusesARunThatItDoesNotKnow)
{
    const samples::Folder folder;
    const auto journal = opened(folder);

    EXPECT_EQ(journal->append(RunId{7}, someFacts(1)).error().kind, JournalError::Kind::NotThere);
    EXPECT_EQ(journal->run(RunId{7}).error().kind, JournalError::Kind::NotThere);
}

TEST(SqliteJournal, AppendsAllFactsOfAnAnswerOrNone)
{
    const samples::Folder folder;
    const auto journal = opened(folder);
    const RunId run = journal->begin(newRun()).value();
    {
        auto other = Database::open(folder.journal());
        ASSERT_TRUE((*other)
                        ->run("CREATE TRIGGER refuse BEFORE INSERT ON fact WHEN NEW.number = 3 "
                              "BEGIN SELECT RAISE(ABORT, 'refused'); END")
                        .has_value());
    }

    EXPECT_FALSE(journal->append(run, someFacts(3)).has_value());

    EXPECT_TRUE(journal->facts(run).value().empty());
    EXPECT_EQ(journal->append(run, someFacts(2)).value().size(), 2u)
        << "a failed answer must not block the next";
}

TEST(SqliteJournal, HoldsNoNameOnceTheServicesOfARunAreErased)
{
    const samples::Folder folder;
    const RunId run = opened(folder)->begin(newRun()).value();
    ASSERT_TRUE(standsAnywhere(folder, "Ottoline"));
    const auto journal = opened(folder);
    journal->append(run, someFacts(4)).value();

    EXPECT_FALSE(journal->eraseServices(run).has_value()) << "a run that goes on still needs its service";
    journal->append(run, std::vector{ending(600)}).value();
    ASSERT_TRUE(journal->eraseServices(run).has_value());

    EXPECT_FALSE(standsAnywhere(folder, "Ottoline"));
    EXPECT_EQ(journal->facts(run).value().size(), 5u);
    EXPECT_TRUE(journal->run(run).value().run.services.empty());
}

TEST(SqliteJournal, FlushesEveryCommit)
{
    // https://www.sqlite.org/pragma.html#pragma_synchronous: in WAL mode only FULL (2) or more is durable.
    const samples::Folder folder;
    const auto journal = opened(folder);
    auto other = Database::open(folder.journal());
    EXPECT_EQ((*other)->ask("PRAGMA journal_mode").value(), "wal");
    EXPECT_EQ(journal->flushing().value(), "2");
}

TEST(SqliteJournal, RefusesALayoutOfANewerProgram)
{
    const samples::Folder folder;
    opened(folder).reset();
    ASSERT_TRUE((*Database::open(folder.journal()))->run("PRAGMA user_version = 99").has_value());

    const auto journal = SqliteJournal::open(folder.path());

    ASSERT_FALSE(journal.has_value());
    EXPECT_EQ(journal.error().kind, JournalError::Kind::TooNew);
    EXPECT_THAT(journal.error().what, HasSubstr("newer Basinbell (layout 99"));
}

TEST(SqliteJournal, RefusesADatabaseOfAnotherProgram)
{
    const samples::Folder folder;
    ASSERT_TRUE((*Database::open(folder.journal()))
                    ->run("CREATE TABLE other (a); PRAGMA user_version = 1")
                    .has_value());

    EXPECT_EQ(SqliteJournal::open(folder.path()).error().kind, JournalError::Kind::Damaged);
}

TEST(SqliteJournal, IsForOneProgramAtATime)
{
    const samples::Folder folder;
    auto first = opened(folder);

    const auto second = SqliteJournal::open(folder.path());

    ASSERT_FALSE(second.has_value());
    EXPECT_EQ(second.error().kind, JournalError::Kind::InUse);
    EXPECT_THAT(second.error().what, HasSubstr("process " + std::to_string(getpid())));
    first.reset();
    EXPECT_TRUE(SqliteJournal::open(folder.path()).has_value());
}

TEST(SqliteJournal, GivesBackWhatAmendmentsMadeOfTheServicesAndErasesIt)
{
    const samples::Folder folder;
    const RunId run = opened(folder)->begin(newRun()).value();
    Fact amended = someFacts(1).front();
    amended.kind = FactKind::Amended;
    amended.revision = 2;
    ASSERT_TRUE(opened(folder)->amend(run, 1, {"first"}).has_value());
    ASSERT_TRUE(opened(folder)->amend(run, 2, {"Thrown away"}).has_value());
    ASSERT_TRUE(opened(folder)->amend(run, 2, {"Berit comes", "and Ottoline"}).has_value());
    opened(folder)->append(run, std::vector{amended}).value();

    const auto journal = opened(folder);
    EXPECT_EQ(journal->run(run).value().revisions,
              (std::vector<std::vector<std::string>>{{"first"}, {"Berit comes", "and Ottoline"}}));
    EXPECT_EQ(journal->facts(run).value().front().revision, 2U);
    EXPECT_FALSE(journal->amend(RunId{77}, 1, {"x"}).has_value());

    journal->append(run, std::vector{ending(600)}).value();
    ASSERT_TRUE(journal->eraseServices(run).has_value());
    EXPECT_TRUE(journal->run(run).value().revisions.empty());
    EXPECT_FALSE(standsAnywhere(folder, "Berit"));
}

void change(const samples::Folder& folder, const char* statements)
{
    const auto database = Database::open(folder.journal());
    ASSERT_TRUE((*database)->run(statements).has_value());
}

/// As the layout before words and seals of services was.
void goBackToLayoutThree(const samples::Folder& folder)
{
    samples::goBackToLayoutFive(folder);
    change(folder,
           "ALTER TABLE fact DROP COLUMN outcome; DROP TABLE said; ALTER TABLE fact DROP COLUMN words; ALTER "
           "TABLE run DROP COLUMN seal; "
           "ALTER TABLE service DROP COLUMN seal; ALTER TABLE revision DROP COLUMN seal; PRAGMA user_version "
           "= 3;");
}

// The first layout had no revisions; what was written in it reads as it did, and its seals hold.
TEST(SqliteJournal, TakesUpAJournalOfTheFirstLayout)
{
    const samples::Folder folder;
    auto facts = someFacts(20);
    for (Fact& fact : facts)
        fact.tone.clear();
    const RunId run = opened(folder)->begin(newRun()).value();
    opened(folder)->append(run, facts).value();
    goBackToLayoutThree(folder);
    change(folder,
           "DROP TABLE revision; ALTER TABLE fact DROP COLUMN revision; ALTER TABLE run DROP COLUMN boot; "
           "ALTER TABLE run DROP COLUMN wall_minus_elapsed; PRAGMA user_version = 1;");

    EXPECT_EQ(opened(folder)->facts(run).value(), facts);
    EXPECT_TRUE(opened(folder)->run(run).value().revisions.empty());
}

// The third layout: revisions and the base of the clock, no words.
TEST(SqliteJournal, TakesUpAJournalWithoutWordsAndGoesOnWithThem)
{
    const samples::Folder folder;
    auto facts = someFacts(20);
    facts[3].revision = 1;
    const Fact withWords = someFacts(9).back();
    ASSERT_FALSE(withWords.tone.empty());
    for (Fact& fact : facts)
        fact.tone.clear();
    const RunId run = opened(folder)->begin(newRun()).value();
    opened(folder)->append(run, facts).value();
    goBackToLayoutThree(folder);

    EXPECT_EQ(opened(folder)->facts(run).value(), facts);
    opened(folder)->append(run, std::vector{withWords}).value();
    EXPECT_EQ(opened(folder)->facts(run).value().back().tone, withWords.tone);
}

TEST(SqliteJournal, KeepsWhatWasSaidApartAndErasesItWithTheServices)
{
    const samples::Folder folder;
    const RunId run = opened(folder)->begin(newRun()).value();
    Fact looked = someFacts(9).back();
    looked.tone = "Ottoline's is turning green";
    opened(folder)->append(run, std::vector{looked, ending(600)}).value();
    EXPECT_EQ(opened(folder)->facts(run).value().front().tone, looked.tone);

    ASSERT_TRUE(opened(folder)->eraseServices(run).has_value());
    EXPECT_FALSE(standsAnywhere(folder, "green"));
    EXPECT_FALSE(standsAnywhere(folder, "Ottoline"));
    const auto facts = opened(folder)->facts(run).value();
    ASSERT_EQ(facts.size(), 2u);
    EXPECT_EQ(facts[0].tone, "");
    EXPECT_EQ(facts[0].happened, looked.happened);
}

TEST(SqliteJournal, NoticesWordsThatAreMissingOrChanged)
{
    for (const char* const harm :
         {"DELETE FROM said WHERE fact = 9", "UPDATE said SET words = 'even' WHERE fact = 9",
          "INSERT INTO said (run, fact, words, seal) VALUES (1, 2, 'even', 5)",
          "UPDATE fact SET words = 0 WHERE number = 9"}) {
        const samples::Folder folder;
        const RunId run = opened(folder)->begin(newRun()).value();
        opened(folder)->append(run, someFacts(12)).value();
        ASSERT_TRUE((*Database::open(folder.journal()))->run(harm).has_value()) << harm;

        const auto facts = opened(folder)->facts(run);
        ASSERT_FALSE(facts.has_value()) << harm;
        EXPECT_EQ(facts.error().kind, JournalError::Kind::Damaged);
    }
}

TEST(SqliteJournal, NoticesAServiceThatWasChanged)
{
    for (const char* const harm :
         {"UPDATE service SET file = replace(file, 'true', 'null')", "UPDATE run SET began = began + 60",
          "UPDATE revision SET file = 'second'", "DELETE FROM revision WHERE number = 1"}) {
        const samples::Folder folder;
        const RunId run = opened(folder)->begin(newRun()).value();
        ASSERT_TRUE(opened(folder)->amend(run, 1, {"first"}).has_value());
        ASSERT_TRUE(opened(folder)->amend(run, 2, {"then"}).has_value());
        EXPECT_FALSE(opened(folder)->run(run).value().damaged);
        ASSERT_TRUE((*Database::open(folder.journal()))->run(harm).has_value()) << harm;
        EXPECT_TRUE(opened(folder)->run(run).value().damaged) << harm;
        EXPECT_TRUE(opened(folder)->unfinished().value().front().damaged) << harm;
    }
}

TEST(SqliteJournal, TellsWhoHoldsItToAUserWhoMayNotWrite)
{
    const samples::Folder folder;
    const auto first = opened(folder);
    std::filesystem::permissions(folder.path(), std::filesystem::perms{0755});
    std::filesystem::permissions(folder.path() / "in-use", std::filesystem::perms{0444});
    {
        const samples::Nobody nobody;
        const auto second = SqliteJournal::open(folder.path());
        ASSERT_FALSE(second.has_value());
        EXPECT_EQ(second.error().kind, JournalError::Kind::InUse) << second.error().what;
        EXPECT_THAT(second.error().what,
                    testing::ContainsRegex("\\(process " + std::to_string(getpid()) + " of [^ )]+\\)"));
    }
}

TEST(SqliteJournal, KnowsWhatTheClockOfARunGoesBy)
{
    const samples::Folder folder;
    session::NewRun run = newRun();
    run.base = session::TimeBase{"one boot", std::chrono::nanoseconds{-1'234'567'890'123'456'789}};
    const RunId id = opened(folder)->begin(run).value();
    EXPECT_EQ(opened(folder)->run(id).value().run.base, run.base);

    const session::TimeBase other{"another", std::chrono::nanoseconds{42}};
    ASSERT_TRUE(opened(folder)->rebase(id, other).has_value());
    EXPECT_EQ(opened(folder)->unfinished().value().front().run.base, other);
    EXPECT_FALSE(opened(folder)->rebase(RunId{77}, other).has_value());
}

}  // namespace
}  // namespace app::storage
