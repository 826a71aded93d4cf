#pragma once

#include "app/desktop/look/strand_painter.h"
#include "app/desktop/wall_clock.h"

#include <QWidget>

#include <optional>

namespace app::desktop {

class Theme;

/// Shows a strand picture. Holds no rules and no clock: it draws what it is given.
class StrandWidget : public QWidget {
    Q_OBJECT

public:
    explicit StrandWidget(const Theme& theme, QWidget* parent = nullptr);

    /// `jobs` names tasks in the rows of the hands.
    void showPicture(view::StrandPicture picture, const WallClock& clock,
                     std::function<QString(const view::TaskId&)> jobs);
    void clear();

    /// While a plan is being made the old picture is dimmed, so nobody takes it for the new one.
    void setStale(bool stale);
    [[nodiscard]] bool isStale() const { return m_stale; }
    [[nodiscard]] const view::StrandPicture& picture() const { return m_picture; }

    /// As long as there is one, time is laid out so whatever is shown, so that what is under a hand stays
    /// there.
    void holdReach(const std::optional<view::Span>& reach);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QString inWords() const;

    const Theme& m_theme;
    view::StrandPicture m_picture;
    view::Span m_ownReach;  ///< Of the picture, where nothing holds another.
    std::optional<view::Span> m_heldReach;
    StrandWords m_words;
    bool m_stale = false;
};

}  // namespace app::desktop
