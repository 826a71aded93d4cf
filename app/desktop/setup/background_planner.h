#pragma once

#include "core/stagger/plan.h"

#include <QObject>
#include <QThread>

#include <atomic>
#include <memory>

namespace app::desktop {

/// Plans apart from the window, so that typing never waits. Only the answer to
/// the latest question arrives; a search for an older one is stopped.
class BackgroundPlanner : public QObject {
    Q_OBJECT

public:
    using Outcome = tl::expected<core::stagger::Plan, core::stagger::NoPlan>;

    explicit BackgroundPlanner(QObject* parent = nullptr);
    ~BackgroundPlanner() override;

    void ask(core::stagger::Question question);

    /// Whatever is being searched for is not wanted any more.
    void forget();

    [[nodiscard]] bool isBusy() const { return m_busy; }

Q_SIGNALS:
    void answered(const app::desktop::BackgroundPlanner::Outcome& outcome);

private:
    QThread m_thread;
    QObject* m_worker;
    std::shared_ptr<std::atomic<std::uint64_t>> m_latest;
    bool m_busy = false;
};

}  // namespace app::desktop
