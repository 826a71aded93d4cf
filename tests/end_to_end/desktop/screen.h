#pragma once

#include <QProcess>
#include <QString>
#include <QStringList>

/// A screen of the test's own, a program on it, and the hands that work it
/// through real key events.
namespace desk {

class Screen {
public:
    Screen();
    ~Screen();

    /// Whether a screen came up. From then on programs started here draw on it.
    [[nodiscard]] bool isUp() const { return !m_display.isEmpty(); }

    /// Starts the desktop program with these arguments.
    [[nodiscard]] bool start(const QStringList& arguments);

    /// The title of the program's window; empty while it has none.
    QString title();

    /// Waits until the title begins with one of these; the title then, or empty.
    QString waitForTitle(const QStringList& beginnings, int milliseconds);

    /// Presses keys in the program's window.
    void press(const QString& keys);

    /// Presses keys in its dialog whose title begins with this; false where there is none.
    bool pressInDialog(const QString& title, const QString& keys);

    /// Ends the program without a warning, as a power cut would.
    void kill();

    /// Waits until the program has ended by itself; its exit status, or -1.
    int waitForEnd();

private:
    QString ask(const QStringList& arguments);
    QString findWindow(const QString& name);
    void pressIn(const QString& window, const QString& keys);

    QProcess m_server;
    QProcess m_program;
    QString m_display;
    QString m_window;
};

}  // namespace desk
