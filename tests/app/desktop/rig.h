#pragma once

#include "app/desktop/main_window.h"
#include "app/session/clock.h"

#include <QSettings>
#include <QTemporaryDir>

#include <functional>
#include <memory>

/// A whole window without a disk, a device or a clock of its own.
namespace rig {

using core::measure::Instant;
using core::measure::Seconds;

constexpr Instant morning{Seconds{1'800'000'000}};

/// A clock that goes when it is told to.
class HandClock final : public app::session::Clock {
public:
    [[nodiscard]] Instant now() const override { return m_now; }
    [[nodiscard]] std::chrono::milliseconds until(Instant moment) const override;
    [[nodiscard]] double speed() const override { return 1.0; }
    [[nodiscard]] bool isSimulated() const override { return false; }
    void goOn(Seconds length) { m_now += length; }

private:
    Instant m_now = morning;
};

/// Remembers what was asked of it.
class FakeSound final : public app::desktop::Sound {
public:
    void keepReady(bool ready) override { isReady = ready; }
    void sound(const core::alarm::Call& call) override { sounded.push_back(call); }
    void setStanding(const std::vector<core::alarm::Alarm>&) override { }
    void silence() override { ++silenced; }
    void playCheck(core::alarm::Kind, core::alarm::Subject) override { ++checks; }
    [[nodiscard]] bool isWorking() const override { return works; }
    [[nodiscard]] QString problem() const override
    {
        return works ? QString{} : QStringLiteral("No device.");
    }

    bool works = true;
    int silenced = 0;
    bool isReady = false;
    int checks = 0;
    std::vector<core::alarm::Call> sounded;
};

class Rig {
public:
    using Dress = std::function<void(app::desktop::Theme&)>;

    /// `dress` chooses the look before there is a window, for to dress one again takes as long as to make it.
    explicit Rig(const Dress& dress = {});
    ~Rig();

    /// Puts a new window where the old one was, as if the program had been started again.
    void openWindow();

    /// Gives the window the keyboard, as a window manager does when a dialog has closed.
    void activate();

    /// From what is in Set-up to running lanes, the sound check passed.
    void startLanes();

    /// What is pressed from now on was meant, however soon it comes: nobody here presses twice by mistake.
    void settle();

    /// Goes on by `length` in real seconds of the run.
    void goOn(Seconds length);

    /// The one part of the window with this name.
    template <typename Part>
    Part* find(const char* name) const
    {
        return window->findChild<Part*>(QLatin1String{name});
    }

    /// Waits until `done` holds, for at most a few seconds; whether it does.
    static bool wait(const std::function<bool()>& done, int milliseconds = 8000);

    /// Accepts or rejects the next dialog with this name by pressing one of its buttons.
    void pressInDialog(const char* dialog, const char* button);

    /// Two zones that fit easily: 5 minutes on, 20 to develop; 4 on, 10 to develop with one look.
    static core::service::Service service();

    QTemporaryDir folder;
    std::shared_ptr<HandClock> clock = std::make_shared<HandClock>();
    FakeSound sound;
    std::unique_ptr<app::desktop::Theme> theme;
    std::unique_ptr<QSettings> settings;
    std::unique_ptr<app::session::Session> session;
    std::unique_ptr<app::desktop::MainWindow> window;
};

}  // namespace rig
