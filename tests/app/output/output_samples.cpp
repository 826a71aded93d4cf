#include "tests/app/output/output_samples.h"

#include "core/service/service_file.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace app::output::samples {

core::service::Service service(const std::string& text, const core::measure::TimeZones& zones)
{
    auto read = core::service::readService(std::string_view{text}, {zones, "UTC", {}});
    if (!read)
        throw std::runtime_error{core::service::problemText(read.error().front())};
    return std::move(*read);
}

std::string oneZone(const std::string& more, const std::string& zone)
{
    return R"({"basinbell": 1, "name": "Regrowth", )" + more + R"("zone": ")" + zone + R"(",
      "head": {"name": "The lamplighter", "kind": "wig"},
      "crew": {"hands": [{"name": "Wig room"}], "basins": 1},
      "coats": [{
        "name": "Coat",
        "bowls": [{"name": "Root colour", "mix": 5, "pot_life": 60, "note": "as the leaflet says"}],
        "zones": [{"name": "Root", "bowl": "Root colour", "apply": {"quickest": 20, "usual": 20, "slowest": 20},
          "clock": "end", "develop": {"least": 30, "target": 35, "most": 45}, "first_strand_most": 70,
          "looks": {"first": 20, "length": 1}}],
        "rinse": [{"name": "All together", "length": 6}]
      }]})";
}

core::stagger::Plan planOf(const core::service::Service& service, core::measure::Instant now)
{
    core::stagger::Question question;
    question.services = {service};
    question.now = now;
    auto plan = core::stagger::plan(question);
    if (!plan)
        throw std::runtime_error{plan.error().text};
    return std::move(*plan);
}

}  // namespace app::output::samples
