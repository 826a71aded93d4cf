#include "app/desktop/setup/background_planner.h"

namespace app::desktop {

BackgroundPlanner::BackgroundPlanner(QObject* parent)
    : QObject{parent}
{
}

void BackgroundPlanner::ask(core::stagger::Question question)
{
    m_work.begin([this, question = std::move(question)](const session::BackgroundWork::Stop& stop) {
        core::stagger::Budget budget;
        budget.stop = stop;
        auto outcome = std::make_shared<Outcome>(core::stagger::plan(question, budget));
        return [this, outcome] { Q_EMIT answered(*outcome); };
    });
}

}  // namespace app::desktop
