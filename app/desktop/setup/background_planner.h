#pragma once

#include "app/session/background_work.h"

#include "core/stagger/plan.h"

#include <QObject>

namespace app::desktop {

/// Plans apart from the window, so that typing never waits. Only the answer to
/// the latest question arrives; a search for an older one is stopped.
class BackgroundPlanner : public QObject {
    Q_OBJECT

public:
    using Outcome = tl::expected<core::stagger::Plan, core::stagger::NoPlan>;

    explicit BackgroundPlanner(QObject* parent = nullptr);

    void ask(core::stagger::Question question);

    /// Whatever is being searched for is not wanted any more.
    void forget() { m_work.forget(); }

    [[nodiscard]] bool isBusy() const { return m_work.isBusy(); }

Q_SIGNALS:
    void answered(const app::desktop::BackgroundPlanner::Outcome& outcome);

private:
    session::BackgroundWork m_work;
};

}  // namespace app::desktop
