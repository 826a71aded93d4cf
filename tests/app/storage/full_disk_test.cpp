#include "app/storage/open_journal.h"
#include "app/storage/sqlite_journal.h"
#include "tests/app/storage/journal_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sys/stat.h>

namespace app::storage {
namespace {

using samples::Folder;
using samples::FullDisk;
using samples::newRun;
using samples::Nobody;
using samples::someFacts;
using session::Fact;
using session::JournalError;
using session::RunId;
using testing::HasSubstr;

TEST(FullDiskJournal, SaysSoKeepsWhatItHasAndGoesOnOnceThereIsRoom)
{
    const Folder folder;
    auto journal = SqliteJournal::open(folder.path());
    const RunId run = (*journal)->begin(newRun()).value();
    std::vector<Fact> acknowledged;
    JournalError error;
    {
        const FullDisk full{200'000};
        for (const Fact& fact : someFacts(2000)) {
            const auto numbers = (*journal)->append(run, std::span{&fact, 1});
            if (!numbers) {
                error = numbers.error();
                break;
            }
            acknowledged.push_back(fact);
        }
    }
    EXPECT_EQ(error.kind, JournalError::Kind::NoSpace) << error.what;
    EXPECT_THAT(error.what, HasSubstr("Free some space"));
    EXPECT_GT(acknowledged.size(), 10u);

    const Fact next = someFacts(static_cast<int>(acknowledged.size()) + 1).back();
    ASSERT_TRUE((*journal)->append(run, std::span{&next, 1}).has_value());
    acknowledged.push_back(next);
    journal->reset();
    EXPECT_EQ((*SqliteJournal::open(folder.path()))->facts(run).value(), acknowledged);
}

TEST(FullDiskJournal, IsInMemoryWithAWarningWhenThereWasNoRoomFromTheStart)
{
    const Folder folder;
    const FullDisk full{100};

    const auto opened = openJournal(folder.path());

    ASSERT_TRUE(opened.has_value());
    EXPECT_FALSE(opened->journal->isDurable());
    ASSERT_EQ(opened->warnings.size(), 1u);
    EXPECT_THAT(opened->warnings[0], HasSubstr("no space left"));
    EXPECT_THAT(opened->warnings[0], HasSubstr("Nothing can be kept"));
}

TEST(ReadOnlyJournal, IsInMemoryWithAWarning)
{
    const Folder folder;
    SqliteJournal::open(folder.path())->reset();
    chmod(folder.path().c_str(), 0555);
    for (const auto& file : std::filesystem::directory_iterator{folder.path()})
        chmod(file.path().c_str(), 0444);
    {
        const Nobody nobody;

        const auto opened = openJournal(folder.path());

        ASSERT_TRUE(opened.has_value());
        EXPECT_FALSE(opened->journal->isDurable());
        ASSERT_EQ(opened->warnings.size(), 1u);
        EXPECT_THAT(opened->warnings[0], HasSubstr("may not be written"));
    }
    chmod(folder.path().c_str(), 0755);
}

TEST(ReadOnlyJournal, IsInMemoryWhenTheFolderCannotBeMade)
{
    const auto opened = openJournal("/proc/no-such-place/basinbell");

    ASSERT_TRUE(opened.has_value());
    EXPECT_FALSE(opened->journal->isDurable());
    EXPECT_EQ(opened->warnings.size(), 1u);
}

}  // namespace
}  // namespace app::storage
