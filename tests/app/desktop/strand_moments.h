#pragma once

#include "app/view/strand_picture.h"

/// Moments of pictures in tests: so many minutes after 15 January 2027, 08:00 UTC.
namespace strand_moments {

constexpr app::view::Instant atMinute(int minutes)
{
    return app::view::Instant{app::view::Seconds{1'800'000'000 + minutes * 60}};
}

}  // namespace strand_moments
