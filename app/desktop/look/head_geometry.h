#pragma once

#include "core/service/service.h"

#include <QPainterPath>

#include <vector>

namespace app::desktop {

/// What a head, or pieces of hair, are seen from.
enum class HeadSide { Profile, Back, Pieces };

/// One place of the drawing, in a frame of `headFrame`.
struct DrawnPlace {
    core::service::Place place;
    QPainterPath shape;
    std::vector<QPainterPath> fibres;  ///< Along the hair, inside the shape.
    QPointF middle;
};

/// All drawings are made in this frame and stretched alike in both directions.
inline constexpr QSizeF headFrame{200, 222};

/// The sides that are drawn of a head of this kind, from left to right.
std::vector<HeadSide> sidesOf(core::service::HeadKind kind);

/// The places that can be seen from there. Both sides of a head are one place, and are drawn twice from
/// behind.
std::vector<DrawnPlace> placesSeen(HeadSide side);

/// What is not hair: face and neck, or what the pieces hang on.
std::vector<QPainterPath> outline(HeadSide side);

}  // namespace app::desktop
