#include "app/command/input.h"

#include "app/session/time_zones.h"
#include "core/service/service_file.h"

#include <QDateTime>
#include <QRegularExpression>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <istream>

namespace app::command {

using core::measure::Instant;
using core::measure::LocalTime;
using core::measure::Seconds;
using core::measure::TimeZones;
using core::service::Service;

namespace {

std::chrono::local_days todayIn(const std::string& zone, const TimeZones& zones)
{
    const auto now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
    return std::chrono::floor<std::chrono::days>(zones.localAt(now, zone));
}

struct Typed {
    std::optional<QDate> date;
    QTime time;
    std::optional<Seconds> offset;
};

std::optional<Typed> typedMoment(const QString& text)
{
    static const QRegularExpression form{
        QStringLiteral(R"(^(?:(\d{4}-\d\d-\d\d)[T ])?(\d?\d:\d\d(?::\d\d)?)\s*(Z|[+-]\d\d:\d\d)?$)")};
    const auto match = form.match(text.trimmed());
    if (!match.hasMatch())
        return std::nullopt;
    Typed typed;
    if (match.hasCaptured(1) && !match.captured(1).isEmpty())
        typed.date = QDate::fromString(match.captured(1), Qt::ISODate);
    typed.time = QTime::fromString(
        match.captured(2).rightJustified(match.captured(2).size() > 5 ? 8 : 5, u'0'), Qt::ISODate);
    const QString offset = match.captured(3);
    if (offset == QLatin1String{"Z"}) {
        typed.offset = Seconds{0};
    } else if (!offset.isEmpty()) {
        const int minutes = offset.mid(1, 2).toInt() * 60 + offset.mid(4, 2).toInt();
        typed.offset = Seconds{offset.startsWith(u'-') ? -60 * minutes : 60 * minutes};
    }
    const bool valid = typed.time.isValid() && (!typed.date || typed.date->isValid());
    return valid ? std::optional{typed} : std::nullopt;
}

LocalTime localTimeOf(const Typed& typed, std::chrono::local_days today)
{
    const auto day = typed.date
        ? std::chrono::local_days{std::chrono::days{QDate{1970, 1, 1}.daysTo(*typed.date)}}
        : today;
    return day + Seconds{QTime{0, 0}.secsTo(typed.time)};
}

}  // namespace

tl::expected<Service, std::vector<std::string>> readServiceFile(const QString& file, std::istream& in,
                                                                const TimeZones& zones)
{
    const std::string zone = session::localZone();
    const core::service::ReadContext context{zones, zone, todayIn(zone, zones)};
    const std::string name = file == QLatin1String{"-"} ? "standard input" : file.toStdString();
    tl::expected<Service, std::vector<core::service::Problem>> read;
    if (file == QLatin1String{"-"}) {
        read = core::service::readService(in, context);
    } else {
        std::error_code error;
        if (std::filesystem::is_directory(name, error))
            return tl::unexpected{std::vector{name + ": this is a folder; a service file is needed."}};
        errno = 0;
        std::ifstream stream{name, std::ios::binary};
        if (!stream)
            return tl::unexpected{std::vector{name + ": it cannot be read (" + std::strerror(errno) + ")."}};
        read = core::service::readService(stream, context);
    }
    if (read)
        return std::move(*read);
    std::vector<std::string> lines;
    for (const auto& problem : read.error())
        lines.push_back(name + ": " + core::service::problemText(problem));
    return tl::unexpected{lines};
}

tl::expected<Instant, std::string> readMoment(const QString& text, const std::string& zone,
                                              const TimeZones& zones, Instant now)
{
    const auto typed = typedMoment(text);
    if (!typed)
        return tl::unexpected{
            "--from " + text.toStdString()
            + ": it must be a time such as 14:30, 2026-03-14T14:30 or 2026-03-14T14:30+01:00."};
    const LocalTime local =
        localTimeOf(*typed, std::chrono::floor<std::chrono::days>(zones.localAt(now, zone)));
    if (typed->offset)
        return Instant{local.time_since_epoch() - *typed->offset};
    const auto moments = zones.instantsOf(local, zone);
    if (moments.size() == 1)
        return moments.front();
    const std::string offer = " Add the distance from UTC, such as +01:00.";
    return tl::unexpected{"--from " + text.toStdString()
                          + (moments.empty()
                                 ? ": the clocks in " + zone + " skip that time that day." + offer
                                 : ": the clocks in " + zone + " show that time twice that day." + offer)};
}

}  // namespace app::command
