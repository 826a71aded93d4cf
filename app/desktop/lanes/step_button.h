#pragma once

#include "app/desktop/wall_clock.h"
#include "app/view/now_view.h"

#include <QPushButton>

namespace app::desktop {

/// A step that comes later: what and when, and below that until when it can be put off. Gives way to
/// others beside it by saying it more briefly, never by hiding what a moment hangs on.
class StepButton : public QPushButton {
    Q_OBJECT

public:
    explicit StepButton(QWidget* parent = nullptr);

    void showStep(const view::StepView& step, const WallClock& clock);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QSize sizeFor(const QString& second) const;

    QString m_step;
    QString m_latest;
    QString m_latestBriefly;
};

}  // namespace app::desktop
