#include "app/command/question.h"

#include "app/command/input.h"
#include "app/command/services.h"

namespace app::command {

using core::stagger::Question;

tl::expected<Question, std::string> questionOf(const Options& options,
                                               std::vector<core::service::Service> services,
                                               const core::measure::TimeZones& zones)
{
    Question question;
    question.services = std::move(services);
    question.preference = options.preference;
    question.now = std::chrono::ceil<std::chrono::minutes>(std::chrono::system_clock::now());
    if (options.from.isEmpty())
        return question;
    const auto from = readMoment(options.from, question.services.front().timeZone, zones, *question.now);
    if (!from)
        return tl::unexpected{from.error()};
    question.now = *from;
    return question;
}

tl::expected<Question, std::vector<std::string>> readQuestion(const Options& options, std::istream& in,
                                                              const core::measure::TimeZones& zones)
{
    auto services = readServices(options.files, options.crewFile, in, zones);
    if (!services)
        return tl::unexpected{services.error()};
    return questionOf(options, *std::move(services), zones).map_error([](const std::string& problem) {
        return std::vector{problem};
    });
}

}  // namespace app::command
