#include "app/storage/open_journal.h"
#include "app/storage/sqlite_journal.h"
#include "tests/app/storage/journal_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <csignal>

#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

namespace app::storage {
namespace {

using samples::Folder;
using samples::newRun;
using samples::someFacts;
using session::Fact;
using session::JournalError;
using session::RunId;
using testing::HasSubstr;

/// No file may grow past `bytes` while it lives: to a writer the same as a full disk.
class FullDisk {
public:
    explicit FullDisk(rlim_t bytes)
        : m_handler{std::signal(SIGXFSZ, SIG_IGN)}
    {
        getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit limit{bytes, m_before.rlim_max};
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~FullDisk()
    {
        setrlimit(RLIMIT_FSIZE, &m_before);
        (void)std::signal(SIGXFSZ, m_handler);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

private:
    void (*m_handler)(int);
    rlimit m_before{};
};

/// Root may write anywhere, so where the tests run as root they become nobody for a while.
class Nobody {
public:
    Nobody()
        : m_wasRoot{geteuid() == 0}
    {
        if (m_wasRoot) {
            EXPECT_EQ(seteuid(65534), 0);
        }
    }
    ~Nobody()
    {
        if (m_wasRoot) {
            EXPECT_EQ(seteuid(0), 0);
        }
    }
    Nobody(const Nobody&) = delete;
    Nobody& operator=(const Nobody&) = delete;

private:
    bool m_wasRoot;
};

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
