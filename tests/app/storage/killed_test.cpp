#include "app/storage/sqlite_journal.h"
#include "tests/app/storage/journal_samples.h"

#include <gtest/gtest.h>

#include <chrono>
#include <csignal>
#include <random>
#include <thread>

#include <sys/wait.h>
#include <unistd.h>

namespace app::storage {
namespace {

using samples::Folder;
using session::Fact;
using session::RunId;

/// Appends without end, and tells through `pipe` after each that it was acknowledged.
[[noreturn]] void appendForEver(const Folder& folder, int pipe)
{
    auto journal = SqliteJournal::open(folder.path());
    const auto facts = samples::someFacts(5000);
    const RunId run = journal ? (*journal)->begin(samples::newRun()).value_or(RunId{0}) : RunId{0};
    for (const Fact& fact : facts)
        if (!journal || !(*journal)->append(run, std::span{&fact, 1}) || write(pipe, "+", 1) != 1)
            break;
    _exit(1);
}

/// When a child is killed: so long after it began, or after its first acknowledgement.
struct Death {
    bool afterFirst = false;
    std::chrono::microseconds after{0};
};

/// How many facts the child acknowledged before it was killed.
std::size_t acknowledgedBefore(const Folder& folder, const Death& death)
{
    int ends[2];
    EXPECT_EQ(pipe(ends), 0);
    const pid_t child = fork();
    if (child == 0)
        appendForEver(folder, ends[1]);
    close(ends[1]);
    char buffer[4096];
    std::size_t acknowledged = 0;
    if (death.afterFirst && read(ends[0], buffer, 1) == 1)
        ++acknowledged;
    std::this_thread::sleep_for(death.after);
    kill(child, SIGKILL);
    waitpid(child, nullptr, 0);
    for (ssize_t got = 0; (got = read(ends[0], buffer, sizeof buffer)) > 0;)
        acknowledged += static_cast<std::size_t>(got);
    close(ends[0]);
    return acknowledged;
}

TEST(KilledJournal, HasEveryFactThatWasAcknowledged)
{
    std::mt19937 random{1234};
    std::size_t most = 0;
    for (int kill = 0; kill < 40; ++kill) {
        const Folder folder;
        const Death death{kill % 4 != 0, std::chrono::microseconds{random() % 100'000}};
        const std::size_t acknowledged = acknowledgedBefore(folder, death);

        const auto journal = SqliteJournal::open(folder.path());

        ASSERT_TRUE(journal.has_value()) << journal.error().what << " after " << death.after.count() << " us";
        const auto runs = (*journal)->unfinished().value();
        const auto facts = runs.empty() ? std::vector<Fact>{} : (*journal)->facts(runs[0].id).value();
        // The kill may fall between an append and its acknowledgement.
        ASSERT_GE(facts.size(), acknowledged) << "after " << death.after.count() << " us";
        ASSERT_LE(facts.size(), acknowledged + 1) << "after " << death.after.count() << " us";
        EXPECT_EQ(facts, samples::someFacts(static_cast<int>(facts.size())));
        most = std::max(most, acknowledged);
    }
    EXPECT_GT(most, 3u) << "the kills came too early to say anything";
}

}  // namespace
}  // namespace app::storage
