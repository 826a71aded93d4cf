#include "app/desktop/service_files.h"

#include <QCoreApplication>
#include <QDate>
#include <QFile>
#include <QSaveFile>

#include <sstream>

namespace app::desktop {
namespace {

struct ServiceFilesText {
    Q_DECLARE_TR_FUNCTIONS(ServiceFiles)
};

std::chrono::local_days today()
{
    const QDate date = QDate::currentDate();
    return std::chrono::local_days{
        std::chrono::year_month_day{std::chrono::year{date.year()} / date.month() / date.day()}};
}

QString inWords(const std::vector<core::service::Problem>& problems)
{
    QStringList lines;
    for (const core::service::Problem& problem : problems)
        lines << QString::fromStdString(problemText(problem));
    return lines.join(QLatin1Char{'\n'});
}

}  // namespace

ServiceFiles::ServiceFiles(std::shared_ptr<const core::measure::TimeZones> zones, std::string localZone)
    : m_zones{std::move(zones)}
    , m_localZone{std::move(localZone)}
{
}

tl::expected<core::service::Service, QString> ServiceFiles::read(const QString& path) const
{
    QFile file{path};
    if (!file.open(QIODevice::ReadOnly))
        return tl::unexpected{ServiceFilesText::tr("%1 cannot be read: %2.").arg(path, file.errorString())};
    // One byte more than may be: the reader then says that the file is too long.
    const QByteArray bytes = file.read(static_cast<qint64>(core::service::mostFileBytes) + 1);
    const std::string_view text{bytes.constData(), static_cast<std::size_t>(bytes.size())};
    auto service = core::service::readService(text, {*m_zones, m_localZone, today()});
    if (!service)
        return tl::unexpected{inWords(service.error())};
    return *service;
}

std::optional<QString> ServiceFiles::write(const QString& path, const core::service::Service& service) const
{
    std::ostringstream text;
    core::service::writeService(text, service, *m_zones);
    QSaveFile file{path};
    const std::string bytes = text.str();
    const bool written = file.open(QIODevice::WriteOnly)
        && file.write(bytes.data(), static_cast<qint64>(bytes.size())) == static_cast<qint64>(bytes.size())
        && file.commit();
    if (written)
        return std::nullopt;
    return ServiceFilesText::tr("%1 was not saved: %2. What was there before is as it was.")
        .arg(path, file.errorString());
}

}  // namespace app::desktop
