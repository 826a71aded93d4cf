#pragma once

#include "app/session/journal.h"

#include <filesystem>
#include <memory>

namespace app::storage {

class Database;
class FolderLock;

/// The journal on disk: SQLite in one file, write-ahead, every commit flushed to
/// the disk before `append` returns. One program at a time.
class SqliteJournal final : public session::Journal {
public:
    /// `folder` must exist. Refuses a file that does not pass SQLite's integrity
    /// check, a newer version of it, and a folder that is in use.
    static Result<std::unique_ptr<SqliteJournal>> open(const std::filesystem::path& folder);
    ~SqliteJournal() override;

    Result<session::RunId> begin(const session::NewRun& run) override;
    Result<void> amend(session::RunId run, std::size_t revision,
                       const std::vector<std::string>& services) override;
    Result<std::vector<session::FactNumber>> append(session::RunId run,
                                                    std::span<const session::Fact> facts) override;
    Result<std::vector<session::Fact>> facts(session::RunId run) override;
    Result<std::vector<session::StoredRun>> unfinished() override;
    Result<std::vector<session::StoredRun>> runs() override;
    Result<session::StoredRun> run(session::RunId run) override;
    Result<void> rebase(session::RunId run, const session::TimeBase& base) override;
    Result<void> eraseServices(session::RunId run) override;
    [[nodiscard]] bool isDurable() const override { return true; }

    /// SQLite's `synchronous` level of this connection; 2 is FULL.
    Result<std::string> flushing();

    static constexpr const char* fileName = "journal.sqlite";

private:
    SqliteJournal(std::unique_ptr<FolderLock> lock, std::unique_ptr<Database> database);

    std::unique_ptr<FolderLock> m_lock;
    std::unique_ptr<Database> m_database;
};

}  // namespace app::storage
