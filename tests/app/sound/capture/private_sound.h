#pragma once

#include "tests/app/sound/capture/heard.h"

#include <QProcess>
#include <QTemporaryDir>

#include <chrono>
#include <functional>
#include <vector>

namespace capture {

using Clock = std::chrono::steady_clock;

/// Lets Qt's events run until `done` or the time is over; says whether it was done.
bool waitUntil(const std::function<bool()>& done, std::chrono::milliseconds most);
void waitFor(std::chrono::milliseconds time);

/// A PulseAudio server of the test's own, whose one sound device goes nowhere but can be recorded. It and its
/// device come and go as the test says. Programs started meanwhile find it and no other.
class PrivateSound {
public:
    PrivateSound();
    ~PrivateSound();
    PrivateSound(const PrivateSound&) = delete;
    PrivateSound& operator=(const PrivateSound&) = delete;

    [[nodiscard]] bool startServer();
    void killServer();
    [[nodiscard]] bool addDevice();
    void removeDevice();

    /// The device stays, and takes no sound until it is let go on.
    [[nodiscard]] bool holdDevice();
    [[nodiscard]] bool letDeviceGoOn();

    [[nodiscard]] qint64 serverProcess() const { return m_server.processId(); }

private:
    bool control(const QStringList& arguments);

    QTemporaryDir m_folder;
    QProcess m_server;
};

/// Records the device of a `PrivateSound` from when it is made.
class Recording {
public:
    Recording();
    ~Recording();
    Recording(const Recording&) = delete;
    Recording& operator=(const Recording&) = delete;

    /// False when nothing could be recorded.
    [[nodiscard]] bool begun() const { return !m_bytes.isEmpty(); }

    /// Ends it and finds the alarms in it, of so many voices from the first.
    std::vector<Heard> end(int voices = 1);

    /// Ends it; what was recorded, 48,000 samples a second from -1 to 1.
    std::vector<float> endAsSamples();

    /// When in the recording that moment was, in seconds; good to about 10 ms.
    [[nodiscard]] double at(Clock::time_point moment) const;

private:
    void take();

    QProcess m_process;
    QByteArray m_bytes;
    Clock::time_point m_began = Clock::time_point::max();
};

}  // namespace capture
