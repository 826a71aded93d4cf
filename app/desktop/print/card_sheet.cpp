#include "app/desktop/print/card_sheet.h"

#include "app/desktop/look/strand_words.h"
#include "app/desktop/print/plan_sheet.h"
#include "app/desktop/print/text.h"
#include "app/desktop/records/result_words.h"
#include "app/desktop/sentences.h"
#include "app/desktop/setup/preparation_text.h"
#include "app/desktop/words.h"
#include "app/output/wall_clock.h"
#include "core/stagger/head_name.h"

#include <QCoreApplication>

#include <algorithm>
#include <utility>

namespace app::desktop::print {
namespace {

using core::measure::Instant;
using view::CardCoat;
using view::CardHead;
using view::CardZone;
using words::named;

struct RecordCardText {
    Q_DECLARE_TR_FUNCTIONS(RecordCard)
};

/// Writes the card of one head.
class CardWriter {
public:
    CardWriter(const view::RecordCard& card, const std::vector<core::service::Service>& services,
               const Theme& theme, const std::shared_ptr<const core::measure::TimeZones>& zones)
        : m_card{card}
        , m_services{services}
        , m_theme{theme}
        , m_zones{zones}
        , m_clock{*zones, card.heads.front().timeZone, view::firstMoment(card), card.until}
    {
    }

    [[nodiscard]] Sheet sheet(const CardHead& head) const;

private:
    void addCoat(const CardHead& head, const CardCoat& coat, std::vector<Part>& parts) const;
    [[nodiscard]] Part drawing(const CardCoat& coat) const;
    [[nodiscard]] Part zones(const CardCoat& coat) const;
    [[nodiscard]] Part results(const CardCoat& coat) const;
    [[nodiscard]] Part bowls(const CardCoat& coat) const;
    [[nodiscard]] Part events(const CardCoat& coat) const;
    [[nodiscard]] Part changes() const;
    [[nodiscard]] Part before() const;
    [[nodiscard]] QString moment(const std::optional<Instant>& at) const
    {
        return at ? named(m_clock.text(*at)) : QString{};
    }
    [[nodiscard]] QString water(const CardZone& zone) const;

