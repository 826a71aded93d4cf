#include "app/storage/schema.h"

#include "app/storage/text.h"

#include <QCoreApplication>

#include <array>
#include <string>

namespace app::storage {

using session::JournalError;

namespace {

/// Marks the file as ours for `file` and for us: "BBel".
constexpr std::int64_t applicationId = 0x4242656c;

/// One step each. A step that has been released is never changed; a new layout is a new step at the end.
constexpr std::array steps{
    // Facts hold places and times alone. Names stand only in `service`, so that they can be erased.
    R"(
    CREATE TABLE run (
        id INTEGER PRIMARY KEY AUTOINCREMENT,
        preference TEXT NOT NULL,
        began INTEGER NOT NULL,
        simulated INTEGER NOT NULL,
        ended INTEGER
    );
    CREATE TABLE service (
        run INTEGER NOT NULL REFERENCES run (id),
        place INTEGER NOT NULL,
        file TEXT NOT NULL,
        PRIMARY KEY (run, place)
    );
    CREATE TABLE fact (
        run INTEGER NOT NULL REFERENCES run (id),
        number INTEGER NOT NULL,
        kind TEXT NOT NULL,
        task TEXT NOT NULL,
        about INTEGER,
        happened INTEGER NOT NULL,
        recorded INTEGER NOT NULL,
        verdict TEXT NOT NULL,
        again INTEGER NOT NULL,
        seal INTEGER NOT NULL,
        PRIMARY KEY (run, number)
    ) WITHOUT ROWID;
    )",
    // What amendments made of the services: names again, apart from the facts.
    R"(
    ALTER TABLE fact ADD COLUMN revision INTEGER NOT NULL DEFAULT 0;
    CREATE TABLE revision (
        run INTEGER NOT NULL REFERENCES run (id),
        number INTEGER NOT NULL,
        place INTEGER NOT NULL,
        file TEXT NOT NULL,
        PRIMARY KEY (run, number, place)
    );
    )",
    // What the clock of a run goes by, so that a program that takes it up goes by the same.
    R"(
    ALTER TABLE run ADD COLUMN boot TEXT;
    ALTER TABLE run ADD COLUMN wall_minus_elapsed INTEGER;
    )",
    // What was seen at a look, in words: apart from the facts, since words may be about a person. From here
    // on a fact may also be about heat, and services have seals as facts have.
    R"(
    ALTER TABLE run ADD COLUMN seal INTEGER;
    ALTER TABLE service ADD COLUMN seal INTEGER;
    ALTER TABLE revision ADD COLUMN seal INTEGER;
    ALTER TABLE fact ADD COLUMN words INTEGER NOT NULL DEFAULT 0;
    CREATE TABLE said (
        run INTEGER NOT NULL REFERENCES run (id),
        fact INTEGER NOT NULL,
        words TEXT NOT NULL,
        seal INTEGER NOT NULL,
        PRIMARY KEY (run, fact)
    );
    )",
    // How zones turned out: one of a few words, which names nobody. From here on a fact may also be about
    // that, or
    // be a note for next time; what is said of either stands in `said`.
    R"(
    ALTER TABLE fact ADD COLUMN outcome TEXT NOT NULL DEFAULT '';
    )",
    // What was said before the run began, and of how many things; why it was skipped is in words.
    R"(
    ALTER TABLE run ADD COLUMN prepared INTEGER NOT NULL DEFAULT 0;
    CREATE TABLE prepared (
        run INTEGER NOT NULL REFERENCES run (id),
        place INTEGER NOT NULL,
        what TEXT NOT NULL,
        state TEXT NOT NULL,
        at INTEGER,
        why TEXT NOT NULL,
        seal INTEGER NOT NULL,
        PRIMARY KEY (run, place)
    );
    )",
};

Database::Result<std::int64_t> pragma(Database& database, const std::string& name)
{
    return database.ask("PRAGMA " + name).map([](const std::string& text) {
        return text.empty() ? 0 : std::stoll(text);
    });
}

JournalError tooNew(std::int64_t version)
{
    return {
        JournalError::Kind::TooNew,
        Text::tr("The journal was written by a newer Basinbell (layout %1, this one knows %2). Use the newer "
                 "program, or give another folder with --data.")
            .arg(version)
            .arg(steps.size())
            .toStdString()};
}

Database::Result<void> checkIntegrity(Database& database)
{
    const auto verdict = database.ask("PRAGMA integrity_check(1)");
    if (!verdict)
        return tl::unexpected{verdict.error()};
    if (*verdict != "ok")
        return tl::unexpected{JournalError{
            JournalError::Kind::Damaged,
            Text::tr("The journal is damaged: %1.").arg(QString::fromStdString(*verdict)).toStdString()}};
    return {};
}

Database::Result<void> checkOwner(Database& database, std::int64_t version)
{
    const auto owner = pragma(database, "application_id");
    if (!owner)
        return tl::unexpected{owner.error()};
    const auto tables = database.ask("SELECT count(*) FROM sqlite_schema");
    if (!tables)
        return tl::unexpected{tables.error()};
    const bool fresh = *owner == 0 && version == 0 && *tables == "0";
    if (fresh || *owner == applicationId)
        return {};
    return tl::unexpected{JournalError{JournalError::Kind::Damaged,
                                       Text::tr("The file is not a journal of Basinbell.").toStdString()}};
}

Database::Result<void> upgrade(Database& database, std::size_t from)
{
    for (std::size_t step = from; step < steps.size(); ++step) {
        Transaction transaction{database};
        const auto done =
            transaction.begun()
                .and_then([&] { return database.run(steps.at(step)); })
                .and_then(
                    [&] { return database.run("PRAGMA application_id = " + std::to_string(applicationId)); })
                .and_then([&] { return database.run("PRAGMA user_version = " + std::to_string(step + 1)); })
                .and_then([&] { return transaction.commit(); });
        if (!done)
            return done;
    }
    return {};
}

}  // namespace

Database::Result<void> prepareSchema(Database& database)
{
    const auto version = pragma(database, "user_version");
    if (!version)
        return tl::unexpected{version.error()};
    if (*version < 0 || *version > static_cast<std::int64_t>(steps.size()))
        return tl::unexpected{tooNew(*version)};
    return checkOwner(database, *version)
        .and_then([&] { return checkIntegrity(database); })
        // Write-ahead, and flushed at every commit: what `append` has acknowledged outlives a power cut.
        // Erased text is overwritten, not merely unlinked.
        .and_then([&] {
            return database.run(
                "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;"
                "PRAGMA secure_delete = ON;");
        })
        .and_then([&] { return upgrade(database, static_cast<std::size_t>(*version)); });
}

}  // namespace app::storage
