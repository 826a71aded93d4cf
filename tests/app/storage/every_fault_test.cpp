#include "app/storage/open_journal.h"
#include "app/storage/sqlite_journal.h"
#include "tests/app/storage/journal_samples.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <random>

// The journal cut and changed at every byte, with every kind of fact and revision in it. What is tried and
// what is lost is counted and printed. Takes minutes.

namespace app::storage {
namespace {

namespace fs = std::filesystem;
using core::run::FactKind;
using samples::bytesOf;
using samples::newRun;
using samples::someFacts;
using samples::writeBytes;
using session::Fact;
using session::JournalError;
using session::RunId;
using session::StoredRun;

/// One folder for all faults, in memory where there is room for that: nothing here is about flushing.
class Place {
public:
    Place()
        : m_folder{fs::exists("/dev/shm") ? QStringLiteral("/dev/shm/basinbell-XXXXXX") : QString{}}
    {
    }
    [[nodiscard]] fs::path path() const { return m_folder.path().toStdString(); }
    [[nodiscard]] fs::path journal() const { return path() / "journal.sqlite"; }
    [[nodiscard]] fs::path writeAhead() const { return path() / "journal.sqlite-wal"; }
    void clear() const
    {
        for (const auto& file : fs::directory_iterator{path()})
            fs::remove(file.path());
    }

private:
    QTemporaryDir m_folder;
};

struct Counts {
    std::size_t faults = 0;
    std::size_t acknowledged = 0;  ///< Facts that had to be there.
    std::size_t lost = 0;
    std::size_t reported = 0;  ///< Faults that were noticed and said.

