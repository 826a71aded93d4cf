#include "app/desktop/setup/moments.h"

#include <QRegularExpression>

#include <algorithm>

namespace app::desktop {

using core::measure::Instant;
using core::measure::Interval;
using core::measure::LocalTime;
using core::measure::Seconds;

Moments::Moments(std::shared_ptr<const core::measure::TimeZones> zones, std::function<Instant()> now)
    : m_zones{std::move(zones)}
    , m_now{std::move(now)}
{
}

QDateTime Moments::wall(Instant moment, const std::string& zone) const
{
    const LocalTime local =
        m_zones->knows(zone) ? m_zones->localAt(moment, zone) : LocalTime{moment.time_since_epoch()};
    return QDateTime::fromSecsSinceEpoch(local.time_since_epoch().count(), Qt::UTC);
}

QString Moments::text(Instant moment, const std::string& zone, Instant base) const
{
    const QDateTime shown = wall(moment, zone);
    const bool sameDay = shown.date() == wall(base, zone).date();
    const bool wholeMinute = shown.time().second() == 0;
    const QString time = wholeMinute ? QStringLiteral("HH:mm") : QStringLiteral("HH:mm:ss");
    return shown.toString(sameDay ? time : QStringLiteral("yyyy-MM-dd ") + time);
}

std::optional<Instant> Moments::of(const QString& entry, const std::string& zone, Instant base) const
{
    static const QRegularExpression shape{
        QStringLiteral(R"(^\s*(?:(\d{4}-\d\d-\d\d)\s+)?(\d{1,2}):(\d\d)(?::(\d\d))?\s*$)")};
    const auto match = shape.match(entry);
    if (!match.hasMatch())
        return std::nullopt;
    const QDate day = match.captured(1).isEmpty() ? wall(base, zone).date()
                                                  : QDate::fromString(match.captured(1), Qt::ISODate);
    const QTime time{match.captured(2).toInt(), match.captured(3).toInt(), match.captured(4).toInt()};
    const QDateTime typed{day, time, Qt::UTC};
    if (!day.isValid() || !time.isValid())
        return std::nullopt;
    const LocalTime wanted{Seconds{typed.toSecsSinceEpoch()}};
    if (!m_zones->knows(zone))
        return Instant{wanted.time_since_epoch()};
    const auto instants = m_zones->instantsOf(wanted, zone);
    return instants.empty() ? std::nullopt : std::optional{instants.front()};
}

QString Moments::text(const std::vector<Interval>& spans, const std::string& zone, Instant base) const
{
    QStringList texts;
    for (const Interval& span : spans)
        texts << text(span.from, zone, base) + QStringLiteral("\u2013") + text(span.until, zone, base);
    return texts.join(QStringLiteral(", "));
}

std::optional<std::vector<Interval>> Moments::spansOf(const QString& entry, const std::string& zone,
                                                      Instant base) const
{
    // A dash between two times, not those inside a date; or the word for it in one of the languages.
    static const QRegularExpression dash{QStringLiteral("(?<=:\\d\\d)\\s*(?:-|\u2013|to|bis|à|a)\\s*")};
    std::vector<Interval> spans;
    for (const QString& part : entry.split(QLatin1Char{','}, Qt::SkipEmptyParts)) {
        const QStringList ends = part.split(dash);
        if (ends.size() != 2)
            return std::nullopt;
        const auto from = of(ends[0], zone, base);
        const auto until = of(ends[1], zone, base);
        if (!from || !until || *until <= *from)
            return std::nullopt;
        spans.push_back({*from, *until});
    }
    std::ranges::sort(spans, {}, &Interval::from);
    for (std::size_t place = 1; place < spans.size(); ++place)
        if (spans[place].from < spans[place - 1].until)
            return std::nullopt;
    return spans;
}

}  // namespace app::desktop
