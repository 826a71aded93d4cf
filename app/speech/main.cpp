#include "app/speech/dispatcher.h"

#include <csignal>
#include <cstdio>
#include <iostream>
#include <string>

namespace {

void tellWhetherThereIsAVoice(bool there)
{
    std::fputs(there ? "voice yes\n" : "voice no\n", stdout);
    std::fflush(stdout);
}

}  // namespace

/// Says what it is told on its standard input, in the language of its argument, a line each:
///
///     say Ends: strand test     after what is being said
///     stop                      be quiet
///
/// and answers each `say` with "voice yes" or "voice no". Apart from the program that leads the run, so that
/// a speech service that hangs or dies touches neither the window nor an alarm.
int main(int argc, char* argv[])
{
    std::signal(SIGPIPE, SIG_IGN);
    app::speech::Dispatcher dispatcher{argc > 1 ? argv[1] : "en-GB"};
    const std::string say = "say ";
    for (std::string line; std::getline(std::cin, line);) {
        if (line.starts_with(say))
            tellWhetherThereIsAVoice(dispatcher.say(line.substr(say.size())));
        else if (line == "stop")
            dispatcher.stop();
    }
    dispatcher.stop();
    return 0;
}
