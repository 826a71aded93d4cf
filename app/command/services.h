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

}  // namespace app::command
