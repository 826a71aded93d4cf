#pragma once

#include "app/desktop/setup/edits.h"
#include "app/desktop/setup/moments.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <string>
#include <vector>

namespace app::desktop {

/// Where a cell is.
struct CellPlace {
    std::size_t coat = 0;
    std::size_t row = 0;
};

/// One column of a table in Set-up: how its cells read, and how what is typed changes the service.
struct Column {
    using Read = std::function<QString(const edits::Service&, const CellPlace&)>;
    /// False where the entry makes no sense; the service is then as it was.
    using Write = std::function<bool(edits::Service&, const CellPlace&, const QString&)>;
    using Choices = std::function<QStringList(const edits::Service&, const CellPlace&)>;

    QString title;
    QString tip;
    std::string key;  ///< Where it is in the service file, such as "develop.least".
    Read read;
    Write write;      ///< Absent where a cell is only shown.
    Choices choices;  ///< Given where one of several is chosen.
    QString help{};   ///< What an entry must look like, where it is not minutes.
    QString group{};  ///< What it and those beside it are about, said once above them; empty where it stands
                      ///< alone.
};

/// What an entry must look like, for the person whose entry made no sense.
QString entryHelp(const Column& column);

/// `moments` is what reads and shows clock times.
std::vector<Column> columnsOf(edits::Part part, const Moments& moments = {});

/// The place of a row in a service file: "coats[0].zones[2]".
std::string placeOf(edits::Part part, const CellPlace& place);

}  // namespace app::desktop