    const view::RecordCard& m_card;
    const std::vector<core::service::Service>& m_services;
    const Theme& m_theme;
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    app::output::WallClock m_clock;
};

Sheet CardWriter::sheet(const CardHead& head) const
{
    Sheet sheet;
    sheet.title = head.service.empty() ? RecordCardText::tr("Service") : named(head.service);
    if (!head.head.empty())
        sheet.title = RecordCardText::tr("%1: %2", "service, head").arg(sheet.title, named(head.head));
    sheet.subtitle = RecordCardText::tr("Record card. %1, %2 to %3, times in %4")
                         .arg(words::day(m_card.began, *m_zones, m_clock.zone()), moment(m_card.began),
                              moment(m_card.until), named(m_clock.zone()));
    if (!m_card.ended)
        sheet.subtitle += RecordCardText::tr(". Not ended yet");
    sheet.foot = leafletFirst();
    for (const CardCoat& coat : head.coats)
        addCoat(head, coat, sheet.parts);
    sheet.parts.push_back(changes());
    sheet.parts.push_back(before());
    std::erase_if(sheet.parts, [](const Part& part) {
        return part.text.isEmpty() && !part.drawing && (!part.table || part.table->rows.empty());
    });
    return sheet;
}

void CardWriter::addCoat(const CardHead& head, const CardCoat& coat, std::vector<Part>& parts) const
{
    Part first = drawing(coat);
    if (head.coats.size() > 1)
        first.heading = named(coat.name);
    parts.push_back(std::move(first));
    parts.push_back(zones(coat));
    parts.push_back(results(coat));
    parts.push_back(bowls(coat));
    parts.push_back(events(coat));
}

Part CardWriter::drawing(const CardCoat& coat) const
{
    if (coat.picture.strands.empty())
        return {{}, RecordCardText::tr("Nothing of this was begun."), {}, {}};
    Part part;
    part.drawing = Drawing{coat.picture, {}};
    const WallClock clock{m_zones, m_card.heads.front().timeZone};
    part.drawing->words = strandWords(
        m_theme, coat.picture, clock, [services = m_services, head = coat.place.service](const auto& id) {
            return id.service == head ? inWords(core::stagger::taskName(services[id.service], id))
                                      : named(core::stagger::headName(services, id.service));
        });
    return part;
}

/// "14:52 (planned 14:50)"
QString CardWriter::water(const CardZone& zone) const
{
    const QString at = moment(zone.water);
    const QString planned = moment(zone.plannedWater);
    return !zone.water || planned.isEmpty() || planned == at
        ? at
        : RecordCardText::tr("%1 (planned %2)").arg(at, planned);
}

Part CardWriter::zones(const CardCoat& coat) const
{
    Part part{RecordCardText::tr("What each zone got (in minutes; dashed in the picture: as first planned)"),
              {},
              {},
              Table{}};
    part.table->headings = {RecordCardText::tr("Zone"),        RecordCardText::tr("First strand"),
                            RecordCardText::tr("Last strand"), RecordCardText::tr("Water"),
                            RecordCardText::tr("Least"),       RecordCardText::tr("Target"),
                            RecordCardText::tr("Most"),        RecordCardText::tr("Developed")};
    for (const CardZone& zone : coat.zones) {
        QString developed = words::stage(zone.stage);
        if (zone.developed)
            developed =
                RecordCardText::tr("%1, %2", "minutes, how far off target")
                    .arg(words::minutes(*zone.developed), words::offTarget(zone.window, *zone.developed));
        part.table->rows.push_back({named(zone.name), moment(zone.firstStrand), moment(zone.lastStrand),
                                    water(zone), words::minutes(zone.window.least),
                                    words::minutes(zone.window.target), words::minutes(zone.window.most),
                                    developed});
    }
    return part;
}

/// What nobody said yet can be written in by hand.
Part CardWriter::results(const CardCoat& coat) const
{
    Part part{RecordCardText::tr("How it turned out"), {}, {}, Table{}};
    part.table->headings = {RecordCardText::tr("Zone"), RecordCardText::tr("Said"), {}};
    part.table->roomToWrite = true;
    for (const CardZone& zone : coat.zones)
        if (zone.water)
            part.table->rows.push_back({named(zone.name), words::result(zone.result)});
    if (part.table->rows.empty())
        return {};
    if (!coat.note.empty())
        part.text = RecordCardText::tr("For next time: %1").arg(named(coat.note));
    return part;
}

/// What it was made with, to be made again or otherwise.
Part CardWriter::bowls(const CardCoat& coat) const
{
    Part part{RecordCardText::tr("What was mixed"), {}, {}, Table{}};
    part.table->headings = {RecordCardText::tr("Mixed"), RecordCardText::tr("Bowl"),
                            RecordCardText::tr("For"), RecordCardText::tr("What goes in")};
    for (const view::CardBowl& bowl : coat.bowls)
        part.table->rows.push_back(
            {moment(bowl.mixed), named(bowl.name), words::joined(bowl.zones), named(bowl.note)});
    return part;
}

QString lookText(const view::CardLook& look)
{
    switch (look.verdict) {
    case core::run::Verdict::Leave: return RecordCardText::tr("left");
    case core::run::Verdict::Again: return RecordCardText::tr("again in %1").arg(words::length(look.again));
    case core::run::Verdict::RinseNow: return RecordCardText::tr("rinsed now");
    }
    return {};
}

Part CardWriter::events(const CardCoat& coat) const
{
    Part part{RecordCardText::tr("Looks, heat, and what was left out"), {}, {}, Table{}};
    Table& table = *part.table;
    table.headings = {RecordCardText::tr("At"), RecordCardText::tr("What"), RecordCardText::tr("Came of it"),
                      RecordCardText::tr("Seen")};
    std::vector<std::pair<Instant, QStringList>> rows;
    for (const CardZone& zone : coat.zones)
        for (const view::CardLook& look : zone.looks)
            rows.push_back({look.at,
                            {moment(look.at), RecordCardText::tr("Look at %1").arg(named(zone.name)),
                             lookText(look), named(look.seen)}});
    for (const view::CardHeat& heat : coat.heats)
        rows.push_back({heat.from,
                        {moment(heat.from), RecordCardText::tr("Heat"),
                         heat.until ? RecordCardText::tr("until %1").arg(moment(heat.until))
                                    : RecordCardText::tr("no end said"),
                         QString{}}});
    std::ranges::stable_sort(rows, {}, &std::pair<Instant, QStringList>::first);
    for (auto& [at, row] : rows)
        table.rows.push_back(std::move(row));
    for (const std::string& task : coat.leftOut)
        table.rows.push_back({{}, named(task), RecordCardText::tr("left out"), {}});
    return part;
}

Part CardWriter::changes() const
{
    Part part{RecordCardText::tr("Changed while it went on"), {}, {}, Table{}};
    part.table->headings = {RecordCardText::tr("At"), RecordCardText::tr("What")};
    for (const view::CardChange& change : m_card.changes)
        part.table->rows.push_back({moment(change.at), named(change.what)});
    return part;
}

/// What is open is listed too: nobody said anything of it.
Part CardWriter::before() const
{
    Part part{RecordCardText::tr("Said before the start"), {}, {}, Table{}};
    part.table->headings = {RecordCardText::tr("At"), RecordCardText::tr("What"), RecordCardText::tr("Said"),
                            RecordCardText::tr("Why")};
    for (const core::run::Prepared& prepared : m_card.prepared)
        part.table->rows.push_back({moment(prepared.at), preparation_text::name(prepared.what, m_services),
                                    preparation_text::state(prepared), named(prepared.why)});
    return part;
}

}  // namespace

std::vector<Sheet> cardSheets(const view::RecordCard& card,
                              const std::vector<core::service::Service>& services, const Theme& theme,
                              const std::shared_ptr<const core::measure::TimeZones>& zones)
{
    const CardWriter writer{card, services, theme, zones};
    std::vector<Sheet> sheets;
    for (const CardHead& head : card.heads)
        sheets.push_back(writer.sheet(head));
    return sheets;
}

}  // namespace app::desktop::print
