#pragma once

#include "core/service/service.h"

#include <QString>

#include <vector>

namespace app::desktop {

/// Common work to begin with.
struct StartingPoint {
    QString name;
    QString key;  ///< For the name of its button.
    core::service::Service service;
};

/// Their times and windows are common practice, no source: each of their bowls says so, and the product's
/// leaflet replaces them.
std::vector<StartingPoint> startingPoints();

/// What those bowls say.
QString commonPractice();

/// Whether a bowl of the service still says that its times are common practice.
bool restsOnCommonPractice(const core::service::Service& service);

}  // namespace app::desktop
