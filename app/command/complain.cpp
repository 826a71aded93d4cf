#include "app/command/complain.h"

#include <ostream>

namespace app::command {

int complain(Outside& outside, const std::vector<std::string>& lines)
{
    for (const std::string& line : lines)
        outside.err << line << '\n';
    return BadInput;
}

std::unique_ptr<session::Journal> openJournal(Outside& outside, const std::filesystem::path& folder)
{
    auto opened = outside.openJournal(folder);
    if (!opened) {
        complain(outside, {opened.error().what});
        return nullptr;
    }
    for (const std::string& warning : opened->warnings)
        outside.err << warning << '\n';
    return std::move(opened->journal);
}

}  // namespace app::command
