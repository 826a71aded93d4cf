#include "app/storage/disk_error.h"

#include "app/storage/text.h"

#include <QCoreApplication>

#include <cerrno>
#include <system_error>

namespace app::storage {

using session::JournalError;

JournalError diskError(int systemError, const std::filesystem::path& place)
{
    const QString at = QString::fromStdString(place.string());
    switch (systemError) {
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
        return {JournalError::Kind::NoSpace,
                Text::tr("There is no space left to write %1. Free some space on that disk, or give another "
                         "folder with --data.")
                    .arg(at)
                    .toStdString()};
    case EACCES:
    case EPERM:
    case EROFS:
        return {
            JournalError::Kind::ReadOnly,
            Text::tr(
                "%1 may not be written. Allow this user to write there, or give another folder with --data.")
                .arg(at)
                .toStdString()};
    default:
        return {JournalError::Kind::Other,
                Text::tr("%1 cannot be used (%2). Give another folder with --data.")
                    .arg(at, QString::fromStdString(std::generic_category().message(systemError)))
                    .toStdString()};
    }
}

}  // namespace app::storage
