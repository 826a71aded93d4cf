#pragma once

#include "tests/app/desktop/rig.h"

#include <QString>

#include <functional>
#include <vector>

/// What there is to see of the window, each brought about as a person would.
namespace pictures {

struct Scene {
    QString name;
    std::function<void(rig::Rig&)> stage;
};

std::vector<Scene> scenes();

/// The window, or the one that the scene opened beside it.
QWidget& shownBy(const rig::Rig& rig);

}  // namespace pictures
