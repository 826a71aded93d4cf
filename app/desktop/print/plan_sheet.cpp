#include "app/desktop/print/plan_sheet.h"

#include "app/desktop/look/strand_words.h"
#include "app/desktop/print/text.h"
#include "app/desktop/records/result_words.h"
#include "app/desktop/sentences.h"
#include "app/desktop/setup/plan_text.h"
#include "app/desktop/words.h"
#include "app/output/plan_words.h"
#include "app/output/wall_clock.h"
#include "app/session/cautions.h"
#include "app/view/give_view.h"
#include "core/run/zone_record.h"
#include "core/stagger/head_name.h"

#include <QCoreApplication>

#include <algorithm>

namespace app::desktop::print {
namespace {

using core::service::Coat;
using core::service::Service;
using core::service::Zone;
using core::stagger::PlannedTask;
using core::stagger::PlannedZone;
using core::stagger::TaskKind;
using words::named;

/// Writes the sheet of one head.
class PlanWriter {
public:
    PlanWriter(const PlanToPrint& planned, std::size_t head, const Theme& theme,
               const std::shared_ptr<const core::measure::TimeZones>& zones);

    [[nodiscard]] Sheet sheet() const;

private:
    [[nodiscard]] QString subtitle() const;
    [[nodiscard]] QString worth() const;
    [[nodiscard]] Part picture(std::size_t coat) const;
    [[nodiscard]] Part timetable() const;
    [[nodiscard]] QString note(const PlannedTask& task) const;
    [[nodiscard]] Part limits() const;
    [[nodiscard]] QString otherLimits(const Zone& zone, const PlannedZone& planned) const;
    [[nodiscard]] Part bowls() const;
    [[nodiscard]] QStringList bowlRow(std::size_t coat, std::size_t bowl) const;
    [[nodiscard]] core::measure::Instant firstUse(std::size_t coat, std::size_t bowl) const;
    [[nodiscard]] QString ofCoat(std::size_t coat, const QString& what) const;
    [[nodiscard]] QString moment(core::measure::Instant at) const { return named(m_clock.text(at)); }
    [[nodiscard]] const Service& service() const { return m_planned.services[m_head]; }

