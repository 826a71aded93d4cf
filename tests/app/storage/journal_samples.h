#pragma once

#include "app/session/journal.h"
#include "app/storage/sqlite_journal.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include <sys/resource.h>
#include <unistd.h>

/// What the tests of the journal share.
namespace app::storage::samples {

/// A folder that goes away with the test.
class Folder {
public:
    [[nodiscard]] std::filesystem::path path() const { return m_folder.path().toStdString(); }
    [[nodiscard]] std::filesystem::path journal() const { return path() / "journal.sqlite"; }
    [[nodiscard]] std::filesystem::path writeAhead() const { return path() / "journal.sqlite-wal"; }

private:
    QTemporaryDir m_folder;
};

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

session::Instant moment(int second);

/// A run of one service whose file holds a name, with what was said before it began.
session::NewRun newRun();

/// `count` facts that differ in every field, numbered from 1 as the journal would.
std::vector<session::Fact> someFacts(int count);

/// The journal in it, which must be sound.
std::unique_ptr<SqliteJournal> opened(const Folder& folder);

/// Makes the journal in it as the fifth layout was.
void goBackToLayoutFive(const Folder& folder);

/// That a run was ended.
session::Fact ending(int second);

/// Whether any file of the folder holds `text`.
bool standsAnywhere(const Folder& folder, const std::string& text);

std::string bytesOf(const std::filesystem::path& file);
void writeBytes(const std::filesystem::path& file, const std::string& bytes);

}  // namespace app::storage::samples
