#pragma once

#include "app/session/journal.h"

#include <QTemporaryDir>

#include <filesystem>
#include <string>
#include <vector>

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

session::Instant moment(int second);

/// A run of one service whose file holds a name.
session::NewRun newRun();

/// `count` facts that differ in every field, numbered from 1 as the journal would.
std::vector<session::Fact> someFacts(int count);

std::string bytesOf(const std::filesystem::path& file);
void writeBytes(const std::filesystem::path& file, const std::string& bytes);

}  // namespace app::storage::samples
