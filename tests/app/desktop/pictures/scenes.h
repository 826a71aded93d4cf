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

}  // namespace pictures
