#pragma once

#include "core/service/service_file.h"

#include <QString>

#include <memory>

namespace app::desktop {

/// Reads and writes service files for the window. What goes wrong comes back in words.
class ServiceFiles {
public:
    explicit ServiceFiles(std::shared_ptr<const core::measure::TimeZones> zones, std::string localZone);

    /// The service in `path`, or everything that is wrong with it, a line each.
    [[nodiscard]] tl::expected<core::service::Service, QString> read(const QString& path) const;

    /// Leaves either the old file or the new one, whole. What went wrong, or nothing.
    [[nodiscard]] std::optional<QString> write(const QString& path,
                                               const core::service::Service& service) const;

private:
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    std::string m_localZone;
};

}  // namespace app::desktop
