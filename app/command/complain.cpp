#include "app/command/complain.h"

#include <ostream>

namespace app::command {

int complain(Outside& outside, const std::vector<std::string>& lines)
{
    for (const std::string& line : lines)
        outside.err << line << '\n';
    return BadInput;
}

}  // namespace app::command
