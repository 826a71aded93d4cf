#include "app/command/program.h"

#include "app/command/card_command.h"
#include "app/command/erase_command.h"
#include "app/command/explain_command.h"
#include "app/command/forecast_command.h"
#include "app/command/help.h"
#include "app/command/options.h"
#include "app/command/plan_command.h"
#include "app/command/replay_command.h"
#include "app/command/run_command.h"

#include <QCoreApplication>

#include <ostream>

namespace app::command {

int runProgram(const QStringList& arguments, Outside& outside)
{
    const auto options = readOptions(arguments);
    if (!options) {
        outside.err << options.error().toStdString() << "\nbasinbell --help says what can be asked for.\n";
        return BadInput;
    }
    switch (options->command) {
    case Options::Command::Help: outside.out << helpText(options->helpAbout).toStdString(); return Planned;
    case Options::Command::Version:
        outside.out << "basinbell " << QCoreApplication::applicationVersion().toStdString() << '\n';
        return Planned;
    case Options::Command::Plan: return planCommand(*options, outside);
    case Options::Command::Explain: return explainCommand(*options, outside);
    case Options::Command::Forecast: return forecastCommand(*options, outside);
    case Options::Command::Check: return checkCommand(*options, outside);
    case Options::Command::Run: return runCommand(*options, outside);
    case Options::Command::Replay: return replayCommand(*options, outside);
    case Options::Command::Card: return cardCommand(*options, outside);
    case Options::Command::Erase: return eraseCommand(*options, outside);
    case Options::Command::Cautions: return cautionsCommand(outside);
    }
    return BadInput;
}

}  // namespace app::command
