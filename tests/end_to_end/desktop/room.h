#pragma once

#include "tests/app/sound/capture/private_sound.h"
#include "tests/end_to_end/desktop/screen.h"
#include "tests/end_to_end/desktop/screen_reader.h"

#include <string>
#include <utility>
#include <vector>

namespace desk {

/// Somebody who leads a run with a screen reader alone: reads what is asked, and presses what is shown.
class Room {
public:
    Room(Screen& screen, ScreenReader& reader)
        : m_screen{screen}
        , m_reader{reader}
    {
    }

    /// What the window asks for, "Now: ..."; what it says instead once it asks for nothing within that time.
    QString waitForStep(int milliseconds);

    /// Presses the first button whose name begins, or ends, with this. False where there is none.
    bool pressNamed(const QString& beginning);
    bool pressEnding(const QString& ending);

    /// The same, for a press that answers something.
    bool answerNamed(const QString& beginning);

    /// Answers what is asked in the way that needs one press: a look is left as planned.
    bool answer();

    /// What is said of each lane: "Root, developing".
    [[nodiscard]] QStringList lanes() const;

    /// All that is read from the screen at once, for a failing test to show.
    [[nodiscard]] std::string all() const;

    /// When each press was made that answered something, since this was asked last.
    std::vector<capture::Clock::time_point> takePresses() { return std::exchange(m_presses, {}); }

private:
    bool press(const std::optional<Part>& part);
    bool answerWith(const std::optional<Part>& part);
    [[nodiscard]] std::optional<Part> named(const QString& beginning) const;
    [[nodiscard]] std::optional<Part> ending(const QString& ending) const;
    void waitUntilTaken(const QString& before);

    Screen& m_screen;
    ScreenReader& m_reader;
    std::vector<capture::Clock::time_point> m_presses;
};

}  // namespace desk
