#pragma once

#include <QDBusConnection>

namespace app::sound {

/// Asks that this program comes before others when the processor is wanted by all: it needs little of it, but
/// needs it at once, or a sound stutters. As the sound server does: by itself where that is allowed, else by
/// the system's service for it (RealtimeKit), which the desktops of Linux bring. Not real time, in which an
/// error could stop the machine. Where neither helps, nothing happens. Does not wait.
class Priority {
public:
    /// What PulseAudio gives itself.
    static constexpr int niceness = -11;

    /// Whether it was allowed to take it by itself.
    static bool take();

    /// Of the service on `system`.
    static void ask(QDBusConnection system);
};

}  // namespace app::sound
