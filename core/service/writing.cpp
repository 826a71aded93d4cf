#include "core/service/service_file.h"

#include "core/service/clock_text.h"
#include "core/service/json/writer.h"
#include "core/service/minutes.h"
#include "core/service/words.h"

namespace core::service {
namespace {

using json::Value;

/// Writes moments on the clock of the service.
struct MomentWriter {
    const measure::TimeZones& zones;
    const std::string& zone;

    Value operator()(Instant moment) const { return json::text(momentText(moment, zones, zone)); }
};

void addLength(Value& object, const char* key, std::optional<Seconds> length)
{
    if (length)
        object.add(key, minutesValue(*length));
}

/// The key is left out where the length is what a reader takes without it.
void addLength(Value& object, const char* key, Seconds length, Seconds otherwise)
{
    if (length != otherwise)
        object.add(key, minutesValue(length));
}

Value headValue(const Head& head)
{
    Value value = json::object();
    if (!head.name.empty())
        value.add("name", json::text(head.name));
    value.add("kind", json::text(headWords[static_cast<std::size_t>(head.kind)]));
    if (head.piecesComeApart)
        value.add("comes_apart", json::boolean(true));
    return value;
}

Value handsValue(const Hands& hands, const MomentWriter& moment)
{
    Value value = json::object();
    value.add("name", json::text(hands.name));
    Value away = json::list();
    for (const Interval& interval : hands.away) {
        Value item = json::object();
        item.add("from", moment(interval.from));
        item.add("until", moment(interval.until));
        away.add(std::move(item));
    }
    if (!away.items.empty())
        value.add("away", std::move(away));
    Value does = json::list();
    for (const Work work : hands.kinds)
        does.add(json::text(workWords[static_cast<std::size_t>(work)]));
    if (!does.items.empty())
        value.add("does", std::move(does));
    return value;
}

Value crewValue(const Crew& crew, const MomentWriter& moment)
{
    Value value = json::object();
    Value hands = json::list();
    for (const Hands& one : crew.hands)
        hands.add(handsValue(one, moment));
    value.add("hands", std::move(hands));
    value.add("basins", json::number(std::to_string(crew.basins)));
    return value;
}

Value bowlValue(const Bowl& bowl)
{
    Value value = json::object();
    value.add("name", json::text(bowl.name));
    addLength(value, "mix", bowl.mix, Seconds{0});
    addLength(value, "pot_life", bowl.potLife);
    if (!bowl.note.empty())
        value.add("note", json::text(bowl.note));
    return value;
}

Value applyValue(const Application& apply)
{
    if (apply.quickest == apply.usual && apply.usual == apply.slowest)
        return minutesValue(apply.usual);
    Value value = json::object();
    value.add("quickest", minutesValue(apply.quickest));
    value.add("usual", minutesValue(apply.usual));
    value.add("slowest", minutesValue(apply.slowest));
    return value;
}

Value developValue(const Window& develop)
{
    Value value = json::object();
    value.add("least", minutesValue(develop.least));
    value.add("target", minutesValue(develop.target));
    value.add("most", minutesValue(develop.most));
    return value;
}

Value looksValue(const Looks& looks, Seconds target)
{
    Value value = json::object();
    value.add("first", minutesValue(looks.first));
    addLength(value, "every", looks.every);
    value.add("length", minutesValue(looks.length));
    addLength(value, "tolerance", looks.tolerance, defaultTolerance(looks.every));
    addLength(value, "until", looks.until, target);
    return value;
}

Value lateValue(const std::vector<LateJob>& late)
{
    Value list = json::list();
    for (const LateJob& job : late) {
        Value value = json::object();
        value.add("name", json::text(job.name));
        value.add("before", minutesValue(job.before));
        value.add("length", minutesValue(job.length));
        addLength(value, "tolerance", job.tolerance, LateJob{}.tolerance);
        list.add(std::move(value));
    }
    return list;
}

Value afterValue(const Coat& coat, const std::vector<After>& after)
{
    Value list = json::list();
    for (const After& entry : after) {
        Value name = json::text(entry.zone < coat.zones.size() ? coat.zones[entry.zone].name : "");
        if (!entry.longestGap) {
            list.add(std::move(name));
            continue;
        }
        Value value = json::object();
        value.add("zone", std::move(name));
        addLength(value, "longest_gap", entry.longestGap);
        list.add(std::move(value));
    }
    return list;
}

Value whereValue(const std::vector<Place>& where)
{
    Value list = json::list();
    for (const Place& place : where)
        list.add(json::text(placeWords[static_cast<std::size_t>(place.section) * stretches
                                       + static_cast<std::size_t>(place.stretch)]));
    return list;
}

/// The end of a zone: what it waits for, where it is rinsed, what misses cost.
void addRest(Value& value, const Coat& coat, const Zone& zone, const MomentWriter& moment)
{
    if (!zone.late.empty())
        value.add("late", lateValue(zone.late));
    if (!zone.after.empty())
        value.add("after", afterValue(coat, zone.after));
    if (zone.notBefore)
        value.add("not_before", moment(*zone.notBefore));
    if (coat.groups.size() > 1 && zone.group < coat.groups.size())
        value.add("group", json::text(coat.groups[zone.group].name));
    addLength(value, "reach", zone.reach, Seconds{0});
    if (zone.alone)
        value.add("alone", json::boolean(true));
    if (zone.under != Zone{}.under)
        value.add("under", harmValue(zone.under));
    if (zone.over != Zone{}.over)
        value.add("over", harmValue(zone.over));
    if (!zone.where.empty())
        value.add("where", whereValue(zone.where));
}

Value zoneValue(const Coat& coat, const Zone& zone, const MomentWriter& moment)
{
    Value value = json::object();
    value.add("name", json::text(zone.name));
    if (coat.bowls.size() > 1 && zone.bowl < coat.bowls.size())
        value.add("bowl", json::text(coat.bowls[zone.bowl].name));
    value.add("apply", applyValue(zone.apply));
    value.add("clock", json::text(clockWords[static_cast<std::size_t>(zone.clock)]));
    value.add("develop", developValue(zone.develop));
    addLength(value, "first_strand_most", zone.firstStrandMost);
    addLength(value, "last_strand_least", zone.lastStrandLeast);
    if (zone.looks)
        value.add("looks", looksValue(*zone.looks, zone.develop.target));
    addRest(value, coat, zone, moment);
    return value;
}

Value groupValue(const RinseGroup& group, const MomentWriter& moment)
{
    Value value = json::object();
    value.add("name", json::text(group.name));
    value.add("length", minutesValue(group.rinse));
    Value water = json::object();
    if (group.waterEarliest)
        water.add("earliest", moment(*group.waterEarliest));
    if (group.waterLatest)
        water.add("latest", moment(*group.waterLatest));
    if (!water.items.empty())
        value.add("water", std::move(water));
    return value;
}

void addDryingAndGap(Value& value, const Coat& coat)
{
    Value dry = json::object();
    addLength(dry, "hands", coat.dryHands, Seconds{0});
    addLength(dry, "unattended", coat.dryUnattended, Seconds{0});
    if (!dry.items.empty())
        value.add("dry", std::move(dry));
    addLength(value, "assess", coat.assess, Seconds{0});
    Value gap = json::object();
    addLength(gap, "least", coat.gapLeast);
    addLength(gap, "most", coat.gapMost);
    if (!gap.items.empty())
        value.add("gap", std::move(gap));
}

Value coatValue(const Coat& coat, const MomentWriter& moment)
{
    Value value = json::object();
    value.add("name", json::text(coat.name));
    Value bowls = json::list();
    for (const Bowl& bowl : coat.bowls)
        bowls.add(bowlValue(bowl));
    value.add("bowls", std::move(bowls));
    Value zones = json::list();
    for (const Zone& zone : coat.zones)
        zones.add(zoneValue(coat, zone, moment));
    value.add("zones", std::move(zones));
    Value groups = json::list();
    for (const RinseGroup& group : coat.groups)
        groups.add(groupValue(group, moment));
    value.add("rinse", std::move(groups));
    addDryingAndGap(value, coat);
    return value;
}

}  // namespace

void writeService(std::ostream& out, const Service& service, const measure::TimeZones& zones)
{
    const MomentWriter moment{zones, service.timeZone};
    Value value = json::object();
    value.add("basinbell", json::number("1"));
    value.add("name", json::text(service.name));
    if (service.demo)
        value.add("demo", json::boolean(true));
    value.add("zone", json::text(service.timeZone));
    value.add("head", headValue(service.head));
    value.add("crew", crewValue(service.crew, moment));
    if (service.notBefore)
        value.add("not_before", moment(*service.notBefore));
    if (service.readyBy)
        value.add("ready_by", moment(*service.readyBy));
    addLength(value, "buffer", service.buffer, Seconds{0});
    Value coats = json::list();
    for (const Coat& coat : service.coats)
        coats.add(coatValue(coat, moment));
    value.add("coats", std::move(coats));
    json::writeJson(out, value);
}

}  // namespace core::service
