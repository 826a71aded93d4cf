#include "app/command/run_command.h"

#include "app/command/auto_answer.h"
#include "app/command/complain.h"
#include "app/command/input.h"
#include "app/command/line_reader.h"
#include "app/command/quit_signals.h"
#include "app/command/terminal.h"
#include "app/output/plan_words.h"
#include "app/session/cautions.h"
#include "app/session/data_folder.h"
#include "app/session/time_zones.h"
#include "core/service/service_file.h"

#include <QEventLoop>

#include <algorithm>
#include <istream>
#include <ostream>
#include <sstream>
#include <unistd.h>

namespace app::command {

using core::measure::Instant;
using core::measure::Seconds;
using core::service::Service;
using session::Session;

namespace {

/// A run that is played and need not begin at once begins that long before its first task, so that its first
/// notice is heard.
constexpr Seconds leadIn{180};

/// One run of the command, from its options to its end.
class Run {
public:
    Run(const Options& options, Outside& outside)
        : m_options{options}
        , m_outside{outside}
        , m_folder{session::dataFolder(options.data.toStdString())}
    {
    }

    int go();

private:
    bool openJournal();
    std::optional<int> enter();
    std::optional<int> enterNew();
    [[nodiscard]] std::optional<session::StoredRun> stored();
    std::optional<int> chooseClock();
    bool openSoundFile();
    void showCautions();
    int lead();
    int complain(const std::string& what);

