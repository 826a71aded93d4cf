#include "app/desktop/setup/forecaster.h"

#include <memory>

namespace app::desktop {
namespace {

/// A forecast cannot be stopped, so where a run of many zones takes long there are fewer.
int runsFor(const core::stagger::Plan& plan)
{
    constexpr std::size_t manyZones = 30;
    return plan->zones.size() <= manyZones ? 2000 : 200;
}

}  // namespace

Forecaster::Forecaster(QObject* parent)
    : QObject{parent}
{
}

void Forecaster::ask(core::stagger::Question question, core::stagger::Plan plan)
{
    m_work.begin(
        [this, question = std::move(question), plan = std::move(plan)](const session::BackgroundWork::Stop&) {
            auto found = std::make_shared<std::optional<core::stagger::Forecast>>(
                core::stagger::forecast(question, plan, {.runs = runsFor(plan)}));
            return [this, found] {
                if (*found)
                    Q_EMIT forecasted(**found);
            };
        });
}

}  // namespace app::desktop
