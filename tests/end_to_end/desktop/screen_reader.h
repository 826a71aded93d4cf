#pragma once

#include <QDBusConnection>
#include <QProcess>
#include <QTemporaryDir>

#include <optional>
#include <vector>

/// What a screen reader is told of a window, by way of AT-SPI, and what it can press.
/// The interfaces are those of at-spi2-core's D-Bus protocol (`org.a11y.atspi`).
namespace desk {

/// One accessible object that is on the screen.
struct Part {
    QString service;  ///< Whose it is, and where, on the bus.
    QString path;
    QString role;  ///< As AT-SPI names it: "push button", "label".
    QString name;
    QString description;
};

class ScreenReader {
public:
    /// Starts a session bus of its own, and says to programs started from then on that somebody reads.
    ScreenReader();
    ~ScreenReader();
    ScreenReader(const ScreenReader&) = delete;
    ScreenReader& operator=(const ScreenReader&) = delete;

    /// Whether there is a bus with accessible objects. The session bus alone is not enough.
    [[nodiscard]] bool isUp() const;

    /// All that is on the screen now, from the outside in. Empty while no program shows anything.
    [[nodiscard]] std::vector<Part> read() const;

    /// The first whose name begins with this; its role too has to fit, where one is given.
    [[nodiscard]] std::optional<Part> find(const QString& beginning, const QString& role = {}) const;

    /// Waits for it.
    [[nodiscard]] std::optional<Part> waitFor(const QString& beginning, const QString& role,
                                              int milliseconds) const;

    /// Writes this in place of what stands in it. False where it does not say that it can be written in.
    [[nodiscard]] bool write(const Part& part, const QString& text) const;

    /// What stands in it.
    [[nodiscard]] QString textOf(const Part& part) const;

    /// Does its first action, as pressing does. False where it has none.
    [[nodiscard]] bool press(const Part& part) const;

private:
    [[nodiscard]] QDBusMessage ask(const Part& part, const QString& interface, const QString& method,
                                   const QVariantList& arguments = {}) const;
    [[nodiscard]] QString property(const Part& part, const QString& name) const;
    [[nodiscard]] bool isShowing(const Part& part) const;
    void readInto(std::vector<Part>& parts, Part part, int depth) const;

    QTemporaryDir m_folder;
    QProcess m_daemon;
    QDBusConnection m_bus;
};

}  // namespace desk
