#include "app/storage/database.h"
#include "tests/app/storage/journal_samples.h"

#include <gtest/gtest.h>

// How zones turned out, as the journal keeps it.

namespace app::storage {
namespace {

using core::run::FactKind;
using samples::ending;
using samples::newRun;
using samples::opened;
using samples::someFacts;
using samples::standsAnywhere;
using session::Fact;
using session::JournalError;
using session::RunId;

/// How Root turned out, and a note for next time.
std::vector<Fact> judgements()
{
    Fact outcome = someFacts(1).front();
    outcome.kind = FactKind::TurnedOut;
    outcome.outcome = core::run::Outcome::TooWarm;
    outcome.tone = "brassy at Ottoline's nape";
    Fact note = outcome;
    note.kind = FactKind::Noted;
    note.outcome.reset();
    note.tone = "Ends five minutes later for Ottoline";
    return {outcome, note};
}

// The fourth layout: words and seals of services, nothing of how zones turned out.
TEST(OutcomeRows, TakesUpAJournalOfTheFourthLayoutAndGoesOnWithHowItTurnedOut)
{
    const samples::Folder folder;
    const auto facts = someFacts(20);
    const RunId run = opened(folder)->begin(newRun()).value();
    opened(folder)->append(run, facts).value();
    samples::goBackToLayoutFive(folder);
    {
        const auto database = Database::open(folder.journal());
        ASSERT_TRUE(
            (*database)->run("ALTER TABLE fact DROP COLUMN outcome; PRAGMA user_version = 4;").has_value());
    }

    EXPECT_EQ(opened(folder)->facts(run).value(), facts);
    opened(folder)->append(run, judgements()).value();
    const auto all = opened(folder)->facts(run).value();
    ASSERT_EQ(all.size(), 22u);
    EXPECT_EQ(all[20].kind, FactKind::TurnedOut);
    EXPECT_EQ(all[20].outcome, core::run::Outcome::TooWarm);
    EXPECT_EQ(all[20].tone, judgements()[0].tone);
    EXPECT_EQ(all[21].kind, FactKind::Noted);
    EXPECT_EQ(all[21].outcome, std::nullopt);
    EXPECT_EQ(all[21].tone, judgements()[1].tone);
}

TEST(OutcomeRows, ErasesWhatWasSaidOfHowItTurnedOutAndKeepsTheOneOfAFewWords)
{
    const samples::Folder folder;
    const RunId run = opened(folder)->begin(newRun()).value();
    opened(folder)->append(run, judgements()).value();
    opened(folder)->append(run, std::vector{ending(600)}).value();
    ASSERT_TRUE(standsAnywhere(folder, "Ottoline"));

    ASSERT_TRUE(opened(folder)->eraseServices(run).has_value());
    EXPECT_FALSE(standsAnywhere(folder, "Ottoline"));
    EXPECT_FALSE(standsAnywhere(folder, "brassy"));
    const auto facts = opened(folder)->facts(run).value();
    ASSERT_EQ(facts.size(), 3u);
    EXPECT_EQ(facts[0].outcome, core::run::Outcome::TooWarm);
    EXPECT_EQ(facts[0].tone, "");
    EXPECT_EQ(facts[1].tone, "");
}

TEST(OutcomeRows, NoticesAnOutcomeThatWasChanged)
{
    for (const char* const harm : {"UPDATE fact SET outcome = 'as wanted' WHERE number = 1",
                                   "UPDATE fact SET outcome = '' WHERE number = 1",
                                   "UPDATE fact SET outcome = 'nonsense' WHERE number = 1",
                                   "UPDATE fact SET outcome = 'too warm' WHERE number = 2"}) {
        const samples::Folder folder;
        const RunId run = opened(folder)->begin(newRun()).value();
        opened(folder)->append(run, judgements()).value();
        ASSERT_TRUE((*Database::open(folder.journal()))->run(harm).has_value()) << harm;
        const auto facts = opened(folder)->facts(run);
        ASSERT_FALSE(facts.has_value()) << harm;
        EXPECT_EQ(facts.error().kind, JournalError::Kind::Damaged);
    }
}

}  // namespace
}  // namespace app::storage
