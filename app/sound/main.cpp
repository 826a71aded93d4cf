#include "app/sound/order_reader.h"
#include "app/sound/priority.h"
#include "app/sound/speaker.h"

#include <QCoreApplication>
#include <QLoggingCategory>
#include <QTimer>

#include <csignal>
#include <cstdio>

#include <unistd.h>

namespace {

constexpr unsigned longestStandstillSeconds = 4;

/// A call into a sound server that never comes back must not leave this program standing there, deaf and
/// unnoticed: the system ends it, and whoever started it starts another.
void endWhenStuck(QTimer& timer)
{
    ::alarm(longestStandstillSeconds);
    QObject::connect(&timer, &QTimer::timeout, [] { ::alarm(longestStandstillSeconds); });
    timer.start(1000);
}

void say(const app::sound::Report& report)
{
    const std::string line = lineOf(report) + '\n';
    std::fwrite(line.data(), 1, line.size(), stdout);
    std::fflush(stdout);
}

}  // namespace

/// Plays alarms as it is told on its standard input; app/sound/message.h lists the words. Apart from the
/// program that runs the service, because Qt 6.4 never finds a sound server that starts after the program: a
/// new process does.
int main(int argc, char* argv[])
{
    std::signal(SIGPIPE, SIG_IGN);
    const QCoreApplication application{argc, argv};
    QTimer timer;
    endWhenStuck(timer);

    app::sound::Speaker speaker;
    app::sound::OrderReader reader{STDIN_FILENO};
    QObject::connect(&speaker, &app::sound::Speaker::reported, say);
    QObject::connect(&reader, &app::sound::OrderReader::ordered, &speaker, &app::sound::Speaker::obey);
    QObject::connect(&reader, &app::sound::OrderReader::misunderstood, [](const QString& line) {
        std::fprintf(stderr, "basinbell-sound: '%s' is no order; see app/sound/message.h.\n",
                     qPrintable(line));
    });
    QObject::connect(&reader, &app::sound::OrderReader::ended, &application, &QCoreApplication::quit,
                     Qt::QueuedConnection);
    speaker.begin();
    if (!app::sound::Priority::take())
        app::sound::Priority::ask(QDBusConnection::systemBus());
    return QCoreApplication::exec();
}
