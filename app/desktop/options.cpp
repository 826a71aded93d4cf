#include "app/desktop/options.h"

#include "app/desktop/language.h"
#include "app/session/clock.h"

#include <QCommandLineParser>

namespace app::desktop {
namespace {

struct OptionsText {
    Q_DECLARE_TR_FUNCTIONS(Options)
};

QStringList codes()
{
    QStringList codes;
    for (const language::Offered& each : language::offered())
        codes << each.code;
    return codes;
}

}  // namespace

Options readOptions(const QStringList& arguments)
{
    QCommandLineParser parser;
    parser.setApplicationDescription(
        OptionsText::tr("Plans the staggered start of a hair colour service and times its lanes."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(
        QStringLiteral("FILE"),
        OptionsText::tr("The service to open; several are planned together, a head each."),
        QStringLiteral("[FILE]..."));
    const QCommandLineOption data{QStringLiteral("data"),
                                  OptionsText::tr("Keep the journal and the window's state in DIR."),
                                  QStringLiteral("DIR")};
    const QCommandLineOption speed{
        QStringLiteral("speed"),
        OptionsText::tr("Let N seconds pass in one. For demonstrations: alarms come faster too."),
        QStringLiteral("N")};
    const QCommandLineOption resume{
        QStringLiteral("resume"),
        OptionsText::tr("Take up the latest unfinished run, however long ago it was begun.")};
    const QCommandLineOption demo{QStringLiteral("demo"), OptionsText::tr("Open the demo.")};
    const QCommandLineOption spoken{
        QStringLiteral("language"),
        OptionsText::tr("Speak the language CODE this time: %1.").arg(codes().join(QStringLiteral(", "))),
        QStringLiteral("CODE")};
    parser.addOptions({data, speed, resume, demo, spoken});
    parser.process(arguments);

    Options options;
    options.data = parser.value(data);
    options.resume = parser.isSet(resume);
    options.demo = parser.isSet(demo);
    options.files = parser.positionalArguments();
    options.language = parser.value(spoken);
    if (parser.isSet(spoken) && !language::isOffered(options.language))
        options.error = OptionsText::tr("--language %1: it must be one of %2.")
                            .arg(options.language, codes().join(QStringLiteral(", ")));
    if (parser.isSet(speed)) {
        bool isNumber = false;
        options.speed = parser.value(speed).toDouble(&isNumber);
        if (!isNumber || *options.speed < session::FastClock::slowest
            || *options.speed > session::FastClock::fastest)
            options.error = OptionsText::tr("--speed %1: it must be a number from 0.01 to 1000000.")
                                .arg(parser.value(speed));
    }
    return options;
}

}  // namespace app::desktop
