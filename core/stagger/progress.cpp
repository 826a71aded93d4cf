#include "core/stagger/progress.h"

#include <algorithm>

namespace core::stagger {

const TaskProgress* Progress::find(const TaskId& id) const
{
    const auto found = std::ranges::find(tasks, id, &TaskProgress::id);
    return found == tasks.end() ? nullptr : &*found;
}

bool Progress::isDropped(const TaskId& id) const
{
    return std::ranges::find(dropped, id) != dropped.end();
}

}  // namespace core::stagger
