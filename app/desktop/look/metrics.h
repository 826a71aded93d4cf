#pragma once

#include <algorithm>

/// Sizes in one place, in device-independent pixels.
namespace app::desktop::metrics {

constexpr int gapTiny = 4;
constexpr int gapSmall = 8;
constexpr int gap = 12;
constexpr int gapLarge = 20;

constexpr int radius = 8;
constexpr int radiusLarge = 14;

constexpr int textSmall = 13;
constexpr int text = 15;
constexpr int textLarge = 19;
constexpr int textLane = 17;   ///< What a lane's digits count to.
constexpr int textStep = 30;   ///< The one thing to do now.
constexpr int textAlert = 46;  ///< An alarm that takes the window.

/// Digits that are read from three metres: a figure of the typeface is 0.729 of
/// its size high, so these are 76 px, 20 mm at 96 dots an inch.
constexpr int textDigits = 104;
constexpr int digitsHeight = 76;

constexpr int target = 44;      ///< The least height of what is pressed.
constexpr int targetLive = 84;  ///< Of what is pressed during a run, with wet gloves.

/// How much larger, in percent, what is read from three metres can be on a page of so many pixels than on one
/// that just has room for it: 100, 150, 200 or 250.
constexpr int enlargement(int width, int height)
{
    constexpr int usualWidth = 1200;
    constexpr int usualHeight = 650;
    return std::clamp(std::min(width * 2 / usualWidth, height * 2 / usualHeight) * 50, 100, 250);
}

}  // namespace app::desktop::metrics