    void print(const char* what) const
    {
        std::printf("%s: %zu faults tried, %zu facts acknowledged, %zu lost; %zu times damage was reported\n",
                    what, faults, acknowledged, lost, reported);
    }
};

/// Facts as a run has them: heat, a tone, a correction, an amendment with its revision, how a zone turned
/// out.
std::vector<Fact> everyKind()
{
    std::vector<Fact> facts = someFacts(9);
    Fact heat = facts[0];
    heat.task = {.kind = core::stagger::TaskKind::Heat};
    heat.again = core::measure::Seconds{600};
    Fact amended = facts[0];
    amended.kind = FactKind::Amended;
    amended.task = {};
    amended.revision = 1;
    Fact instead = facts[1];
    instead.about = session::FactNumber{2};
    Fact outcome = facts[0];
    outcome.kind = FactKind::TurnedOut;
    outcome.outcome = core::run::Outcome::TooWarm;
    outcome.tone = "brassy at the nape";
    for (const Fact& fact : {heat, amended, instead, outcome})
        facts.push_back(fact);
    for (std::size_t place = 0; place < facts.size(); ++place)
        facts[place].number = session::FactNumber{static_cast<std::int64_t>(place) + 1};
    return facts;
}

const std::vector<std::string> revision{R"({"basinbell": 1, "who": "Berit comes"})", "second"};

/// A journal whose program was killed, and how long its write-ahead file was when each fact was acknowledged.
struct Killed {
    std::string database;
    std::string writeAhead;
    std::vector<std::size_t> lengths;
};

Killed killedJournal()
{
    const Place place;
    const auto journal = SqliteJournal::open(place.path()).value();
    const RunId run = journal->begin(newRun()).value();
    Killed killed;
    for (const Fact& fact : everyKind()) {
        if (fact.kind == FactKind::Amended) {
            EXPECT_TRUE(journal->amend(run, fact.revision, revision).has_value());
        }
        journal->append(run, std::span{&fact, 1}).value();
        killed.lengths.push_back(fs::file_size(place.writeAhead()));
    }
    killed.database = bytesOf(place.journal());
    killed.writeAhead = bytesOf(place.writeAhead());
    return killed;
}

/// The same folded into one file.
std::string restingJournal()
{
    const Place place;
    auto journal = SqliteJournal::open(place.path()).value();
    const RunId run = journal->begin(newRun()).value();
    EXPECT_TRUE(journal->amend(run, 1, revision).has_value());
    journal->append(run, everyKind()).value();
    journal.reset();
    return bytesOf(place.journal());
}

bool isBeginningOf(const std::vector<Fact>& part, const std::vector<Fact>& whole)
{
    return part.size() <= whole.size() && std::equal(part.begin(), part.end(), whole.begin());
}

/// That an amendment that is there has its services too.
bool hasItsRevision(const std::vector<Fact>& facts, const StoredRun& run)
{
    const bool amended = std::ranges::any_of(facts, [](const Fact& fact) { return fact.revision == 1; });
    return !amended || (!run.damaged && run.revisions == std::vector<std::vector<std::string>>{revision});
}

TEST(EveryFault, TheWriteAheadFileCutAtEachOfItsBytesLosesNothingThatWasAcknowledgedBefore)
{
    const Killed killed = killedJournal();
    const auto all = everyKind();
    const Place place;
    Counts counts;
    for (std::size_t length = 0; length <= killed.writeAhead.size(); ++length) {
        place.clear();
        writeBytes(place.journal(), killed.database);
        writeBytes(place.writeAhead(), killed.writeAhead.substr(0, length));
        const auto due = static_cast<std::size_t>(std::ranges::upper_bound(killed.lengths, length)
                                                  - killed.lengths.begin());
        ++counts.faults;
        counts.acknowledged += due;

        const auto opened = openJournal(place.path());
        ASSERT_TRUE(opened.has_value()) << "cut at " << length;
        const auto runs = opened->journal->unfinished().value();
        const auto facts = runs.empty() ? std::vector<Fact>{} : opened->journal->facts(runs[0].id).value();
        ASSERT_TRUE(isBeginningOf(facts, all)) << "cut at " << length;
        ASSERT_TRUE(runs.empty() || hasItsRevision(facts, runs[0])) << "cut at " << length;
        counts.lost += due - std::min(due, facts.size());
        counts.reported += opened->warnings.size();
    }
    counts.print("write-ahead file cut at every byte");
    EXPECT_EQ(counts.lost, 0u);
    EXPECT_GT(counts.acknowledged, counts.faults);
}

/// What a journal that was changed gives: nothing but what was written, or that it is damaged.
void expectTheTruthOrDamage(const Place& place, const std::vector<Fact>& all, Counts& counts,
                            const std::string& which)
{
    ++counts.faults;
    counts.acknowledged += all.size();
    const auto journal = SqliteJournal::open(place.path());
    const auto facts = journal ? (*journal)->facts(RunId{1}) : tl::unexpected{journal.error()};
    const auto run = journal ? (*journal)->run(RunId{1}) : tl::unexpected{journal.error()};
    if (!facts || !run || run->damaged) {
        ++counts.reported;
        return;
    }
    // The journal of another run, or of none, has no facts to be mistaken about.
    const bool empty = facts->empty() && run->run.services.empty();
    ASSERT_TRUE(empty || *facts == all) << which;
    ASSERT_TRUE(empty || run->run.services.empty() || run->run.services == newRun().services) << which;
    ASSERT_TRUE(empty || hasItsRevision(*facts, *run) || run->revisions.empty()) << which;
}

TEST(EveryFault, AFileChangedAtAnyOfItsBytesIsNeverTakenForAnother)
{
    const std::string whole = restingJournal();
    const auto all = everyKind();
    const Place place;
    Counts counts;
    for (std::size_t byte = 0; byte < whole.size(); ++byte) {
        std::string bytes = whole;
        bytes[byte] = static_cast<char>(bytes[byte] ^ static_cast<char>(1U << (byte % 8)));
        place.clear();
        writeBytes(place.journal(), bytes);
        expectTheTruthOrDamage(place, all, counts, "byte " + std::to_string(byte));
        ASSERT_FALSE(HasFatalFailure());
    }
    counts.print("one bit changed in every byte of the file");
    EXPECT_GT(counts.reported, counts.faults / 50);
}

TEST(EveryFault, APageThatIsEmptyOrAnotherOrRubbishIsNeverTakenForWhatItWas)
{
    const std::string whole = restingJournal();
    const auto all = everyKind();
    constexpr std::size_t page = 4096;
    ASSERT_EQ(whole.size() % page, 0u);
    std::mt19937 random{20260314};
    const Place place;
    Counts counts;
    for (std::size_t at = 0; at < whole.size(); at += page) {
        std::vector<std::string> instead{std::string(page, '\0'), std::string(page, '\xff'),
                                         std::string(page, ' ')};
        for (char& byte : instead.back())
            byte = static_cast<char>(random());
        for (std::size_t other = 0; other < whole.size(); other += page)
            if (other != at)
                instead.push_back(whole.substr(other, page));
        for (std::size_t kind = 0; kind < instead.size(); ++kind) {
            place.clear();
            std::string bytes = whole;
            bytes.replace(at, page, instead[kind]);
            writeBytes(place.journal(), bytes);
            expectTheTruthOrDamage(place, all, counts,
                                   "page " + std::to_string(at / page) + ", kind " + std::to_string(kind));
            ASSERT_FALSE(HasFatalFailure());
        }
    }
    counts.print("a page overwritten");
    EXPECT_GT(counts.reported, counts.faults / 4);
}

TEST(EveryFault, ADiskThatIsFullAtAnySizeLosesNothingThatWasAcknowledged)
{
    const auto all = someFacts(120);
    const Place place;
    Counts counts;
    for (rlim_t room = 0; room <= 600'000; room += 1'500) {
        place.clear();
        std::vector<Fact> acknowledged;
        std::optional<JournalError> error;
        {
            auto journal = std::unique_ptr<session::Journal>{};
            std::optional<RunId> run;
            {
                const samples::FullDisk full{room};
                auto opened = openJournal(place.path());
                ASSERT_TRUE(opened.has_value());
                journal = std::move(opened->journal);
                ++counts.faults;
                if (!journal->isDurable()) {
                    ASSERT_EQ(opened->warnings.size(), 1u);
                    ++counts.reported;
                    continue;
                }
                const auto begun = journal->begin(newRun());
                run = begun ? std::optional{*begun} : std::nullopt;
                error = begun ? std::nullopt : std::optional{begun.error()};
                for (std::size_t next = 0; !error && next < all.size(); ++next) {
                    const auto numbers = journal->append(*run, std::span{&all[next], 1});
                    if (numbers)
                        acknowledged.push_back(all[next]);
                    else
                        error = numbers.error();
                }
            }
            if (error) {
                ASSERT_EQ(error->kind, JournalError::Kind::NoSpace) << room << ": " << error->what;
                ++counts.reported;
            }
            // There is room again.
            if (!run)
                run = journal->begin(newRun()).value();
            for (std::size_t next = acknowledged.size(); next < all.size(); ++next) {
                journal->append(*run, std::span{&all[next], 1}).value();
                acknowledged.push_back(all[next]);
            }
            counts.acknowledged += acknowledged.size();
        }
        const auto again = SqliteJournal::open(place.path());
        ASSERT_TRUE(again.has_value()) << room << ": " << again.error().what;
        const auto facts = (*again)->facts(RunId{1}).value();
        counts.lost += acknowledged.size() - std::min(acknowledged.size(), facts.size());
        ASSERT_EQ(facts, acknowledged) << room;
    }
    counts.print("a full disk at every size");
    EXPECT_EQ(counts.lost, 0u);
    EXPECT_GT(counts.reported, counts.faults / 4);
}

}  // namespace
}  // namespace app::storage
