#include "app/output/json_parts.h"

namespace app::output {

using core::service::Service;
using core::stagger::NoPlan;
using core::stagger::Worth;

namespace {

const char* kindWord(core::service::HeadKind kind)
{
    switch (kind) {
    case core::service::HeadKind::Person: return "person";
    case core::service::HeadKind::Wefts: return "wefts";
    case core::service::HeadKind::Wig: break;
    }
    return "wig";
}

}  // namespace

std::string jsonText(const Json& json)
{
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Json jsonHead(const char* format, const Services& services)
{
    Json list = Json::array();
    for (const Service& service : services)
        list.push_back({{"name", service.name},
                        {"head", service.head.name},
                        {"kind", kindWord(service.head.kind)},
                        {"time_zone", service.timeZone}});
    return {{format, 1}, {"services", list}};
}

Json worthJson(const Worth& worth)
{
    return {{"breach_hundredth_seconds", worth.breach.hundredthSeconds},
            {"deviation_hundredth_seconds", worth.deviation.hundredthSeconds},
            {"waste_seconds", worth.waste.count()},
            {"staleness_seconds", worth.staleness.count()}};
}

Json idOrNull(const std::optional<core::stagger::TaskId>& task)
{
    return task ? Json(core::stagger::taskIdText(*task)) : Json(nullptr);
}

Json nothingFitsJson(const NoPlan& noPlan)
{
    Json demands = Json::array();
    for (const auto& demand : noPlan.demands)
        demands.push_back({{"task", idOrNull(demand.task)}, {"what", demand.what.text()}});
    return {{"text", noPlan.text.text()},
            {"minimal", noPlan.minimal},
            {"stopped", noPlan.stopped},
            {"demands", demands}};
}

}  // namespace app::output
