#include "app/storage/database.h"
#include "tests/app/storage/journal_samples.h"

#include <gtest/gtest.h>

// What was said before a run began, as the journal keeps it.

namespace app::storage {
namespace {

using samples::ending;
using samples::newRun;
using samples::opened;
using samples::someFacts;
using samples::standsAnywhere;
using session::RunId;

TEST(PreparedRows, GiveBackWhatWasSaidWithTheRun)
{
    const samples::Folder folder;
    const RunId run = opened(folder)->begin(newRun()).value();
    auto asked = newRun();
    asked.prepared.clear();
    const RunId other = opened(folder)->begin(asked).value();

    const auto stored = opened(folder)->run(run).value();
    ASSERT_EQ(stored.run.prepared.size(), 3u);
    EXPECT_EQ(stored.run.prepared, newRun().prepared);
    EXPECT_FALSE(stored.damaged);
    EXPECT_TRUE(opened(folder)->run(other).value().run.prepared.empty()) << "nobody was asked";
    EXPECT_FALSE(opened(folder)->run(other).value().damaged);
}

// The fifth layout: how zones turned out, nothing of what was said before.
TEST(PreparedRows, TakeUpAJournalOfTheFifthLayoutAndGoOn)
{
    const samples::Folder folder;
    auto asked = newRun();
    asked.prepared.clear();
    const auto facts = someFacts(20);
    const RunId run = opened(folder)->begin(asked).value();
    opened(folder)->append(run, facts).value();
    samples::goBackToLayoutFive(folder);

    EXPECT_EQ(opened(folder)->run(run).value(), (session::StoredRun{run, asked, {}}));
    EXPECT_EQ(opened(folder)->facts(run).value(), facts);
    const RunId next = opened(folder)->begin(newRun()).value();
    EXPECT_EQ(opened(folder)->run(next).value().run.prepared, newRun().prepared);
}

TEST(PreparedRows, GoWithThePersonWhenARunIsErased)
{
    const samples::Folder folder;
    const RunId run = opened(folder)->begin(newRun()).value();
    opened(folder)->append(run, std::vector{ending(600)}).value();
    ASSERT_TRUE(standsAnywhere(folder, "this mixture before"));

    ASSERT_TRUE(opened(folder)->eraseServices(run).has_value());
    EXPECT_FALSE(standsAnywhere(folder, "this mixture before"));
    EXPECT_FALSE(standsAnywhere(folder, "Ottoline"));
    const auto stored = opened(folder)->run(run).value();
    EXPECT_TRUE(stored.run.prepared.empty());
    EXPECT_FALSE(stored.damaged) << "it is erased, not damaged";
}

TEST(PreparedRows, NoticeWhatWasChangedOrIsMissing)
{
    for (const char* const harm :
         {"UPDATE prepared SET why = 'because' WHERE place = 1",
          "UPDATE prepared SET why = '' WHERE place = 1",
          "UPDATE prepared SET state = 'done' WHERE place = 1",
          "UPDATE prepared SET state = 'nonsense' WHERE place = 1",
          "UPDATE prepared SET what = 'bowls' WHERE place = 0",
          "UPDATE prepared SET at = at + 1 WHERE place = 0", "UPDATE prepared SET at = NULL WHERE place = 0",
          "DELETE FROM prepared WHERE place = 2", "DELETE FROM prepared",
          "DELETE FROM prepared; UPDATE run SET prepared = 0"}) {
        const samples::Folder folder;
        const RunId run = opened(folder)->begin(newRun()).value();
        ASSERT_TRUE((*Database::open(folder.journal()))->run(harm).has_value()) << harm;
        EXPECT_TRUE(opened(folder)->run(run).value().damaged) << harm;
    }
}

}  // namespace
}  // namespace app::storage
