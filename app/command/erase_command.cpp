#include "app/command/erase_command.h"

#include "app/command/complain.h"
#include "app/session/data_folder.h"

#include <ostream>

namespace app::command {

int eraseCommand(const Options& options, Outside& outside)
{
    if (!options.run)
        return complain(
            outside, {"Which run? Give its number with --of; basinbell replay --list says which there are."});
    const auto journal = openJournal(outside, session::dataFolder(options.data.toStdString()));
    if (!journal)
        return BadInput;
    const session::RunId run{*options.run};
    const auto stored = journal->run(run);
    if (!stored)
        return complain(outside, {stored.error().what});
    if (!stored->ended)
        return complain(outside,
                        {"Run " + std::to_string(*options.run)
                         + " is still open. End it first: basinbell run --resume, then e."});
    if (const auto erased = journal->eraseServices(run); !erased)
        return complain(outside, {erased.error().what});
    const auto facts = journal->facts(run);
    const std::string count = facts ? std::to_string(facts->size()) + " facts" : std::string{"its facts"};
    outside.out << "Erased from run " << *options.run
                << ": the service with every name and note in it, whatever changed it while the run went on, "
                   "what was said before it began, and what was said of tones, of how it turned out and for "
                   "next time.\n"
                << "Kept: when the run began and ended, and " << count
                << ": the kind of each task, the number of its zone, when, and which of the words to pick "
                   "was said of "
                   "how it turned out. They name nobody. The run cannot be told again.\n"
                << "Copies of the journal, exported plans and service files are not touched.\n";
    return Planned;
}

}  // namespace app::command
