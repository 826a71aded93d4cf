#include "app/command/explain_command.h"

#include "app/command/complain.h"
#include "app/command/question.h"
#include "app/output/explanation.h"
#include "app/output/plan_json.h"
#include "app/output/timetable.h"
#include "app/session/time_zones.h"
#include "core/service/service_file.h"

#include <QSaveFile>

#include <ostream>
#include <sstream>

namespace app::command {

using core::measure::TimeZones;
using core::service::Service;
using core::stagger::Budget;
using core::stagger::Cure;
using core::stagger::Question;

namespace {

/// What is explained, for so long at most. Most is known at once.
constexpr double secondsToExplain = 20;

/// Stops what it is asked about when the time is up, and knows that it did.
class Deadline {
public:
    explicit Deadline(double seconds)
        : m_end{Clock::now()
                + std::chrono::duration_cast<Clock::duration>(std::chrono::duration<double>{seconds})}
    {
    }

    [[nodiscard]] Budget budget()
    {
        Budget budget;
        budget.stop = [this] { return m_over = m_over || Clock::now() >= m_end; };
        return budget;
    }
    [[nodiscard]] bool isOver() const { return m_over; }

private:
    using Clock = std::chrono::steady_clock;
    Clock::time_point m_end;
    bool m_over = false;
};

/// The whole file or nothing of it; what went wrong, or nothing.
std::string save(const QString& path, const Service& service, const TimeZones& zones, std::ostream& out)
{
    std::ostringstream text;
    core::service::writeService(text, service, zones);
    if (path == QLatin1String{"-"}) {
        out << text.view();
        return {};
    }
    QSaveFile file{path};
    const auto size = static_cast<qint64>(text.view().size());
    if (file.open(QIODevice::WriteOnly) && file.write(text.view().data(), size) == size && file.commit())
        return {};
    return "--save " + path.toStdString() + ": it was not saved (" + file.errorString().toStdString()
        + "). What was there before is as it was.";
}

/// The places of the services that the cure changes. A crew that heads share changes with the first: the
/// files are to be read with its crew from then on.
std::vector<std::size_t> changedBy(const Cure& cure, const Question& question)
{
    std::vector<std::size_t> changed;
    for (std::size_t place = 0; place < cure.services.size(); ++place) {
        Service before = question.services[place];
        if (place > 0)
            before.crew = cure.services[place].crew;
        if (before != cure.services[place])
            changed.push_back(place);
    }
    return changed;
}

int saveCure(const Options& options, Outside& outside, const Cure& cure, const Question& question,
             const TimeZones& zones)
{
    const std::vector<std::size_t> changed = changedBy(cure, question);
    if (changed.size() != 1)
        return complain(
            outside,
            {"--save " + options.save.toStdString() + ": this changes " + std::to_string(changed.size())
             + " of the files, so one file cannot hold it. Change them by hand: " + cure.what().text()
             + "."});
    const auto place = changed.front();
    const std::string problem = save(options.save, cure.services[place], zones, outside.out);
    if (!problem.empty())
        return complain(outside, {problem});
    if (options.save == QLatin1String{"-"})
        return Planned;
    const std::string saved = options.save.toStdString();
    outside.out << cure.what() << ".\nSaved in " << saved;
    if (options.files.size() > 1)
        outside.out << ", in place of " << options.files[static_cast<qsizetype>(place)].toStdString();
    outside.out << ".\n";
    if (options.files.size() > 1 && cure.services[place].crew != question.services[place].crew)
        outside.out << "It changes who is there: plan the files with --crew " << saved << ".\n";
    return Planned;
}

int showCure(const Options& options, Outside& outside, const Cure& cure, const Question& question,
             const TimeZones& zones)
{
    if (!options.save.isEmpty())
        return saveCure(options, outside, cure, question, zones);
    outside.out << (options.json
                        ? output::planJson(cure.services, cure.plan, zones)
                        : cure.what().text() + ".\n\n" + output::timetable(cure.services, cure.plan, zones));
    return NothingFits;
}

int explainWhyNot(const Options& options, Outside& outside, const Question& question, output::WhyNot whyNot,
                  const TimeZones& zones)
{
    if (options.cure) {
        const auto count = static_cast<int>(whyNot.cures.size());
        if (*options.cure <= count)
            return showCure(options, outside, whyNot.cures[static_cast<std::size_t>(*options.cure - 1)],
                            question, zones);
        return complain(outside,
                        {"--cure " + std::to_string(*options.cure) + ": there "
                         + (count == 0       ? "is none."
                                : count == 1 ? "is only one."
                                             : "are only " + std::to_string(count) + ".")});
    }
    if (options.json) {
        outside.out << output::explanationJson(question.services, whyNot, zones);
        return NothingFits;
    }
    outside.out << output::explanationText(question.services, whyNot, zones);
    if (!whyNot.cures.empty())
        outside.out << "\nSee the plan of one with --cure N, and save the changed service with --cure N "
                       "--save FILE.\n"
                       "The product's leaflet comes first: basinbell cautions.\n";
    return NothingFits;
}

int explainWhySo(const Options& options, Outside& outside, const Question& question,
                 const output::WhySo& whySo, const TimeZones& zones)
{
    if (options.cure)
        return complain(
            outside,
            {"--cure " + std::to_string(*options.cure) + ": it fits as it is, so there is nothing to cure."});
    outside.out << (options.json ? output::explanationJson(question.services, whySo, zones)
                                 : output::explanationText(question.services, whySo, zones));
    return Planned;
}

}  // namespace

int explainCommand(const Options& options, Outside& outside)
{
    const session::QtTimeZones zones;
    const auto question = readQuestion(options, outside.in, zones);
    if (!question)
        return complain(outside, question.error());
    Deadline deadline{options.seconds.value_or(secondsToExplain)};
    const auto plan = core::stagger::plan(*question, deadline.budget());
    if (plan)
        return explainWhySo(options, outside, *question,
                            {*plan, core::stagger::holdsOf(*question, deadline.budget())}, zones);
    output::WhyNot whyNot{plan.error(), {}, false};
    whyNot.cures = core::stagger::curesFor(*question, plan.error(), deadline.budget());
    whyNot.complete = !deadline.isOver();
    return explainWhyNot(options, outside, *question, std::move(whyNot), zones);
}

}  // namespace app::command
