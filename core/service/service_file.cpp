#include "core/service/service_file.h"

#include "core/service/json/decimal.h"
#include "core/service/json/reader.h"
#include "core/service/reading/fields.h"
#include "core/service/reading/parts.h"
#include "core/service/rules/rules.h"

#include <istream>
#include <optional>

namespace core::service {
namespace {

using json::Value;
using reading::Clock;
using reading::Fields;

constexpr std::int64_t version = 1;

std::vector<Problem> only(Problem problem)
{
    return {std::move(problem)};
}

Problem tooLarge()
{
    return {"", std::string{"the file is larger than 4 MB; this is no service file"}};
}

/// A newer file is not guessed at: then this is the one problem.
std::optional<Problem> newerVersion(const Value& root)
{
    const Value* given = root.find("basinbell");
    if (given == nullptr || given->kind != json::Kind::Number)
        return {};
    const json::Scaled number = json::scaled(given->text, 1);
    if (number.exactness == json::Exactness::NotWhole
        || (number.exactness == json::Exactness::Exact && number.value <= version))
        return {};
    return Problem{"basinbell",
                   "this file has version " + json::described(*given)
                       + " of the format and this program reads version 1; open it with a newer Basinbell"};
}

void readVersion(Fields& fields, Findings& findings)
{
    const Value* given = fields.required("basinbell", "a service file has \"basinbell\": 1 at its top");
    if (given == nullptr)
        return;
    const bool isKnown = given->kind == json::Kind::Number && json::scaled(given->text, 1).value == version;
    if (!isKnown)
        findings.add("basinbell", json::described(*given) + " is no version of the format; write 1");
}

/// The zone of the file's clock times; empty where there is none to be had.
std::string readZone(Fields& fields, const ReadContext& context, Findings& findings)
{
    const bool given = fields.optional("zone") != nullptr;
    std::string zone = fields.text("zone", context.localZone);
    if (context.zones.knows(zone))
        return zone;
    if (given)
        findings.add("zone",
                     json::quoted(zone)
                         + " is not a known time zone; use an IANA name such as \"Europe/London\"");
    else
        findings.add(
            "zone",
            "is missing, and this computer's own time zone is not known; name one such as \"Europe/London\"");
    return {};
}

std::chrono::local_days readDate(Fields& fields, const ReadContext& context, Findings& findings)
{
    const Value* given = fields.optional("date");
    if (given == nullptr)
        return context.today;
    const auto day = given->kind == json::Kind::Text ? reading::readDay(given->text) : std::nullopt;
    if (!day)
        findings.add("date", json::described(*given) + " is not a day; write it as \"2026-10-25\"");
    return day.value_or(context.today);
}

void readCoats(Fields& fields, const Clock& clock, Service& service, Findings& findings)
{
    const Value* list = fields.required("coats", "list the coats; the smallest file has one");
    const bool isOnly = list != nullptr && list->items.size() == 1;
    fields.each("coats", [&](const Value& item, const std::string& at) {
        service.coats.push_back(reading::readCoat(item, at, isOnly, clock, findings));
    });
}

Service readParts(const Value& root, const ReadContext& context, Findings& findings)
{
    Fields fields{root, "", "a service", findings};
    Service service;
    readVersion(fields, findings);
    service.name = fields.requiredText("name", "give the service a name");
    const std::string zone = readZone(fields, context, findings);
    service.timeZone = zone;
    const Clock clock{context.zones, zone, readDate(fields, context, findings)};
    static const Value nothing = json::object();
    const Value* head = fields.optional("head");
    service.head = reading::readHead(head != nullptr ? *head : nothing, "head", findings);
    const Value* crew = fields.optional("crew");
    service.crew = reading::readCrew(crew != nullptr ? *crew : nothing, "crew", clock, findings);
    if (const Value* notBefore = fields.optional("not_before"))
        service.notBefore = reading::readMoment(*notBefore, clock, "not_before", findings);
    if (const Value* readyBy = fields.optional("ready_by"))
        service.readyBy = reading::readMoment(*readyBy, clock, "ready_by", findings);
    service.buffer = fields.length("buffer", Seconds{0});
    service.demo = fields.truth("demo", false);
    readCoats(fields, clock, service, findings);
    fields.finish();
    return service;
}

}  // namespace

tl::expected<Service, std::vector<Problem>> readService(std::string_view text, const ReadContext& context)
{
    if (text.size() > mostFileBytes)
        return tl::make_unexpected(only(tooLarge()));
    const auto document = json::readJson(text);
    if (!document)
        return tl::make_unexpected(only(document.error()));
    if (const auto newer = newerVersion(document->root))
        return tl::make_unexpected(only(*newer));
    Findings findings;
    for (const Problem& repeated : document->repeatedKeys)
        findings.add(repeated.place, repeated.what);
    Service service = readParts(document->root, context, findings);
    findings.settle();
    if (!findings.overflowed())
        rules::applyRules(service, findings);
    if (!findings.empty())
        return tl::make_unexpected(findings.take());
    return service;
}

tl::expected<Service, std::vector<Problem>> readService(std::istream& in, const ReadContext& context)
{
    std::string text;
    std::string block(std::size_t{64} * 1024, '\0');
    while (in && text.size() <= mostFileBytes) {
        in.read(block.data(), static_cast<std::streamsize>(block.size()));
        text.append(block, 0, static_cast<std::size_t>(in.gcount()));
    }
    if (in.bad())
        return tl::make_unexpected(
            only({"", std::string{"the file could not be read to its end; try again"}}));
    return readService(text, context);
}

}  // namespace core::service