    const PlanToPrint& m_planned;
    std::size_t m_head;
    const Theme& m_theme;
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    app::output::WallClock m_clock;
};

PlanWriter::PlanWriter(const PlanToPrint& planned, std::size_t head, const Theme& theme,
                       const std::shared_ptr<const core::measure::TimeZones>& zones)
    : m_planned{planned}
    , m_head{head}
    , m_theme{theme}
    , m_zones{zones}
    , m_clock{app::output::wallClockOf(planned.plan, planned.services.front(), *zones)}
{
}

Sheet PlanWriter::sheet() const
{
    Sheet sheet;
    sheet.title = service().name.empty() ? Text::tr("Service") : named(service().name);
    if (!service().head.name.empty())
        sheet.title = Text::tr("%1: %2", "service, head").arg(sheet.title, named(service().head.name));
    sheet.subtitle = subtitle();
    sheet.foot = leafletFirst();
    for (std::size_t coat = 0; coat < service().coats.size(); ++coat)
        sheet.parts.push_back(picture(coat));
    sheet.parts.front().text = worth();
    sheet.parts.push_back(timetable());
    sheet.parts.push_back(limits());
    sheet.parts.push_back(bowls());
    return sheet;
}

QString PlanWriter::subtitle() const
{
    const auto& plan = m_planned.plan.data();
    QString text = Text::tr("%1, times in %2")
                       .arg(words::day(plan.start, *m_zones, m_clock.zone()), named(m_clock.zone()));
    if (m_clock.clocksChange())
        text +=
            Text::tr(". The clocks change while this lasts; +01:00 and the like is the distance from UTC");
    return m_planned.state ? Text::tr("%1. As it stood at %2").arg(text, moment(m_planned.state->now)) : text;
}

QString PlanWriter::worth() const
{
    const auto& plan = m_planned.plan.data();
    const WallClock clock{m_zones, m_planned.services.front().timeZone};
    QStringList said{plan_text::summary(plan, m_planned.services.size(), clock)};
    if (!m_planned.state)
        said << plan_text::give(view::giveView(m_planned.services, plan, m_head));
    if (m_planned.forecast)
        said << plan_text::forecast(*m_planned.forecast);
    for (const std::string& remark :
         app::output::remarks(m_planned.services, m_planned.plan, app::output::Remarks::Counted))
        said << named(remark);
    said.removeAll(QString{});
    return said.join(QLatin1Char{' '});
}

Part PlanWriter::picture(std::size_t coat) const
{
    const auto& services = m_planned.services;
    Part part;
    if (service().coats.size() > 1)
        part.heading = named(service().coats[coat].name);
    Drawing drawing;
    drawing.picture = m_planned.state ? view::livePicture(services, *m_planned.state, {{m_head, coat}})
                                      : view::plannedPicture(services, m_planned.plan.data(), {m_head, coat});
    if (m_planned.forecast && !m_planned.state)
        view::addForecast(drawing.picture, services, *m_planned.forecast);
    const WallClock clock{m_zones, services.front().timeZone};
    drawing.words = strandWords(m_theme, drawing.picture, clock, [services, head = m_head](const auto& id) {
        return id.service == head ? inWords(core::stagger::taskName(services[id.service], id))
                                  : named(core::stagger::headName(services, id.service));
    });
    part.drawing = std::move(drawing);
    return part;
}

QString PlanWriter::ofCoat(std::size_t coat, const QString& what) const
{
    return service().coats.size() > 1
        ? Text::tr("%1: %2", "coat, what").arg(named(service().coats[coat].name), what)
        : what;
}

/// What else is to be known of a task: whose hands make it, what goes under the water, which basin, how long
/// it goes on by itself; and of what runs that it does, or is done.
QString PlanWriter::note(const PlannedTask& task) const
{
    const Coat& coat = service().coats[task.id.coat];
    QStringList notes;
    if (task.state == core::stagger::TaskState::Done)
        notes << Text::tr("done");
    if (task.state == core::stagger::TaskState::Running)
        notes << Text::tr("goes on");
    if (task.madeWhile)
        notes << Text::tr("by the hands that apply %1")
                     .arg(named(m_planned.services[task.madeWhile->service]
                                    .coats[task.madeWhile->coat]
                                    .zones[task.madeWhile->item]
                                    .name));
    if (task.id.kind == TaskKind::Rinse) {
        const core::stagger::Progress nothing;
        const core::stagger::Progress& progress = m_planned.state ? m_planned.state->progress : nothing;
        std::vector<std::string> zones;
        for (const core::stagger::TaskId& zone : core::run::zonesUnder(m_planned.services, progress, task.id))
            zones.push_back(coat.zones[zone.item].name);
        notes << words::joined(zones);
    }
    if (task.basin && m_planned.services.front().crew.basins > 1)
        notes << Text::tr("basin %1").arg(*task.basin + 1);
    if (task.id.kind == TaskKind::Dry && coat.dryUnattended.count() > 0)
        notes << Text::tr("then %1 by itself").arg(words::length(coat.dryUnattended));
    return notes.join(QStringLiteral("; "));
}

Part PlanWriter::timetable() const
{
    Part part{Text::tr("In order"), {}, {}, Table{}};
    Table& table = *part.table;
    table.headings = {Text::tr("From"),  Text::tr("To"), Text::tr("Who"), Text::tr("What"), {},
                      Text::tr("Really")};
    table.roomToWrite = true;
    for (const PlannedTask& task : m_planned.plan->tasks) {
        if (task.id.service != m_head)
            continue;
        table.rows.push_back(
            {moment(task.start), moment(task.end),
             task.hands ? named(app::output::handsName(m_planned.services, *task.hands)) : QString{},
             ofCoat(task.id.coat, inWords(core::stagger::taskName(service(), task.id))), note(task)});
    }
    return part;
}

QString PlanWriter::otherLimits(const Zone& zone, const PlannedZone& planned) const
{
    QStringList limits;
    if (zone.clock == core::service::ClockStart::FirstContact)
        limits << Text::tr("counted from the first strand");
    if (zone.firstStrandMost)
        limits << Text::tr("the first strand carries it %1 of at most %2")
                      .arg(words::length(planned.water - planned.firstContact),
                           words::length(*zone.firstStrandMost));
    if (zone.lastStrandLeast)
        limits << Text::tr("the last strand carries it %1 of at least %2")
                      .arg(words::length(planned.water - planned.applicationEnd),
                           words::length(*zone.lastStrandLeast));
    if (planned.rinsedAlone)
        limits << Text::tr("rinsed by itself");
    return limits.join(QStringLiteral("; "));
}

Part PlanWriter::limits() const
{
    Part part{Text::tr("Limits, and what is expected (in minutes)"), {}, {}, Table{}};
    Table& table = *part.table;
    table.headings = {Text::tr("Zone"),   Text::tr("Goes on"), Text::tr("Water"),    Text::tr("At least"),
                      Text::tr("Target"), Text::tr("At most"), Text::tr("Develops"), {}};
    for (const PlannedZone& planned : m_planned.plan->zones) {
        if (planned.service != m_head)
            continue;
        const Zone& zone = app::output::zoneOf(m_planned.services, planned);
        const QString off = words::offTarget(zone.develop, planned.development());
        table.rows.push_back({ofCoat(planned.coat, named(zone.name)),
                              Text::tr("%1 to %2", "moments")
                                  .arg(moment(planned.firstContact), moment(planned.applicationEnd)),
                              moment(planned.water), words::minutes(zone.develop.least),
                              words::minutes(zone.develop.target), words::minutes(zone.develop.most),
                              Text::tr("%1, %2", "minutes, how far off target")
                                  .arg(words::minutes(planned.development()), off),
                              otherLimits(zone, planned)});
    }
    return part;
}

core::measure::Instant PlanWriter::firstUse(std::size_t coat, std::size_t bowl) const
{
    const core::stagger::TaskId mixing{.service = m_head, .coat = coat, .kind = TaskKind::Mix, .item = bowl};
    if (const PlannedTask* mix = m_planned.plan.find(mixing))
        return mix->start;
    auto first = core::measure::Instant::max();
    for (const PlannedZone& zone : m_planned.plan->zones)
        if (zone.service == m_head && zone.coat == coat
            && service().coats[coat].zones[zone.zone].bowl == bowl)
            first = std::min(first, zone.firstContact);
    return first;
}

QStringList PlanWriter::bowlRow(std::size_t coat, std::size_t bowl) const
{
    const core::service::Bowl& asked = service().coats[coat].bowls[bowl];
    std::vector<std::string> zones;
    for (const Zone& zone : service().coats[coat].zones)
        if (zone.bowl == bowl)
            zones.push_back(zone.name);
    const core::measure::Instant first = firstUse(coat, bowl);
    return {first == core::measure::Instant::max() ? QString{} : moment(first),
            ofCoat(coat, named(asked.name)), words::joined(zones),
            asked.potLife ? Text::tr("within %1").arg(words::length(*asked.potLife)) : QString{},
            named(asked.note)};
}

Part PlanWriter::bowls() const
{
    Part part{Text::tr("Bowls, in the order in which they are mixed"), {}, {}, Table{}};
    Table& table = *part.table;
    table.headings = {Text::tr("Mix at"), Text::tr("Bowl"), Text::tr("For"), Text::tr("Use"),
                      Text::tr("What goes in")};
    struct Place {
        core::measure::Instant at;
        std::size_t coat;
        std::size_t bowl;
    };
    std::vector<Place> order;
    for (std::size_t coat = 0; coat < service().coats.size(); ++coat)
        for (std::size_t bowl = 0; bowl < service().coats[coat].bowls.size(); ++bowl)
            order.push_back({firstUse(coat, bowl), coat, bowl});
    std::ranges::stable_sort(order, {}, &Place::at);
    for (const Place& place : order)
        table.rows.push_back(bowlRow(place.coat, place.bowl));
    return part;
}

}  // namespace

std::vector<Sheet> planSheets(const PlanToPrint& planned, const Theme& theme,
                              const std::shared_ptr<const core::measure::TimeZones>& zones)
{
    std::vector<Sheet> sheets;
    for (std::size_t head = 0; head < planned.services.size(); ++head)
        if (std::ranges::count(planned.plan->zones, head, &PlannedZone::service) > 0)
            sheets.push_back(PlanWriter{planned, head, theme, zones}.sheet());
    return sheets;
}

QString leafletFirst()
{
    return named(session::cautions().front());
}

}  // namespace app::desktop::print
