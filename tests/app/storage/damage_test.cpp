#include "app/storage/database.h"
#include "app/storage/open_journal.h"
#include "app/storage/sqlite_journal.h"
#include "tests/app/storage/journal_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace app::storage {
namespace {

namespace fs = std::filesystem;
using samples::bytesOf;
using samples::Folder;
using samples::newRun;
using samples::someFacts;
using samples::writeBytes;
using session::Fact;
using session::JournalError;
using session::RunId;
using testing::HasSubstr;

constexpr int factCount = 60;

/// The files of a journal whose program was killed after its last append: the
/// newest facts stand only in the write-ahead file.
struct Killed {
    std::string database;
    std::string writeAhead;
};

Killed killedJournal()
{
    const Folder folder;
    auto journal = SqliteJournal::open(folder.path());
    const RunId run = (*journal)->begin(newRun()).value();
    for (const Fact& fact : someFacts(factCount))
        (*journal)->append(run, std::span{&fact, 1}).value();
    return {bytesOf(folder.journal()), bytesOf(folder.writeAhead())};
}

/// The same folded into one file, as after leaving.
std::string restingJournal()
{
    const Folder folder;
    auto journal = SqliteJournal::open(folder.path());
    const RunId run = (*journal)->begin(newRun()).value();
    (*journal)->append(run, someFacts(factCount)).value();
    journal->reset();
    return bytesOf(folder.journal());
}

bool isBeginningOf(const std::vector<Fact>& part, const std::vector<Fact>& whole)
{
    return part.size() <= whole.size() && std::equal(part.begin(), part.end(), whole.begin());
}

TEST(DamagedJournal, KeepsEveryFactBeforeTheCutWhenTheWriteAheadFileIsCut)
{
    const Killed killed = killedJournal();
    const auto all = someFacts(factCount);
    std::size_t before = 0;
    for (std::size_t length = 0; length <= killed.writeAhead.size(); length += 997) {
        const Folder folder;
        writeBytes(folder.journal(), killed.database);
        writeBytes(folder.writeAhead(), killed.writeAhead.substr(0, length));

        const auto opened = openJournal(folder.path());

        ASSERT_TRUE(opened.has_value()) << length;
        const auto runs = (*opened).journal->unfinished().value();
        const auto facts = runs.empty() ? std::vector<Fact>{} : (*opened).journal->facts(runs[0].id).value();
        ASSERT_TRUE(isBeginningOf(facts, all)) << "cut at " << length;
        ASSERT_GE(facts.size(), before) << "a longer file must not hold less; cut at " << length;
        before = facts.size();
    }
    EXPECT_GT(before, static_cast<std::size_t>(factCount) * 9 / 10);
}

TEST(DamagedJournal, IsSetAsideUntouchedWhenTheFileIsCut)
{
    const std::string whole = restingJournal();
    for (const std::size_t length :
         {whole.size() / 2, whole.size() - 4096, std::size_t{4096}, std::size_t{700}}) {
        const Folder folder;
        const std::string cut = whole.substr(0, length);
        writeBytes(folder.journal(), cut);

        const auto opened = openJournal(folder.path());

        ASSERT_TRUE(opened.has_value()) << opened.error().what;
        ASSERT_EQ(opened->warnings.size(), 1u) << length;
        EXPECT_THAT(opened->warnings[0], HasSubstr("set aside, untouched, as"));
        EXPECT_TRUE(opened->journal->isDurable());
        EXPECT_TRUE(opened->journal->begin(newRun()).has_value());
        const auto files = fs::directory_iterator{folder.path()};
        const auto aside = std::find_if(begin(files), end(files), [](const auto& file) {
            return file.path().filename().string().starts_with("journal-damaged-");
        });
        ASSERT_NE(aside, end(files));
        EXPECT_EQ(bytesOf(aside->path()), cut);
    }
}

TEST(DamagedJournal, IsNeverTakenForAWholeOneWhenItsBytesChange)
{
    const std::string whole = restingJournal();
    const auto all = someFacts(factCount);
    std::mt19937 random{20260314};
    int noticed = 0;
    for (int instance = 0; instance < 300; ++instance) {
        std::string bytes = whole;
        const std::size_t place = random() % bytes.size();
        bytes[place] = static_cast<char>(bytes[place] ^ static_cast<char>(1 + random() % 255));
        const Folder folder;
        writeBytes(folder.journal(), bytes);

        const auto journal = SqliteJournal::open(folder.path());
        if (!journal) {
            ++noticed;
            continue;
        }
        // What may change unnoticed is only what nothing stands in: unused room of a page.
        const auto facts = (*journal)->facts(RunId{1});
        const auto run = (*journal)->run(RunId{1});
        if (facts && run && !run->damaged) {
            EXPECT_TRUE(*facts == all || facts->empty()) << "instance " << instance << ", byte " << place;
        } else {
            ++noticed;
        }
    }
    EXPECT_GT(noticed, 30);
}

TEST(DamagedJournal, IsNeverTakenForAWholeOneWhereverItIsCut)
{
    const std::string whole = restingJournal();
    const auto all = someFacts(factCount);
    for (std::size_t length = 1; length < whole.size(); length += 499) {
        const Folder folder;
        writeBytes(folder.journal(), whole.substr(0, length));

        const auto journal = SqliteJournal::open(folder.path());

        const auto facts = journal ? (*journal)->facts(RunId{1}) : tl::unexpected{journal.error()};
        if (facts) {
            EXPECT_TRUE(*facts == all) << "cut at " << length;
        }
    }
}

TEST(DamagedJournal, NoticesAFactThatIsMissingOrChanged)
{
    for (const char* const harm : {"DELETE FROM fact WHERE number = 12",
                                   "UPDATE fact SET happened = happened + 60 WHERE number = 12"}) {
        const Folder folder;
        writeBytes(folder.journal(), restingJournal());
        ASSERT_TRUE((*Database::open(folder.journal()))->run(harm).has_value());

        const auto facts = (*SqliteJournal::open(folder.path()))->facts(RunId{1});

        ASSERT_FALSE(facts.has_value()) << harm;
        EXPECT_EQ(facts.error().kind, JournalError::Kind::Damaged);
        EXPECT_THAT(facts.error().what, HasSubstr("record 12"));
    }
}

TEST(DamagedJournal, MayBeAnyRubbish)
{
    std::mt19937 random{7};
    for (const std::size_t length :
         {std::size_t{1}, std::size_t{100}, std::size_t{5000}, std::size_t{100'000}}) {
        const Folder folder;
        std::string bytes(length, '\0');
        for (char& byte : bytes)
            byte = static_cast<char>(random());
        writeBytes(folder.journal(), bytes);

        const auto opened = openJournal(folder.path());

        ASSERT_TRUE(opened.has_value());
        EXPECT_TRUE(opened->journal->begin(newRun()).has_value());
    }
}

}  // namespace
}  // namespace app::storage
