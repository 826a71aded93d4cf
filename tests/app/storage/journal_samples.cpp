#include "tests/app/storage/journal_samples.h"

#include "app/storage/database.h"

#include <fstream>
#include <iterator>

namespace app::storage::samples {

using core::run::FactKind;
using core::run::Prepared;
using core::run::Preparing;
using core::run::Verdict;
using core::stagger::TaskKind;
using session::Fact;
using session::FactNumber;

session::Instant moment(int second)
{
    return session::Instant{std::chrono::sys_days{std::chrono::year{2026} / 3 / 14}
                            + std::chrono::seconds{second}};
}

session::NewRun newRun()
{
    session::NewRun run;
    run.services = {R"({"basinbell": 1, "head": {"name": "Ottoline Fairweather"}})", R"({"second": true})"};
    run.preference = core::stagger::Preference::StartLate;
    run.began = moment(0);
    run.simulated = true;
    run.prepared = {{.what = Preparing::Sound, .state = Prepared::State::Done, .at = moment(-90)},
                    {.what = Preparing::Tests,
                     .state = Prepared::State::Skipped,
                     .why = "Ottoline has had this mixture before",
                     .at = moment(-60)},
                    {.what = Preparing::Protection}};
    return run;
}

void goBackToLayoutFive(const Folder& folder)
{
    const auto database = Database::open(folder.journal());
    EXPECT_TRUE(
        (*database)
            ->run("DROP TABLE prepared; ALTER TABLE run DROP COLUMN prepared; PRAGMA user_version = 5")
            .has_value());
}

std::vector<Fact> someFacts(int count)
{
    constexpr FactKind kinds[] = {FactKind::Started, FactKind::Finished, FactKind::Looked,
                                  FactKind::Dropped, FactKind::Undone,   FactKind::Moved};
    constexpr Verdict verdicts[] = {Verdict::Leave, Verdict::Again, Verdict::RinseNow};
    std::vector<Fact> facts;
    for (int place = 0; place < count; ++place) {
        Fact fact;
        fact.number = FactNumber{place + 1};
        fact.kind = kinds[place % 6];
        fact.task = {static_cast<std::size_t>(place % 2), static_cast<std::size_t>(place % 3),
                     static_cast<TaskKind>(place % 9), static_cast<std::size_t>(place % 5),
                     static_cast<std::size_t>(place % 7)};
        if (fact.kind == FactKind::Undone || fact.kind == FactKind::Moved)
            fact.about = FactNumber{place};
        fact.happened = moment(60 * place);
        fact.recorded = moment(60 * place + 7);
        fact.verdict = verdicts[place % 3];
        fact.again = core::measure::Seconds{place % 4 * 60};
        if (fact.kind == FactKind::Looked && place % 4 == 0)
            fact.tone = "still yellow (" + std::to_string(place) + ")";
        facts.push_back(fact);
    }
    return facts;
}

std::unique_ptr<SqliteJournal> opened(const Folder& folder)
{
    auto journal = SqliteJournal::open(folder.path());
    EXPECT_TRUE(journal.has_value()) << journal.error().what;
    return journal ? std::move(*journal) : nullptr;
}

Fact ending(int second)
{
    Fact fact;
    fact.kind = FactKind::Ended;
    fact.happened = moment(second);
    fact.recorded = moment(second);
    return fact;
}

bool standsAnywhere(const Folder& folder, const std::string& text)
{
    for (const auto& file : std::filesystem::directory_iterator{folder.path()})
        if (bytesOf(file.path()).find(text) != std::string::npos)
            return true;
    return false;
}

std::string bytesOf(const std::filesystem::path& file)
{
    std::ifstream in{file, std::ios::binary};
    return {std::istreambuf_iterator<char>{in}, {}};
}

void writeBytes(const std::filesystem::path& file, const std::string& bytes)
{
    std::ofstream{file, std::ios::binary | std::ios::trunc} << bytes;
}

}  // namespace app::storage::samples
