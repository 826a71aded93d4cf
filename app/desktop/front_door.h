#pragma once

#include <QLocalServer>
#include <QObject>

#include <filesystem>

namespace app::desktop {

/// Where a second start of the program knocks when the first already has the data folder, so that the window
/// that is there comes to the front instead of a message that it cannot be opened twice. For one user: others
/// cannot reach it.
class FrontDoor : public QObject {
    Q_OBJECT

public:
    /// For whoever holds `folder`: what an earlier program left behind is cleared away.
    explicit FrontDoor(const std::filesystem::path& folder, QObject* parent = nullptr);

    /// Whether a program that holds `folder` heard it. Waits half a second at most.
    static bool knock(const std::filesystem::path& folder);

Q_SIGNALS:
    void knocked();

private:
    QLocalServer m_server;
};

}  // namespace app::desktop
