#pragma once

#include "app/desktop/look/strand_geometry.h"

#include <QString>

#include <functional>
#include <vector>

namespace app::desktop {

/// Above the axis: a flag at each rinse line and one at now, on their poles, none over another.
class StrandFlags {
public:
    struct Flag {
        double pole;  ///< Where its moment is on the axis.
        QRectF box;
        QString text;
        bool isNow;
    };
    struct Words {
        std::function<QString(view::Instant)> water;
        QString now;
    };

    StrandFlags(const view::StrandPicture& picture, const StrandGeometry& geometry, const Words& words);

    [[nodiscard]] const std::vector<Flag>& flags() const { return m_flags; }
    [[nodiscard]] bool cover(const QRectF& text) const;

private:
    enum class Hung { LeftOfPole, OverPole, RightOfPole };

    [[nodiscard]] Flag flag(double pole, const QString& text, bool isNow, Hung hung) const;
    [[nodiscard]] bool touch(const Flag& one, const Flag& other) const;
    void addWater(double pole, const QString& text, const Flag* now);
    void addNow(Flag now);

    const StrandGeometry& m_geometry;
    std::vector<Flag> m_flags;
};

}  // namespace app::desktop
