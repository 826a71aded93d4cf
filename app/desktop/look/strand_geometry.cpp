#include "app/desktop/look/strand_geometry.h"

#include <algorithm>

namespace app::desktop {
namespace {

constexpr double rightMargin = 26;
constexpr double handsGap = 8;

double handsSpace(const view::StrandPicture& picture)
{
    return handsGap + StrandGeometry::handsHeight() * static_cast<double>(picture.hands.size());
}

}  // namespace

StrandGeometry::StrandGeometry(const view::StrandPicture& picture, const QRectF& frame)
    : m_plot{frame.adjusted(gutterWidth(), axisHeight(), -rightMargin, 0)}
    , m_strands{picture.strands.size()}
    , m_reach{picture.reach}
{
    const double space = m_plot.height() - handsSpace(picture);
    m_rowHeight =
        std::clamp(space / static_cast<double>(std::max<std::size_t>(1, m_strands)), leastRow(), mostRow());
    m_plot.setHeight(m_rowHeight * static_cast<double>(m_strands) + handsSpace(picture));
    m_reach.until = std::max(m_reach.until, m_reach.from + view::Seconds{60});
}

double StrandGeometry::x(view::Instant moment) const
{
    const auto whole = static_cast<double>((m_reach.until - m_reach.from).count());
    return m_plot.left() + m_plot.width() * static_cast<double>((moment - m_reach.from).count()) / whole;
}

double StrandGeometry::minuteWidth() const
{
    return m_plot.width() * 60 / static_cast<double>((m_reach.until - m_reach.from).count());
}

QRectF StrandGeometry::row(std::size_t strand) const
{
    return {m_plot.left(), m_plot.top() + m_rowHeight * static_cast<double>(strand), m_plot.width(),
            m_rowHeight};
}

QRectF StrandGeometry::handsRow(std::size_t pair) const
{
    return {m_plot.left(), strandsBottom() + handsGap + handsHeight() * static_cast<double>(pair),
            m_plot.width(), handsHeight()};
}

QRectF StrandGeometry::gutter(const QRectF& row) const
{
    return {m_plot.left() - gutterWidth(), row.top(), gutterWidth() - 12, row.height()};
}

double StrandGeometry::strandsBottom() const
{
    return m_plot.top() + m_rowHeight * static_cast<double>(m_strands);
}

view::Seconds StrandGeometry::axisStep() const
{
    const int leastPixels = Theme::scaled(64);
    const auto whole = static_cast<double>((m_reach.until - m_reach.from).count());
    for (const int minutes : {5, 10, 15, 30, 60, 120})
        if (m_plot.width() * minutes * 60 / whole >= leastPixels)
            return view::Seconds{minutes * 60};
    return view::Seconds{240 * 60};
}

int StrandGeometry::leastHeight(const view::StrandPicture& picture)
{
    return static_cast<int>(axisHeight() + leastRow() * static_cast<double>(picture.strands.size())
                            + handsSpace(picture))
        + 4;
}

}  // namespace app::desktop
