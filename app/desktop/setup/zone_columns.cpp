#include "app/desktop/setup/zone_columns.h"

#include "app/desktop/setup/column_makers.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>

namespace app::desktop {
namespace {

using core::measure::Seconds;
using core::service::After;
using core::service::ClockStart;
using core::service::Coat;
using core::service::Looks;
using core::service::Zone;
using edits::Service;
using makers::item;

struct ZoneColumnsText {
    Q_DECLARE_TR_FUNCTIONS(ZoneColumns)
};

template <typename List>
QStringList namesOf(const List& list)
{
    QStringList names;
    for (const auto& entry : list)
        names << QString::fromStdString(entry.name);
    return names;
}

Column bowlColumn()
{
    return makers::choice(
        ZoneColumnsText::tr("Bowl"), ZoneColumnsText::tr("The mixture it is applied from"), "bowl",
        [](const Service& service, const CellPlace& at) { return namesOf(service.coats[at.coat].bowls); },
        [](const Service& service, const CellPlace& at) { return item<Zone>(service, at).bowl; },
        [](Service& service, const CellPlace& at, std::size_t place) {
            item<Zone>(service, at).bowl = place;
        });
}

Column groupColumn()
{
    return makers::choice(
        ZoneColumnsText::tr("Rinse"), ZoneColumnsText::tr("The rinse group it goes under the water with"),
        "group",
        [](const Service& service, const CellPlace& at) { return namesOf(service.coats[at.coat].groups); },
        [](const Service& service, const CellPlace& at) { return item<Zone>(service, at).group; },
        [](Service& service, const CellPlace& at, std::size_t place) {
            item<Zone>(service, at).group = place;
        });
}

Column clockColumn()
{
    const auto choices = [](const Service&, const CellPlace&) {
        return QStringList{ZoneColumnsText::tr("all applied"), ZoneColumnsText::tr("first strand")};
    };
    return makers::choice(
        ZoneColumnsText::tr("Counts from"),
        ZoneColumnsText::tr("When the leaflet starts to count development"), "clock", choices,
        [](const Service& service, const CellPlace& at) {
            return static_cast<std::size_t>(item<Zone>(service, at).clock);
        },
        [](Service& service, const CellPlace& at, std::size_t place) {
            item<Zone>(service, at).clock = static_cast<ClockStart>(place);
        });
}

Column aloneColumn()
{
    const auto choices = [](const Service&, const CellPlace&) {
        return QStringList{ZoneColumnsText::tr("no"), ZoneColumnsText::tr("yes")};
    };
    return makers::choice(
        ZoneColumnsText::tr("Alone"), ZoneColumnsText::tr("Can be rinsed without wetting its neighbours"),
        "alone", choices,
        [](const Service& service, const CellPlace& at) { return item<Zone>(service, at).alone ? 1U : 0U; },
        [](Service& service, const CellPlace& at, std::size_t place) {
            item<Zone>(service, at).alone = place == 1;
        });
}

/// A target that moves takes with it looks that went on until the target.
Column targetColumn()
{
    Column column = makers::length<Zone>(
        ZoneColumnsText::tr("Target"), ZoneColumnsText::tr("Minutes of development to aim at"),
        "develop.target", [](Zone& zone) -> Seconds& { return zone.develop.target; });
    column.write = [plain = column.write](Service& service, const CellPlace& at, const QString& entry) {
        const Seconds before = item<Zone>(service, at).develop.target;
        if (!plain(service, at, entry))
            return false;
        Zone& zone = item<Zone>(service, at);
        if (zone.looks && zone.looks->until == before)
            zone.looks->until = zone.develop.target;
        return true;
    };
    return column;
}

Seconds usualTolerance(const std::optional<Seconds>& every)
{
    constexpr Seconds most{120};
    return every ? std::min(most, *every / 2) : most;
}

/// The first look makes the looks, and taking it out takes them all out.
Column firstLookColumn()
{
    const auto read = [](const Service& service, const CellPlace& at) {
        const Zone& zone = item<Zone>(service, at);
        return zone.looks ? words::minutes(zone.looks->first) : QString{};
    };
    const auto write = [](Service& service, const CellPlace& at, const QString& entry) {
        Zone& zone = item<Zone>(service, at);
        const std::optional<Seconds> first = lengthOf(entry);
        if (!first && !entry.trimmed().isEmpty())
            return false;
        if (!first)
            zone.looks.reset();
        else if (zone.looks)
            zone.looks->first = *first;
        else
            zone.looks = Looks{*first, {}, Seconds{60}, usualTolerance({}), zone.develop.target};
        return true;
    };
    return {ZoneColumnsText::tr("First look"),
            ZoneColumnsText::tr("Minutes of development at the first strand test; empty for none"),
            "looks.first",
            read,
            write,
            {}};
}

Column everyLookColumn()
{
    const auto read = [](const Service& service, const CellPlace& at) {
        const Zone& zone = item<Zone>(service, at);
        return zone.looks && zone.looks->every ? words::minutes(*zone.looks->every) : QString{};
    };
    const auto write = [](Service& service, const CellPlace& at, const QString& entry) {
        Zone& zone = item<Zone>(service, at);
        const std::optional<Seconds> every = lengthOf(entry);
        if (!every)
            return entry.trimmed().isEmpty() && (zone.looks ? (zone.looks->every.reset(), true) : true);
        if (!zone.looks)
            zone.looks = Looks{*every, {}, Seconds{60}, Seconds{0}, zone.develop.target};
        zone.looks->every = every;
        zone.looks->tolerance = usualTolerance(every);
        return true;
    };
    return {ZoneColumnsText::tr("Then every"),
            ZoneColumnsText::tr("Minutes between looks; empty for one look"),
            "looks.every",
            read,
            write,
            {}};
}

Column lookLengthColumn()
{
    const auto read = [](const Service& service, const CellPlace& at) {
        const Zone& zone = item<Zone>(service, at);
        return zone.looks ? words::minutes(zone.looks->length) : QString{};
    };
    const auto write = [](Service& service, const CellPlace& at, const QString& entry) {
        Zone& zone = item<Zone>(service, at);
        const std::optional<Seconds> length = lengthOf(entry);
        if (length && zone.looks)
            zone.looks->length = *length;
        return length && zone.looks;
    };
    return {ZoneColumnsText::tr("A look"),
            ZoneColumnsText::tr("Minutes that one look takes"),
            "looks.length",
            read,
            write,
            {}};
}

/// Gaps that were given stay with the zones that are still named.
bool writeAfter(Service& service, const CellPlace& at, const QString& entry)
{
    const Coat& coat = service.coats[at.coat];
    std::vector<After> chosen;
    for (const QString& part : entry.split(QLatin1Char{','}, Qt::SkipEmptyParts)) {
        const auto named = std::ranges::find(coat.zones, part.trimmed().toStdString(), &Zone::name);
        if (named == coat.zones.end())
            return false;
        const auto zone = static_cast<std::size_t>(named - coat.zones.begin());
        const auto& before = coat.zones[at.row].after;
        const auto kept = std::ranges::find(before, zone, &After::zone);
        chosen.push_back(kept == before.end() ? After{zone, {}} : *kept);
    }
    item<Zone>(service, at).after = std::move(chosen);
    return true;
}

Column afterColumn()
{
    const auto read = [](const Service& service, const CellPlace& at) {
        QStringList names;
        for (const After& after : item<Zone>(service, at).after)
            names << QString::fromStdString(service.coats[at.coat].zones[after.zone].name);
        return names.join(QStringLiteral(", "));
    };
    return {ZoneColumnsText::tr("After"),
            ZoneColumnsText::tr("Zones that must be applied before it"),
            "after",
            read,
            writeAfter,
            {},
            ZoneColumnsText::tr("Name zones of this coat, with commas between them.")};
}

QString lateText(const core::service::LateJob& job)
{
    return ZoneColumnsText::tr("%1 %2, %3 before water", "a job, how long it takes, when")
        .arg(QString::fromStdString(job.name), words::minutes(job.length), words::minutes(job.before));
}

/// "Emulsify 2, 5 before water"; the last words may be left out.
std::optional<core::service::LateJob> lateJobOf(const QString& entry)
{
    static const QRegularExpression shape{
        QStringLiteral(R"(^\s*(\S.*?)\s+([\d:.]+)(?:\s*min)?\s*,\s*([\d:.]+)(?:\s*min)?(?:\s+\D*)?$)")};
    const auto match = shape.match(entry);
    if (!match.hasMatch())
        return std::nullopt;
    const auto length = lengthOf(match.captured(2));
    const auto before = lengthOf(match.captured(3));
    if (!length || !before)
        return std::nullopt;
    return core::service::LateJob{match.captured(1).toStdString(), *before, *length};
}

/// A tolerance that was given stays with a job of that name.
bool writeLate(Service& service, const CellPlace& at, const QString& entry)
{
    std::vector<core::service::LateJob> jobs;
    Zone& zone = item<Zone>(service, at);
    for (const QString& part : entry.split(QLatin1Char{';'}, Qt::SkipEmptyParts)) {
        auto job = lateJobOf(part);
        if (!job)
            return false;
        const auto same = std::ranges::find(zone.late, job->name, &core::service::LateJob::name);
        if (same != zone.late.end())
            job->tolerance = same->tolerance;
        jobs.push_back(*std::move(job));
    }
    zone.late = std::move(jobs);
    return true;
}

Column lateColumn()
{
    const auto read = [](const Service& service, const CellPlace& at) {
        QStringList jobs;
        for (const core::service::LateJob& job : item<Zone>(service, at).late)
            jobs << lateText(job);
        return jobs.join(QStringLiteral("; "));
    };
    return {ZoneColumnsText::tr("Late jobs"),
            ZoneColumnsText::tr("Hands-on jobs tied to the rinse, such as: Emulsify 2, 5 before water"),
            "late",
            read,
            writeLate,
            {},
            ZoneColumnsText::tr("Type the job, its minutes, and how many minutes before water it starts: "
                                "Emulsify 2, 5 before water. A semicolon stands between several.")};
}

std::vector<Column> applyingColumns()
{
    return {
        makers::length<Zone>(ZoneColumnsText::tr("Quickest"),
                             ZoneColumnsText::tr("Minutes to apply at the quickest"), "apply.quickest",
                             [](Zone& zone) -> Seconds& { return zone.apply.quickest; }),
        makers::length<Zone>(ZoneColumnsText::tr("Usual"), ZoneColumnsText::tr("Minutes to apply as a rule"),
                             "apply.usual", [](Zone& zone) -> Seconds& { return zone.apply.usual; }),
        makers::length<Zone>(ZoneColumnsText::tr("Slowest"),
                             ZoneColumnsText::tr("Minutes to apply at the slowest"), "apply.slowest",
                             [](Zone& zone) -> Seconds& { return zone.apply.slowest; }),
    };
}

std::vector<Column> developmentColumns()
{
    return {
        clockColumn(),
        makers::length<Zone>(ZoneColumnsText::tr("Least"),
                             ZoneColumnsText::tr("Fewest minutes of development, from the leaflet"),
                             "develop.least", [](Zone& zone) -> Seconds& { return zone.develop.least; }),
        targetColumn(),
        makers::length<Zone>(ZoneColumnsText::tr("Most"),
                             ZoneColumnsText::tr("Most minutes of development, from the leaflet"),
                             "develop.most", [](Zone& zone) -> Seconds& { return zone.develop.most; }),
    };
}

std::vector<Column> strandColumns()
{
    return {
        makers::optionalLength<Zone>(
            ZoneColumnsText::tr("First strand"),
            ZoneColumnsText::tr("Most minutes the first strand may carry the mixture, until water"),
            "first_strand_most", &Zone::firstStrandMost),
        makers::optionalLength<Zone>(
            ZoneColumnsText::tr("Last strand"),
            ZoneColumnsText::tr("Fewest minutes the last strand must carry it, until water"),
            "last_strand_least", &Zone::lastStrandLeast),
    };
}

}  // namespace

std::vector<Column> zoneColumns()
{
    std::vector<Column> all{
        makers::text<Zone>(ZoneColumnsText::tr("Zone"),
                           ZoneColumnsText::tr("What this part of the head is called"), "name", &Zone::name),
        bowlColumn(),
    };
    const auto add = [&all](const QString& group, const std::vector<Column>& columns) {
        for (const Column& column : columns) {
            all.push_back(column);
            all.back().group = group;
        }
    };
    add(ZoneColumnsText::tr("Applying, min"), applyingColumns());
    add(ZoneColumnsText::tr("Development, min"), developmentColumns());
    add(ZoneColumnsText::tr("Looks, min"), {firstLookColumn(), everyLookColumn(), lookLengthColumn()});
    add(ZoneColumnsText::tr("Rinsing"), {groupColumn(), aloneColumn()});
    add(ZoneColumnsText::tr("Until water, min"), strandColumns());
    all.push_back(lateColumn());
    add(ZoneColumnsText::tr("Begins"), {afterColumn()});
    return all;
}

}  // namespace app::desktop
