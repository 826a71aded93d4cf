#include "app/command/card_text.h"

#include "app/output/plan_words.h"
#include "app/output/text_table.h"
#include "app/output/wall_clock.h"

namespace app::command {

using core::measure::Instant;
using core::measure::lengthText;
using output::TextTable;
using output::WallClock;
using view::CardCoat;
using view::CardHead;
using view::CardZone;
using Side = TextTable::Side;

namespace {

std::string momentText(const std::optional<Instant>& moment, const WallClock& clock)
{
    return moment ? clock.text(*moment) : std::string{};
}

/// "14:52", "14:52 (planned 14:50)"
std::string waterText(const CardZone& zone, const WallClock& clock)
{
    std::string text = momentText(zone.water, clock);
    if (zone.water && zone.plannedWater && clock.text(*zone.plannedWater) != text)
        text += " (planned " + clock.text(*zone.plannedWater) + ")";
    return text;
}

std::string developedText(const CardZone& zone)
{
    if (zone.developed)
        return lengthText(*zone.developed);
    return zone.stage == core::run::Stage::Dropped ? "left out" : "not rinsed";
}

std::string offText(const CardZone& zone)
{
    core::service::Zone asked;
    asked.develop = zone.window;
    return zone.developed ? output::deviationText(asked, *zone.developed) : std::string{};
}

std::string zonesText(const CardCoat& coat, const WallClock& clock)
{
    TextTable table{{{"Zone"},
                     {"Mixed"},
                     {"First strand"},
                     {"Last strand"},
                     {"Water"},
                     {"Developed", Side::Right},
                     {"Asked for"},
                     {""},
                     {"Turned out"}}};
    for (const CardZone& zone : coat.zones)
        table.addRow({zone.name, momentText(zone.mixed, clock), momentText(zone.firstStrand, clock),
                      momentText(zone.lastStrand, clock), waterText(zone, clock), developedText(zone),
                      output::windowText(zone.window), offText(zone), view::resultText(zone.result)});
    return table.text();
}

std::string lookLine(const CardZone& zone, const view::CardLook& look, const WallClock& clock)
{
    std::string line = clock.text(look.at) + "  Looked at " + zone.name + ": ";
    switch (look.verdict) {
    case core::run::Verdict::Leave: line += "left"; break;
    case core::run::Verdict::Again: line += "again in " + lengthText(look.again); break;
    case core::run::Verdict::RinseNow: line += "rinsed now"; break;
    }
    return line + (look.seen.empty() ? "" : ", seen: " + look.seen) + "\n";
}

std::string coatText(const CardCoat& coat, const WallClock& clock)
{
    std::string text = zonesText(coat, clock) + "\n";
    for (const CardZone& zone : coat.zones)
        for (const view::CardLook& look : zone.looks)
            text += lookLine(zone, look, clock);
    for (const view::CardHeat& heat : coat.heats)
        text += clock.text(heat.from) + "  Heat, "
            + (heat.until ? "until " + clock.text(*heat.until) : "no end said") + "\n";
    for (const std::string& task : coat.leftOut)
        text += "Left out: " + task + "\n";
    if (!coat.note.empty())
        text += "For next time: " + coat.note + "\n";
    return text;
}

std::string headText(const CardHead& head, const WallClock& clock)
{
    std::string text = head.service.empty() ? std::string{"Service"} : head.service;
    text += head.head.empty() ? "\n" : ": " + head.head + "\n";
    for (const CardCoat& coat : head.coats) {
        if (head.coats.size() > 1)
            text += "\n" + coat.name + "\n";
        text += coatText(coat, clock);
    }
    return text;
}

}  // namespace

std::string cardText(const view::RecordCard& card, std::int64_t run, const core::measure::TimeZones& zones)
{
    const WallClock clock{zones, card.heads.front().timeZone, card.began, card.until};
    std::string text = "Run " + std::to_string(run) + ", " + clock.dayText(card.began) + ", "
        + clock.text(card.began) + " to " + clock.text(card.until) + (card.ended ? "" : " and not ended")
        + ", times in " + clock.zone() + ".\n";
    for (const CardHead& head : card.heads)
        text += "\n" + headText(head, clock);
    if (!card.changes.empty())
        text += "\nChanged while it went on:\n";
    for (const view::CardChange& change : card.changes)
        text += clock.text(change.at) + "  " + change.what + "\n";
    return text
        + "\nWhat was done is what was answered. The product's leaflet comes first: basinbell cautions.\n";
}

}  // namespace app::command
