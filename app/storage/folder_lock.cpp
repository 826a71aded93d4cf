#include "app/storage/folder_lock.h"

#include "app/storage/disk_error.h"
#include "app/storage/text.h"

#include <QCoreApplication>

#include <cerrno>
#include <string>

#include <fcntl.h>
#include <pwd.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace app::storage {

namespace {

/// "ada", or the number of a user that has no name.
std::string userName()
{
    char buffer[1024];
    passwd entry{};
    passwd* found = nullptr;
    if (getpwuid_r(geteuid(), &entry, buffer, sizeof buffer, &found) == 0 && found != nullptr)
        return found->pw_name;
    return std::to_string(geteuid());
}

/// Who holds the folder, as written into it: "process 4711 of ada". Empty where that cannot be read.
std::string holder(int descriptor)
{
    char buffer[96] = {};
    const ssize_t length = pread(descriptor, buffer, sizeof buffer - 1, 0);
    const std::string text{buffer, length > 0 ? static_cast<std::size_t>(length) : 0};
    const std::size_t end = text.find_first_not_of("0123456789");
    const std::string process = text.substr(0, end);
    if (process.empty())
        return {};
    // Whoever wrote only a number was a program of an older version.
    if (end == std::string::npos || text[end] != ' ')
        return Text::tr("process %1").arg(QString::fromStdString(process)).toStdString();
    const std::string user = text.substr(end + 1, text.find('\n', end) - end - 1);
    return Text::tr("process %1 of %2", "of a user")
        .arg(QString::fromStdString(process), QString::fromStdString(user))
        .toStdString();
}

/// For the message of the next program only: a failure to write it does no harm.
void writeHolder(int descriptor)
{
    const std::string text = std::to_string(getpid()) + " " + userName() + "\n";
    if (ftruncate(descriptor, 0) == 0) [[maybe_unused]]
        const ssize_t written = pwrite(descriptor, text.data(), text.size(), 0);
}

session::JournalError inUse(const std::filesystem::path& folder, const std::string& holder)
{
    return {
        session::JournalError::Kind::InUse,
        Text::tr("Another Basinbell%1 is using the folder %2. Close it first, or give this one a folder of "
                 "its own with --data.")
            .arg(QString::fromStdString(holder.empty() ? std::string{} : " (" + holder + ")"),
                 QString::fromStdString(folder.string()))
            .toStdString()};
}

/// What is said to somebody who may not write the folder: who holds it, where somebody does.
session::JournalError askHolder(const std::filesystem::path& folder, const std::filesystem::path& file)
{
    const int descriptor = open(file.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0)
        return diskError(EACCES, file);
    const bool held = flock(descriptor, LOCK_SH | LOCK_NB) != 0 && errno == EWOULDBLOCK;
    const auto error = held ? inUse(folder, holder(descriptor)) : diskError(EACCES, file);
    close(descriptor);
    return error;
}

}  // namespace

tl::expected<std::unique_ptr<FolderLock>, session::JournalError>
FolderLock::take(const std::filesystem::path& folder)
{
    const std::filesystem::path file = folder / fileName;
    // Others of the machine may read who holds the folder, and nothing else of it.
    const int descriptor = open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0644);
    if (descriptor < 0)
        return tl::unexpected{errno == EACCES ? askHolder(folder, file) : diskError(errno, file)};
    if (flock(descriptor, LOCK_EX | LOCK_NB) == 0) {
        [[maybe_unused]] const int shown = fchmod(descriptor, 0644);
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
