#pragma once

#include "tests/app/desktop/pictures/look.h"
#include "tests/app/desktop/pictures/scenes.h"

#include <QImage>

namespace pictures {

/// A scene in a window of its own, to be drawn in one theme and size after the other. Nothing moves in it.
class Stage {
public:
    /// The language and the size of text are those of the whole program from here on.
    Stage(const Scene& scene, const Look& look);

    /// What there is to be seen once all of it is there, in the theme and size of the look.
    [[nodiscard]] QImage picture(const Look& look);

private:
    void hold();
    [[nodiscard]] bool isAtWork() const;

    rig::Rig m_rig;
};

}  // namespace pictures
