#include "app/storage/open_journal.h"

#include "app/storage/disk_error.h"
#include "app/storage/sqlite_journal.h"
#include "app/storage/text.h"

#include <QCoreApplication>

#include <chrono>
#include <system_error>

namespace app::storage {

using session::JournalError;
using session::MemoryJournal;

namespace {

namespace fs = std::filesystem;

/// A name that no file of the folder has yet.
fs::path freeName(const fs::path& folder)
{
    const auto today = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
    const std::string stem = "journal-damaged-" + std::to_string(today.time_since_epoch().count());
    fs::path name = folder / (stem + ".sqlite");
    for (int copy = 2; fs::exists(name); ++copy)
        name = folder / (stem + "-" + std::to_string(copy) + ".sqlite");
    return name;
}

/// Moves the damaged journal out of the way with the files that belong to it.
std::error_code setAside(const fs::path& folder, const fs::path& aside)
{
    const fs::path damaged = folder / SqliteJournal::fileName;
    std::error_code error;
    fs::rename(damaged, aside, error);
    for (const char* const part : {"-wal", "-shm"}) {
        std::error_code missing;
        if (!error && fs::exists(damaged.string() + part, missing))
            fs::rename(damaged.string() + part, aside.string() + part, error);
    }
    return error;
}

OpenedJournal inMemory(const JournalError& error)
{
    OpenedJournal opened;
    opened.journal = std::make_unique<MemoryJournal>();
    opened.warnings.push_back(
        error.what + ' '
        + Text::tr(
              "Nothing can be kept meanwhile: if the program stops, its run is lost. Write down when each "
              "application began.")
              .toStdString());
    return opened;
}

tl::expected<OpenedJournal, JournalError> afresh(const fs::path& folder, const JournalError& damage)
{
    const fs::path aside = freeName(folder);
    if (setAside(folder, aside))
        return inMemory(damage);
    auto journal = SqliteJournal::open(folder);
    if (!journal)
        return inMemory(journal.error());
    OpenedJournal opened;
    opened.journal = std::move(*journal);
    opened.warnings.push_back(
        Text::tr("The journal was damaged. It was set aside, untouched, as %1 and a new "
                 "one begun. Runs in the old one cannot be taken up again.")
            .arg(QString::fromStdString(aside.string()))
            .toStdString());
    return opened;
}

bool mustBeRefused(JournalError::Kind kind)
{
    return kind == JournalError::Kind::InUse || kind == JournalError::Kind::TooNew;
}

}  // namespace

tl::expected<OpenedJournal, JournalError> openJournal(const fs::path& folder)
{
    std::error_code error;
    fs::create_directories(folder, error);
    if (error)
        return inMemory(diskError(error.value(), folder));
    auto journal = SqliteJournal::open(folder);
    if (journal) {
        OpenedJournal opened;
        opened.journal = std::move(*journal);
        return opened;
    }
    if (mustBeRefused(journal.error().kind))
        return tl::unexpected{journal.error()};
    if (journal.error().kind == JournalError::Kind::Damaged)
        return afresh(folder, journal.error());
    return inMemory(journal.error());
}

}  // namespace app::storage
