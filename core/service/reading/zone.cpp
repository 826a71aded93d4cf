#include "core/service/reading/fields.h"
#include "core/service/reading/parts.h"
#include "core/service/words.h"

#include <algorithm>

namespace core::service::reading {
namespace {

constexpr const char* applyHelp =
    "say how many minutes applying takes: 12, or { \"quickest\": 10, \"usual\": 12, \"slowest\": 15 }";
constexpr const char* developHelp =
    "say how long it develops, in minutes: { \"least\": 25, \"target\": 30, \"most\": 35 }";

Application readApply(Fields& zone, Findings& findings)
{
    const json::Value* value = zone.required("apply", applyHelp);
    if (value == nullptr)
        return {};
    if (value->kind != json::Kind::Object) {
        const Seconds length = readLength(*value, zone.placeOf("apply"), findings).value_or(Seconds{0});
        return {length, length, length};
    }
    Fields fields{*value, zone.placeOf("apply"), "a range of lengths", findings};
    Application apply;
    apply.usual = fields.requiredLength("usual", "say how many minutes it usually takes");
    apply.quickest = fields.length("quickest", apply.usual);
    apply.slowest = fields.length("slowest", apply.usual);
    fields.finish();
    return apply;
}

Window readDevelop(Fields& zone, Findings& findings)
{
    const json::Value* value = zone.required("develop", developHelp);
    if (value == nullptr)
        return {};
    if (value->kind != json::Kind::Object) {
        const Seconds length = readLength(*value, zone.placeOf("develop"), findings).value_or(Seconds{0});
        return {length, length, length};
    }
    Fields fields{*value, zone.placeOf("develop"), "a development", findings};
    Window window;
    window.target = fields.requiredLength("target", "say how many minutes are best");
    window.least = fields.length("least", window.target);
    window.most = fields.length("most", window.target);
    fields.finish();
    return window;
}

Looks readLooks(const json::Value& value, const std::string& place, Seconds target, Findings& findings)
{
    Fields fields{value, place, "a series of looks", findings};
    Looks looks;
    looks.first = fields.requiredLength("first", "say after how many minutes the first look is due");
    looks.every = fields.length("every");
    looks.length = fields.requiredLength("length", "say how many minutes a look takes, such as 1");
    looks.tolerance = fields.length("tolerance", defaultTolerance(looks.every));
    looks.until = fields.length("until", target);
    fields.finish();
    return looks;
}

LateJob readLate(const json::Value& value, const std::string& place, Findings& findings)
{
    Fields fields{value, place, "a late job", findings};
    LateJob job;
    job.name = fields.requiredText("name", "say what is done, such as \"Emulsify\"");
    job.before = fields.requiredLength("before", "say how many minutes before the water it starts");
    job.length = fields.requiredLength("length", "say how many minutes it takes");
    job.tolerance = fields.length("tolerance", LateJob{}.tolerance);
    fields.finish();
    return job;
}

After readAfter(const json::Value& value, const std::string& place, const CoatNames& names,
                Findings& findings)
{
    if (value.kind == json::Kind::Text)
        return {choose(value, names.zones, place, findings).value_or(nowhere), {}};
    Fields fields{value, place, "the name of a zone, or one with a longest gap", findings};
    After after;
    fields.required("zone", "name the zone that is applied before");
    after.zone = fields.choice("zone", names.zones).value_or(nowhere);
    after.longestGap = fields.length("longest_gap");
    fields.finish();
    return after;
}

Place readPlace(const json::Value& value, const std::string& place, Findings& findings)
{
    const std::size_t word = choose(value, placeWords, place, findings).value_or(0);
    return {static_cast<Section>(word / stretches), static_cast<Stretch>(word % stretches)};
}

/// The place of the bowl or group that a zone names; it need not where there is only one.
std::size_t readReference(Fields& zone, const char* key, const std::vector<std::string>& names)
{
    if (names.size() <= 1) {
        const auto found = zone.choice(key, names);
        return found.value_or(names.empty() ? nowhere : 0);
    }
    zone.required(key, std::string{"there are several; name one of them"});
    return zone.choice(key, names).value_or(nowhere);
}

}  // namespace

Zone readZone(const json::Value& value, const std::string& place, const CoatNames& names, const Clock& clock,
              Findings& findings)
{
    Fields fields{value, place, "a zone", findings};
    Zone zone;
    zone.name = fields.requiredText("name", "give the zone a name, such as \"Root\"");
    zone.bowl = readReference(fields, "bowl", names.bowls);
    zone.apply = readApply(fields, findings);
    zone.clock = static_cast<ClockStart>(fields.choice("clock", clockWords).value_or(0));
    zone.develop = readDevelop(fields, findings);
    zone.firstStrandMost = fields.length("first_strand_most");
    zone.lastStrandLeast = fields.length("last_strand_least");
    if (const auto* looks = fields.optional("looks"))
        zone.looks = readLooks(*looks, fields.placeOf("looks"), zone.develop.target, findings);
    fields.each("late", [&](const json::Value& item, const std::string& at) {
        zone.late.push_back(readLate(item, at, findings));
    });
    fields.each("after", [&](const json::Value& item, const std::string& at) {
        zone.after.push_back(readAfter(item, at, names, findings));
    });
    if (const auto* wish = fields.optional("not_before"))
        zone.notBefore = readMoment(*wish, clock, fields.placeOf("not_before"), findings);
    zone.group = readReference(fields, "group", names.groups);
    zone.reach = fields.length("reach", Seconds{0});
    zone.alone = fields.truth("alone", false);
    zone.under = fields.harm("under", Zone{}.under);
    zone.over = fields.harm("over", Zone{}.over);
    fields.each("where", [&](const json::Value& item, const std::string& at) {
        zone.where.push_back(readPlace(item, at, findings));
    });
    fields.finish();
    return zone;
}

}  // namespace core::service::reading
