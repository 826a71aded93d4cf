#pragma once

#include "app/desktop/look/theme.h"
#include "app/view/strand_picture.h"

#include <QRectF>

#include <algorithm>

namespace app::desktop {

/// Where things of a strand picture are: moments become x, strands become rows.
class StrandGeometry {
public:
    StrandGeometry(const view::StrandPicture& picture, const QRectF& frame);

    [[nodiscard]] double x(view::Instant moment) const;
    /// How far apart things are that lie a minute apart.
    [[nodiscard]] double minuteWidth() const;
    [[nodiscard]] QRectF row(std::size_t strand) const;
    [[nodiscard]] QRectF handsRow(std::size_t pair) const;
    [[nodiscard]] QRectF gutter(const QRectF& row) const;
    [[nodiscard]] const QRectF& plot() const
    {
        return m_plot;
    }  ///< Strands and hands, without axis and gutter.
    [[nodiscard]] double axisBottom() const { return m_plot.top(); }
    [[nodiscard]] double strandsBottom() const;

    /// Between two times on the axis, so that their texts do not touch.
    [[nodiscard]] view::Seconds axisStep() const;

    // All of these hold text, and are as large as it is.
    static double gutterWidth() { return Theme::scaled(168); }
    static double axisHeight() { return Theme::scaled(30); }
    static double handsHeight() { return Theme::scaled(30); }
    static double leastRow() { return std::max(44, Theme::scaled(40)); }  ///< It can be taken hold of.
    static double mostRow() { return Theme::scaled(84); }

    /// The height that `picture` needs at least.
    static int leastHeight(const view::StrandPicture& picture);

private:
    QRectF m_plot;
    double m_rowHeight;
    std::size_t m_strands;
    view::Span m_reach;
};

}  // namespace app::desktop
