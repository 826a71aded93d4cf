#include "app/desktop/setup/cure_search.h"

#include <chrono>
#include <memory>

namespace app::desktop {
namespace {

constexpr int patienceMilliseconds = 500;
/// As in the terminal: most is known at once, and nobody waits longer for the rest.
constexpr std::chrono::seconds longest{20};

struct Outcome {
    std::vector<core::stagger::Cure> cures;
    bool outOfTime = false;
};

}  // namespace

CureSearch::CureSearch(QObject* parent)
    : QObject{parent}
{
    m_patience.setSingleShot(true);
    m_patience.setInterval(patienceMilliseconds);
    connect(&m_patience, &QTimer::timeout, this, [this] { stand(Standing::SearchingLong); });
}

void CureSearch::ask(core::stagger::Question question, core::stagger::NoPlan reason)
{
    m_patience.start();
    m_work.begin([this, question = std::move(question),
                  reason = std::move(reason)](const session::BackgroundWork::Stop& stop) {
        const auto end = std::chrono::steady_clock::now() + longest;
        auto outcome = std::make_shared<Outcome>();
        core::stagger::Budget budget;
        budget.stop = [&] {
            outcome->outOfTime = outcome->outOfTime || std::chrono::steady_clock::now() >= end;
            return outcome->outOfTime || stop();
        };
        outcome->cures = core::stagger::curesFor(question, reason, budget);
        return [this, outcome] {
            m_patience.stop();
            m_cures = std::move(outcome->cures);
            stand(outcome->outOfTime ? Standing::OutOfTime : Standing::Found);
        };
    });
    stand(Standing::Searching);
}

void CureSearch::forget()
{
    m_work.forget();
    m_patience.stop();
    m_cures.clear();
    stand(Standing::Nothing);
}

void CureSearch::stand(Standing standing)
{
    m_standing = standing;
    Q_EMIT changed();
}

}  // namespace app::desktop
