#include "app/session/stored_services.h"

#include "app/session/text.h"
#include "app/session/time_zones.h"
#include "core/service/service_file.h"

#include <QCoreApplication>

#include <sstream>

namespace app::session {

using core::service::Service;

tl::expected<std::vector<Service>, std::string>
servicesOf(const std::vector<std::string>& texts, Instant began, const core::measure::TimeZones& zones)
{
    if (texts.empty())
        return tl::unexpected{
            Text::tr("The service of this run was erased, so it cannot be taken up again.").toStdString()};
    const auto today =
        std::chrono::local_days{std::chrono::floor<std::chrono::days>(began).time_since_epoch()};
    std::vector<Service> services;
    for (const std::string& text : texts) {
        auto service = core::service::readService(text, {zones, localZone(), today});
        if (!service)
            return tl::unexpected{
                Text::tr("The service of this run cannot be read any more: %1")
                    .arg(QString::fromStdString(core::service::problemText(service.error().front())))
                    .toStdString()};
        services.push_back(std::move(*service));
    }
    return services;
}

tl::expected<std::vector<std::vector<Service>>, std::string>
revisionsOf(const StoredRun& stored, const core::measure::TimeZones& zones)
{
    std::vector<std::vector<Service>> revisions;
    for (const std::vector<std::string>& texts : stored.revisions) {
        auto services = servicesOf(texts, stored.run.began, zones);
        if (!services)
            return tl::unexpected{services.error()};
        revisions.push_back(std::move(*services));
    }
    return revisions;
}

std::vector<std::string> textsOf(const std::vector<Service>& services, const core::measure::TimeZones& zones)
{
    std::vector<std::string> texts;
    for (const Service& service : services) {
        std::ostringstream text;
        core::service::writeService(text, service, zones);
        texts.push_back(text.str());
    }
    return texts;
}

}  // namespace app::session
