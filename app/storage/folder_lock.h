#pragma once

#include "app/session/journal.h"

#include <filesystem>
#include <memory>

namespace app::storage {

/// Holds a folder for this program alone, until it goes away. The kernel lets go
/// of it when the program dies, however it dies, so a killed run never leaves a
/// folder locked.
class FolderLock {
public:
    static tl::expected<std::unique_ptr<FolderLock>, session::JournalError>
    take(const std::filesystem::path& folder);
    FolderLock(const FolderLock&) = delete;
    FolderLock& operator=(const FolderLock&) = delete;
    ~FolderLock();

    static constexpr const char* fileName = "in-use";

private:
    explicit FolderLock(int descriptor)
        : m_descriptor{descriptor}
    {
    }
    int m_descriptor;
};

}  // namespace app::storage
