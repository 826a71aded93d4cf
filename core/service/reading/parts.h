#pragma once

#include "core/service/findings.h"
#include "core/service/json/value.h"
#include "core/service/reading/moment.h"
#include "core/service/service.h"

#include <string>
#include <vector>

/// One function for each part of the file. Each reads what it can, with
/// stand-ins for what it cannot, so that places in the service and places in the
/// file stay the same; what it could not read is in the findings.
namespace core::service::reading {

/// Stands for a bowl, group or zone whose name is not known.
inline constexpr std::size_t nowhere = static_cast<std::size_t>(-1);

Head readHead(const json::Value& value, const std::string& place, Findings& findings);
Crew readCrew(const json::Value& value, const std::string& place, const Clock& clock, Findings& findings);
Coat readCoat(const json::Value& value, const std::string& place, bool isOnly, const Clock& clock,
              Findings& findings);

/// What the zones of a coat refer to.
struct CoatNames {
    std::vector<std::string> zones;
    std::vector<std::string> bowls;
    std::vector<std::string> groups;
};

Zone readZone(const json::Value& value, const std::string& place, const CoatNames& names, const Clock& clock,
              Findings& findings);

}  // namespace core::service::reading
