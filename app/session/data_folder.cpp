#include "app/session/data_folder.h"

#include <QStandardPaths>

#include <cstdlib>

namespace app::session {

std::filesystem::path dataFolder(const std::string& asked)
{
    if (!asked.empty())
        return asked;
    if (const char* const environment = std::getenv("BASINBELL_DATA"); environment && *environment != '\0')
        return environment;
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation).toStdString();
}

}  // namespace app::session
