#pragma once

#include "app/session/background_work.h"

#include "core/stagger/forecast.h"

namespace app::desktop {

/// Forecasts what a plan comes to, apart from the window.
class Forecaster : public QObject {
    Q_OBJECT

public:
    explicit Forecaster(QObject* parent = nullptr);

    /// `plan` is a plan of `question`.
    void ask(core::stagger::Question question, core::stagger::Plan plan);
    void forget() { m_work.forget(); }
    [[nodiscard]] bool isBusy() const { return m_work.isBusy(); }

Q_SIGNALS:
    /// Not for a plan that breaks limits.
    void forecasted(const core::stagger::Forecast& forecast);

private:
    session::BackgroundWork m_work;
};

}  // namespace app::desktop
