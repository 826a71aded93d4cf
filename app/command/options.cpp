#include "app/command/options.h"

#include "app/session/clock.h"

#include <QCommandLineParser>

namespace app::command {

using Command = Options::Command;
using core::stagger::Preference;

namespace {

QString words(const char* text)
{
    return QString::fromUtf8(text);
}

std::optional<Command> commandOf(const QString& word)
{
    if (word == QLatin1String{"plan"})
        return Command::Plan;
    if (word == QLatin1String{"explain"})
        return Command::Explain;
    if (word == QLatin1String{"forecast"})
        return Command::Forecast;
    if (word == QLatin1String{"check"})
        return Command::Check;
    if (word == QLatin1String{"run"})
        return Command::Run;
    if (word == QLatin1String{"replay"})
        return Command::Replay;
    if (word == QLatin1String{"card"})
        return Command::Card;
    if (word == QLatin1String{"erase"})
        return Command::Erase;
    if (word == QLatin1String{"cautions"})
        return Command::Cautions;
    return std::nullopt;
}

void addOptions(QCommandLineParser& parser, Command command)
{
    parser.addOption({{words("h"), words("help")}, {}});
    const bool plans = command == Command::Plan || command == Command::Explain || command == Command::Forecast
        || command == Command::Run;
    if (plans) {
        parser.addOption({words("from"), {}, words("time")});
        parser.addOption({words("preference"), {}, words("what")});
    }
    if (command == Command::Plan) {
        parser.addOptions({{words("json"), {}}, {words("look-all"), {}}});
        parser.addOption({words("crew"), {}, words("file")});
        parser.addOption({words("seconds"), {}, words("number")});
    }
    if (command == Command::Explain) {
        parser.addOption({words("json"), {}});
        for (const char* const name : {"cure", "save", "seconds"})
            parser.addOption({words(name), {}, words("value")});
    }
    if (command == Command::Forecast) {
        parser.addOption({words("json"), {}});
        for (const char* const name : {"crew", "runs", "seed"})
            parser.addOption({words(name), {}, words("value")});
    }
    if (command == Command::Run) {
        parser.addOptions({{words("answer-all"), {}}, {words("resume"), {}}});
        for (const char* const name : {"speed", "sound-file", "data"})
            parser.addOption({words(name), {}, words("value")});
    }
    if (command == Command::Erase || command == Command::Card) {
        for (const char* const name : {"of", "data"})
            parser.addOption({words(name), {}, words("value")});
    }
    if (command == Command::Replay) {
        parser.addOption({words("list"), {}});
        for (const char* const name : {"of", "at", "speed", "data"})
            parser.addOption({words(name), {}, words("value")});
    }
}

/// What is wrong with the number of a run, or nothing.
QString readRun(const QString& word, Options& options)
{
    if (word.isEmpty())
        return {};
    bool isNumber = false;
    const qlonglong number = word.toLongLong(&isNumber);
    if (!isNumber || number < 1)
        return words("--of %1: it must be the number of a run; basinbell replay --list says which there are.")
            .arg(word);
    options.run = number;
    return {};
}

tl::expected<Preference, QString> preferenceOf(const QString& word)
{
    if (word.isEmpty() || word == QLatin1String{"as-asked"})
        return Preference::AsAsked;
    if (word == QLatin1String{"start-late"})
        return Preference::StartLate;
    if (word == QLatin1String{"end-early"})
        return Preference::EndEarly;
    return tl::unexpected{words("--preference %1: it must be as-asked, start-late or end-early.").arg(word)};
}

tl::expected<std::optional<double>, QString> speedOf(const QString& word)
{
    if (word.isEmpty())
        return std::optional<double>{};
    bool isNumber = false;
    const double speed = word.toDouble(&isNumber);
    if (!isNumber || !(speed >= session::FastClock::slowest && speed <= session::FastClock::fastest))
        return tl::unexpected{words("--speed %1: it must be a number from 0.01 to 1000000.").arg(word)};
    return std::optional{speed};
}

tl::expected<std::optional<double>, QString> secondsOf(const QString& word)
{
    if (word.isEmpty())
        return std::optional<double>{};
    bool isNumber = false;
    const double seconds = word.toDouble(&isNumber);
    if (!isNumber || !(seconds > 0 && seconds <= 86'400))
        return tl::unexpected{
            words("--seconds %1: it must be a number above 0, 86400 (a day) at most.").arg(word)};
    return std::optional{seconds};
}

tl::expected<std::optional<int>, QString> cureOf(const QString& word, const QString& save)
{
    if (word.isEmpty() && !save.isEmpty())
        return tl::unexpected{words("--save %1: say which cure with --cure N.").arg(save)};
    if (word.isEmpty())
        return std::optional<int>{};
    bool isNumber = false;
    const int number = word.toInt(&isNumber);
    if (!isNumber || number < 1)
        return tl::unexpected{words("--cure %1: it must be the number of a cure, 1 or more.").arg(word)};
    return std::optional{number};
}

/// What is wrong with `--runs` and `--seed`, or nothing.
QString readForecast(const QString& runs, const QString& seed, Options& options)
{
    constexpr int mostRuns = 1'000'000;
    bool isNumber = true;
    if (!runs.isEmpty())
        options.runs = runs.toInt(&isNumber);
    if (!isNumber || options.runs < 1 || options.runs > mostRuns)
        return words("--runs %1: it must be a whole number from 1 to 1000000.").arg(runs);
    if (!seed.isEmpty())
        options.seed = seed.toULongLong(&isNumber);
    if (!isNumber)
        return words("--seed %1: it must be a whole number, 0 or more.").arg(seed);
    return {};
}

tl::expected<Options, QString> filled(Options options, const QCommandLineParser& parser)
{
    const auto flag = [&](const char* name) { return parser.optionNames().contains(words(name)); };
    const auto value = [&](const char* name) { return flag(name) ? parser.value(words(name)) : QString{}; };
    options.json = flag("json");
    options.lookAll = flag("look-all");
    options.answerAll = flag("answer-all");
    options.resume = flag("resume");
    options.from = value("from");
    options.soundFile = value("sound-file");
    options.data = value("data");
    options.crewFile = value("crew");
    options.at = value("at");
    options.list = flag("list");
    const auto seconds = secondsOf(value("seconds"));
    options.save = value("save");
    const auto cure = cureOf(value("cure"), options.save);
    const auto preference = preferenceOf(value("preference"));
    const auto speed = speedOf(value("speed"));
    if (!preference)
        return tl::unexpected{preference.error()};
    if (!speed)
        return tl::unexpected{speed.error()};
    if (!seconds)
        return tl::unexpected{seconds.error()};
    if (!cure)
        return tl::unexpected{cure.error()};
    if (const QString problem = readForecast(value("runs"), value("seed"), options); !problem.isEmpty())
        return tl::unexpected{problem};
    if (const QString problem = readRun(value("of"), options); !problem.isEmpty())
        return tl::unexpected{problem};
    options.cure = *cure;
    options.preference = *preference;
    options.seconds = *seconds;
    options.speed = *speed;
    return options;
}

/// How many files the command takes, and what is wrong if they are more or fewer.
QString fileProblem(const Options& options, const QStringList& files)
{
    const bool none = options.command == Command::Cautions || options.command == Command::Erase
        || options.command == Command::Card;
    const bool maybe =
        (options.command == Command::Run && options.resume) || options.command == Command::Replay;
    const bool several = options.command == Command::Plan || options.command == Command::Forecast
        || options.command == Command::Explain;
    if (!several && files.size() > (none ? 0 : 1))
        return words("%1: one too many. Only one file can be given at a time.").arg(files.last());
    if (files.count(QLatin1String{"-"}) > 1)
        return words("-: standard input can be read only once.");
    if (files.isEmpty() && !none && !maybe)
        return words("A service file is needed; - reads it from standard input.");
    return {};
}

Options help(const QString& about)
{
    Options options;
    options.helpAbout = about;
    return options;
}

}  // namespace

tl::expected<Options, QString> readOptions(const QStringList& arguments)
{
    if (arguments.isEmpty())
        return tl::unexpected{
            words("Say what to do: plan, explain, forecast, check, run, replay, card, erase or cautions.")};
    const QString first = arguments.first();
    if (first == QLatin1String{"--help"} || first == QLatin1String{"-h"} || first == QLatin1String{"help"})
        return help(arguments.value(1));
    Options options;
    if (first == QLatin1String{"--version"} || first == QLatin1String{"-v"}) {
        options.command = Command::Version;
        return options;
    }
    const auto command = commandOf(first);
    if (!command)
        return tl::unexpected{words("There is no command %1: it must be plan, explain, forecast, check, run, "
                                    "replay, card, erase or cautions.")
                                  .arg(first)};
    options.command = *command;

    QCommandLineParser parser;
    addOptions(parser, *command);
    if (!parser.parse(arguments))  // The command stands where the parser expects the program's name.
        return tl::unexpected{parser.errorText()};
    if (parser.isSet(words("help")))
        return help(first);
    auto read = filled(std::move(options), parser);
    if (!read)
        return read;
    if (const QString problem = fileProblem(*read, parser.positionalArguments()); !problem.isEmpty())
        return tl::unexpected{problem};
    read->files = parser.positionalArguments();
    read->file = read->files.value(0);
    return read;
}

}  // namespace app::command
