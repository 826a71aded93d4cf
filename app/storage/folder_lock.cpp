#include "app/storage/folder_lock.h"

#include "app/storage/disk_error.h"

#include <cerrno>
#include <string>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

namespace app::storage {

namespace {

/// Who holds the folder, as written into it; empty where that cannot be read.
std::string holder(int descriptor)
{
    char digits[32] = {};
    const ssize_t length = pread(descriptor, digits, sizeof digits - 1, 0);
    std::string text{digits, length > 0 ? static_cast<std::size_t>(length) : 0};
    return text.substr(0, text.find_first_not_of("0123456789"));
}

/// For the message of the next program only: a failure to write it does no harm.
void writeHolder(int descriptor)
{
    const std::string text = std::to_string(getpid()) + "\n";
    if (ftruncate(descriptor, 0) == 0) [[maybe_unused]]
        const ssize_t written = pwrite(descriptor, text.data(), text.size(), 0);
}

session::JournalError inUse(const std::filesystem::path& folder, const std::string& process)
{
    return {session::JournalError::Kind::InUse,
            "Another Basinbell" + (process.empty() ? std::string{} : " (process " + process + ")")
                + " is using the folder " + folder.string()
                + ". Close it first, or give this one a folder of its own with --data."};
}

}  // namespace

tl::expected<std::unique_ptr<FolderLock>, session::JournalError>
FolderLock::take(const std::filesystem::path& folder)
{
    const std::filesystem::path file = folder / fileName;
    const int descriptor = open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
    if (descriptor < 0)
        return tl::unexpected{diskError(errno, file)};
    if (flock(descriptor, LOCK_EX | LOCK_NB) == 0) {
        writeHolder(descriptor);
        return std::unique_ptr<FolderLock>{new FolderLock{descriptor}};
    }
    const int why = errno;
    const auto error = why == EWOULDBLOCK ? inUse(folder, holder(descriptor)) : diskError(why, file);
    close(descriptor);
    return tl::unexpected{error};
}

FolderLock::~FolderLock()
{
    close(m_descriptor);
}

}  // namespace app::storage