    const Options& m_options;
    Outside& m_outside;
    std::filesystem::path m_folder;
    std::shared_ptr<session::QtTimeZones> m_zones = std::make_shared<session::QtTimeZones>();
    std::optional<Service> m_service;
    std::unique_ptr<Session> m_session;
    std::optional<AlarmRecorder> m_recorder;
};

int Run::complain(const std::string& what)
{
    return command::complain(m_outside, {what});
}

bool Run::openJournal()
{
    Session::Parts parts;
    parts.journal = command::openJournal(m_outside, m_folder);
    if (!parts.journal)
        return false;
    parts.zones = m_zones;
    m_session = std::make_unique<Session>(std::move(parts));
    return true;
}

/// The latest run that was not ended, of the file's service if there is a file.
std::optional<session::StoredRun> Run::stored()
{
    std::string wanted;
    if (m_service) {
        std::ostringstream text;
        core::service::writeService(text, *m_service, *m_zones);
        wanted = text.str();
    }
    const auto runs = m_session->resumable();
    const auto found = std::find_if(runs.begin(), runs.end(), [&](const session::StoredRun& run) {
        return wanted.empty() || run.run.services == std::vector{wanted};
    });
    return found == runs.end() ? std::nullopt : std::optional{*found};
}

/// The time of day, or a clock that is played from `--from` or from shortly before the first task.
/// Ends the command where nothing fits.
std::optional<int> Run::chooseClock()
{
    const Instant wall = session::SystemClock{}.now();
    core::stagger::Question question;
    question.services = {*m_service};
    question.preference = m_options.preference;
    question.now = wall;
    const bool played = m_options.speed || !m_options.from.isEmpty();
    if (played)
        question.now = std::chrono::ceil<std::chrono::minutes>(wall);
    if (!m_options.from.isEmpty()) {
        const auto from = readMoment(m_options.from, m_service->timeZone, *m_zones, wall);
        if (!from)
            return complain(from.error());
        question.now = *from;
    }
    const auto plan = core::stagger::plan(question);
    if (!plan) {
        m_outside.out << output::noPlanText(plan.error());
        return NothingFits;
    }
    if (!played)
        return std::nullopt;
    const Instant begin =
        m_options.from.isEmpty() ? std::max(*question.now, (*plan)->start - leadIn) : *question.now;
    m_session->useClock(std::make_shared<session::FastClock>(m_options.speed.value_or(1.0), begin));
    return std::nullopt;
}

std::optional<int> Run::enterNew()
{
    if (const auto over = chooseClock())
        return over;
    showCautions();
    m_session->begin({*m_service}, m_options.preference);
    return std::nullopt;
}

std::optional<int> Run::enter()
{
    if (!m_options.resume)
        return enterNew();
    const auto run = stored();
    if (!run && m_service)
        return enterNew();
    if (!run)
        return complain("There is no run to take up: every run in " + m_folder.string() + " was ended.");
    if (m_options.speed)
        m_session->useClock(std::make_shared<session::FastClock>(*m_options.speed, run->run.began));
    if (const auto problem = m_session->resume(run->id))
        return complain(*problem);
    return std::nullopt;
}

bool Run::openSoundFile()
{
    if (m_options.soundFile.isEmpty())
        return true;
    auto file = m_outside.openSoundFile(m_options.soundFile.toStdString());
    if (!file) {
        complain(file.error());
        return false;
    }
    const bool fast = m_options.speed && *m_options.speed > 1.0;
    m_recorder.emplace(std::move(*file),
                       fast ? AlarmRecorder::Silence::Shortened : AlarmRecorder::Silence::Kept);
    return true;
}

void Run::showCautions()
{
    const bool onPerson = m_service->head.kind == core::service::HeadKind::Person;
    if (!onPerson || session::cautionsWereShown(m_folder))
        return;
    cautionsCommand(m_outside);
    if (m_outside.onTerminal) {
        m_outside.out << "Press Enter when you have read this." << std::endl;
        std::string line;
        std::getline(m_outside.in, line);
    }
    session::rememberCautionsShown(m_folder);
}

int Run::lead()
{
    std::unique_ptr<Screen> screen;
    if (m_outside.onTerminal)
        screen = std::make_unique<TerminalScreen>(m_outside.out, STDOUT_FILENO);
    else
        screen = std::make_unique<PlainScreen>(m_outside.out);
    Terminal terminal{*m_session, *m_zones, std::move(screen)};
    QEventLoop loop;
    QObject::connect(&terminal, &Terminal::done, &loop, &QEventLoop::quit, Qt::QueuedConnection);
    QuitSignals signals;
    QObject::connect(&signals, &QuitSignals::asked, &terminal, &Terminal::leave);
    LineReader reader{m_outside.inputDescriptor};
    QObject::connect(&reader, &LineReader::lineRead, &terminal, &Terminal::takeLine);
    std::optional<AutoAnswer> automatic;
    int status = Planned;
    if (m_options.answerAll) {
        terminal.endByItself();
        automatic.emplace(*m_session);
        QObject::connect(&*automatic, &AutoAnswer::stuck, &terminal, [&](const QString& why) {
            terminal.say(why);
            status = NothingFits;
            terminal.leave();
        });
    } else {
        // Nobody is left to answer.
        QObject::connect(&reader, &LineReader::ended, &terminal, &Terminal::leave);
    }
    if (m_recorder)
        terminal.recordInto(*m_recorder);
    const std::optional<int> over = enter();
    if (over)
        return *over;
    loop.exec();
    return status;
}

int Run::go()
{
    if (m_options.file == QLatin1String{"-"} && !m_options.answerAll)
        return complain(
            "With the service on standard input nobody can answer. Give a file, or --answer-all.");
    if (!m_options.file.isEmpty()) {
        auto service = readServiceFile(m_options.file, m_outside.in, *m_zones);
        if (!service)
            return command::complain(m_outside, service.error());
        m_service = std::move(*service);
    }
    if (!openJournal() || !openSoundFile())
        return BadInput;
    const int status = lead();
    if (const std::string problem = m_recorder ? m_recorder->finish() : std::string{}; !problem.empty())
        return complain(problem);
    return status;
}

}  // namespace

int runCommand(const Options& options, Outside& outside)
{
    return Run{options, outside}.go();
}

int cautionsCommand(Outside& outside)
{
    for (const std::string& caution : session::cautions())
        outside.out << "- " << caution << '\n';
    return Planned;
}

}  // namespace app::command
