#include "core/service/reading/fields.h"
#include "core/service/reading/parts.h"
#include "core/service/words.h"

namespace core::service::reading {
namespace {

constexpr const char* handsNameHelp = "give each pair of hands a name, such as \"Stylist\"";

Interval readAway(const json::Value& value, const std::string& place, const Clock& clock, Findings& findings)
{
    Fields fields{value, place, "a time away", findings};
    Interval away;
    if (const auto* from = fields.required("from", "say from when, such as \"13:00\""))
        away.from = readMoment(*from, clock, fields.placeOf("from"), findings);
    if (const auto* until = fields.required("until", "say until when, such as \"13:30\""))
        away.until = readMoment(*until, clock, fields.placeOf("until"), findings);
    fields.finish();
    return away;
}

Hands readHands(const json::Value& value, const std::string& place, bool isOnly, const Clock& clock,
                Findings& findings)
{
    Fields fields{value, place, "a pair of hands", findings};
    Hands hands;
    hands.name = isOnly ? fields.text("name", onlyHandsName) : fields.requiredText("name", handsNameHelp);
    fields.each("away", [&](const json::Value& item, const std::string& at) {
        hands.away.push_back(readAway(item, at, clock, findings));
    });
    const bool limited = fields.each("does", [&](const json::Value& item, const std::string& at) {
        if (const auto kind = choose(item, workWords, at, findings))
            hands.kinds.push_back(static_cast<Work>(*kind));
        else
            hands.kinds.push_back(Work::Mix);
    });
    if (limited && hands.kinds.empty())
        findings.add(fields.placeOf("does"),
                     "names no kind of work; leave the key out for hands that do everything");
    fields.finish();
    return hands;
}

}  // namespace

Head readHead(const json::Value& value, const std::string& place, Findings& findings)
{
    Fields fields{value, place, "a head", findings};
    Head head;
    head.name = fields.text("name", "");
    // A head that is not said to be a wig may be a person: the cautions then come up.
    head.kind = static_cast<HeadKind>(fields.choice("kind", headWords).value_or(0));
    head.piecesComeApart = fields.truth("comes_apart", false);
    fields.finish();
    return head;
}

Crew readCrew(const json::Value& value, const std::string& place, const Clock& clock, Findings& findings)
{
    Fields fields{value, place, "a crew", findings};
    Crew crew;
    const json::Value* list = value.find("hands");
    const bool isOnly = list != nullptr && list->items.size() == 1;
    const bool given = fields.each("hands", [&](const json::Value& item, const std::string& at) {
        crew.hands.push_back(readHands(item, at, isOnly, clock, findings));
    });
    if (!given)
        crew.hands.push_back({onlyHandsName, {}, {}});
    crew.basins = fields.count("basins", 1);
    fields.finish();
    return crew;
}

}  // namespace core::service::reading
