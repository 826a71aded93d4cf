#include "app/storage/disk_error.h"

#include <cerrno>
#include <system_error>

namespace app::storage {

using session::JournalError;

JournalError diskError(int systemError, const std::filesystem::path& place)
{
    const std::string at = place.string();
    switch (systemError) {
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
        return {JournalError::Kind::NoSpace,
                "There is no space left to write " + at
                    + ". Free some space on that disk, or give another folder with --data."};
    case EACCES:
    case EPERM:
    case EROFS:
        return {
            JournalError::Kind::ReadOnly,
            at + " may not be written. Allow this user to write there, or give another folder with --data."};
    default:
        return {JournalError::Kind::Other,
                at + " cannot be used (" + std::generic_category().message(systemError)
                    + "). Give another folder with --data."};
    }
}

}  // namespace app::storage
