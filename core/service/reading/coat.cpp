#include "core/service/reading/fields.h"
#include "core/service/reading/parts.h"
#include "core/service/words.h"

namespace core::service::reading {
namespace {

/// The name of one thing among several; where it is the only one it needs none.
std::string readName(Fields& fields, bool isOnly, const char* onlyName)
{
    if (isOnly)
        return fields.text("name", onlyName);
    return fields.requiredText("name", "where there are several, each needs a name");
}

std::size_t sizeOf(const json::Value& coat, std::string_view key)
{
    const json::Value* list = coat.find(key);
    return list != nullptr ? list->items.size() : 0;
}

Bowl readBowl(const json::Value& value, const std::string& place, bool isOnly, Findings& findings)
{
    Fields fields{value, place, "a bowl", findings};
    Bowl bowl;
    bowl.name = readName(fields, isOnly, onlyBowlName);
    bowl.mix = fields.length("mix", Seconds{0});
    bowl.potLife = fields.length("pot_life");
    bowl.note = fields.text("note", "");
    fields.finish();
    return bowl;
}

void readWater(const json::Value& value, const std::string& place, const Clock& clock, RinseGroup& group,
               Findings& findings)
{
    Fields fields{value, place, "a booked time of water", findings};
    if (const auto* earliest = fields.optional("earliest"))
        group.waterEarliest = readMoment(*earliest, clock, fields.placeOf("earliest"), findings);
    if (const auto* latest = fields.optional("latest"))
        group.waterLatest = readMoment(*latest, clock, fields.placeOf("latest"), findings);
    fields.finish();
}

RinseGroup readGroup(const json::Value& value, const std::string& place, bool isOnly, const Clock& clock,
                     Findings& findings)
{
    Fields fields{value, place, "a rinse group", findings};
    RinseGroup group;
    group.name = readName(fields, isOnly, onlyGroupName);
    group.rinse = fields.requiredLength("length", "say how many minutes the rinse takes");
    if (const auto* water = fields.optional("water"))
        readWater(*water, fields.placeOf("water"), clock, group, findings);
    fields.finish();
    return group;
}

void readDry(const json::Value& value, const std::string& place, Coat& coat, Findings& findings)
{
    Fields fields{value, place, "the drying", findings};
    coat.dryHands = fields.length("hands", Seconds{0});
    coat.dryUnattended = fields.length("unattended", Seconds{0});
    fields.finish();
}

void readGap(const json::Value& value, const std::string& place, Coat& coat, Findings& findings)
{
    Fields fields{value, place, "a gap", findings};
    coat.gapLeast = fields.length("least");
    coat.gapMost = fields.length("most");
    fields.finish();
}

void readBowls(const json::Value& value, Fields& fields, Coat& coat, Findings& findings)
{
    const bool isOnly = sizeOf(value, "bowls") == 1;
    const bool given = fields.each("bowls", [&](const json::Value& item, const std::string& at) {
        coat.bowls.push_back(readBowl(item, at, isOnly, findings));
    });
    if (!given)
        coat.bowls.push_back({onlyBowlName, Seconds{0}, {}, ""});
}

void readGroups(const json::Value& value, Fields& fields, Coat& coat, const Clock& clock, Findings& findings)
{
    const bool isOnly = sizeOf(value, "rinse") == 1;
    fields.required("rinse", "list the rinse groups, such as [{ \"length\": 5 }]");
    fields.each("rinse", [&](const json::Value& item, const std::string& at) {
        coat.groups.push_back(readGroup(item, at, isOnly, clock, findings));
    });
}

/// The names as they are in the file, for zones that refer to one another.
CoatNames namesOf(const json::Value& value, const Coat& coat)
{
    CoatNames names;
    for (const Bowl& bowl : coat.bowls)
        names.bowls.push_back(bowl.name);
    for (const RinseGroup& group : coat.groups)
        names.groups.push_back(group.name);
    if (const json::Value* zones = value.find("zones")) {
        for (const json::Value& zone : zones->items) {
            const json::Value* name = zone.find("name");
            names.zones.push_back(name != nullptr && name->kind == json::Kind::Text ? name->text : "");
        }
    }
    return names;
}

}  // namespace

Coat readCoat(const json::Value& value, const std::string& place, bool isOnly, const Clock& clock,
              Findings& findings)
{
    Fields fields{value, place, "a coat", findings};
    Coat coat;
    coat.name = readName(fields, isOnly, onlyCoatName);
    readBowls(value, fields, coat, findings);
    fields.required("zones", "list the zones of the coat");
    readGroups(value, fields, coat, clock, findings);
    const CoatNames names = namesOf(value, coat);
    fields.each("zones", [&](const json::Value& item, const std::string& at) {
        coat.zones.push_back(readZone(item, at, names, clock, findings));
    });
    if (const auto* dry = fields.optional("dry"))
        readDry(*dry, fields.placeOf("dry"), coat, findings);
    coat.assess = fields.length("assess", Seconds{0});
    if (const auto* gap = fields.optional("gap"))
        readGap(*gap, fields.placeOf("gap"), coat, findings);
    fields.finish();
    return coat;
}

}  // namespace core::service::reading
