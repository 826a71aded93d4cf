#pragma once

#include "core/measure/time.h"
#include "core/service/service.h"

#include <QString>
#include <QStringList>

#include <tl/expected.hpp>

#include <iosfwd>
#include <string>
#include <vector>

namespace app::command {

/// The services in `files`, to be planned together by one crew: that of `crewFile`
/// or, where none is given, the one that all files which name a crew agree on. The
/// errors are lines that each begin with a file's name.
tl::expected<std::vector<core::service::Service>, std::vector<std::string>>
readServices(const QStringList& files, const QString& crewFile, std::istream& in,
             const core::measure::TimeZones& zones);

/// How two crews differ, "2 pairs of hands here, 3 there"; empty where they are the same.
std::string crewDifference(const core::service::Crew& here, const core::service::Crew& there);

}  // namespace app::command
