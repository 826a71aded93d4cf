#pragma once

namespace app::sound {

/// Whether an alarm would be heard, as far as a program can know: what the
/// volume of the system is set to, and whether a cable is plugged in, it cannot.
enum class Health {
    Starting,  ///< Not known yet.
    Working,
    NoDevice,  ///< There is nothing to play on, or it cannot be reached.
    Stalled,   ///< There is a device, but it takes no sound.
};

}  // namespace app::sound
