#include "app/desktop/look/strand_flags.h"

#include "app/desktop/look/metrics.h"

#include <QFontMetricsF>

#include <algorithm>
#include <optional>

namespace app::desktop {
namespace {

constexpr double besideText = 8;
constexpr double betweenFlags = 4;
constexpr double pastTheAxis = 20;

}  // namespace

StrandFlags::StrandFlags(const view::StrandPicture& picture, const StrandGeometry& geometry,
                         const Words& words)
    : m_geometry{geometry}
{
    std::optional<Flag> now;
    if (picture.now)
        now = flag(m_geometry.x(*picture.now), words.now, true, Hung::OverPole);
    for (const view::RinseLine& line : picture.rinseLines)
        addWater(m_geometry.x(line.at), words.water(line.at), now ? &*now : nullptr);
    if (now)
        addNow(*std::move(now));
}

bool StrandFlags::cover(const QRectF& text) const
{
    return std::ranges::any_of(m_flags, [&](const Flag& flag) { return flag.box.intersects(text); });
}

StrandFlags::Flag StrandFlags::flag(double pole, const QString& text, bool isNow, Hung hung) const
{
    const double width =
        QFontMetricsF{Theme::font(metrics::textSmall, true)}.horizontalAdvance(text) + 2 * besideText;
    const double most = m_geometry.plot().right() + pastTheAxis - width;
    double left = pole - width / 2;
    if (hung == Hung::LeftOfPole)
        left = pole - width;
    if (hung == Hung::RightOfPole)
        left = pole;
    left = std::clamp(left, std::min(m_geometry.plot().left(), most), most);
    const double top = m_geometry.axisBottom() - Theme::scaled(25);
    return {pole, QRectF{left, top, width, Theme::scaled(22) * 1.0}, text, isNow};
}

bool StrandFlags::touch(const Flag& one, const Flag& other) const
{
    return one.box.adjusted(0, 0, betweenFlags, 0).intersects(other.box)
        || other.box.adjusted(0, 0, betweenFlags, 0).intersects(one.box);
}

/// Away from now where that is near. Where flags of water would cover one another the first is kept; every
/// line is still on its strand.
void StrandFlags::addWater(double pole, const QString& text, const Flag* now)
{
    Flag water = flag(pole, text, false, Hung::OverPole);
    if (now != nullptr && touch(water, *now))
        water = flag(pole, text, false, now->pole <= pole ? Hung::RightOfPole : Hung::LeftOfPole);
    if (m_flags.empty() || !touch(m_flags.back(), water))
        m_flags.push_back(std::move(water));
}

/// Beside the water that is near, on the side on which now is. It is always there.
void StrandFlags::addNow(Flag now)
{
    for (const Flag& water : m_flags) {
        if (!touch(water, now))
            continue;
        if (now.pole <= water.pole)
            now.box.moveRight(std::min(now.pole, water.box.left() - betweenFlags));
        else
            now.box.moveLeft(std::max(now.pole, water.box.right() + betweenFlags));
    }
    std::erase_if(m_flags, [&](const Flag& water) { return touch(water, now); });
    m_flags.push_back(std::move(now));
}

}  // namespace app::desktop
