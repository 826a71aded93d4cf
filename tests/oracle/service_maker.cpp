#include "tests/oracle/service_maker.h"

namespace oracle {

namespace service = core::service;

service::Zone makeZone(const std::string& name, Seconds apply, Span develop)
{
    service::Zone zone;
    zone.name = name;
    zone.apply = {apply, apply, apply};
    zone.develop = {develop.least, develop.target, develop.most};
    return zone;
}

service::Service makeService(std::vector<service::Zone> zones, Seconds rinse)
{
    service::Coat coat;
    coat.name = "Coat 1";
    coat.bowls.push_back({.name = "Bowl 1", .mix = Seconds{0}, .potLife = {}, .note = {}});
    coat.zones = std::move(zones);
    coat.groups.push_back({.name = "All", .rinse = rinse, .waterEarliest = {}, .waterLatest = {}});
    service::Service made;
    made.name = "A wig";
    made.crew.hands.push_back({.name = "Hands 1", .away = {}, .kinds = {}});
    made.coats.push_back(std::move(coat));
    return made;
}

core::stagger::Question ask(service::Service service)
{
    core::stagger::Question question;
    question.services.push_back(std::move(service));
    return question;
}

}  // namespace oracle
