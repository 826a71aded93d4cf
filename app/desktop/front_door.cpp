#include "app/desktop/front_door.h"

#include <QCryptographicHash>
#include <QLocalSocket>

namespace app::desktop {

namespace {

constexpr int longestWait = 500;  // Milliseconds.

/// A name of the folder that is short enough for a socket.
QString doorOf(const std::filesystem::path& folder)
{
    std::error_code error;
    const std::filesystem::path whole = std::filesystem::weakly_canonical(folder, error);
    const QByteArray path = QByteArray::fromStdString((error ? folder : whole).string());
    return QStringLiteral("basinbell-")
        + QString::fromLatin1(QCryptographicHash::hash(path, QCryptographicHash::Sha256).toHex().left(24));
}

}  // namespace

FrontDoor::FrontDoor(const std::filesystem::path& folder, QObject* parent)
    : QObject{parent}
{
    m_server.setSocketOptions(QLocalServer::UserAccessOption);
    QLocalServer::removeServer(doorOf(folder));
    // Without it a second start says that the first is there, and does no harm.
    m_server.listen(doorOf(folder));
    connect(&m_server, &QLocalServer::newConnection, this, [this] {
        while (QLocalSocket* const guest = m_server.nextPendingConnection()) {
            connect(guest, &QLocalSocket::disconnected, guest, &QObject::deleteLater);
            guest->write("here\n");
            guest->flush();
            guest->disconnectFromServer();
            Q_EMIT knocked();
        }
    });
}

bool FrontDoor::knock(const std::filesystem::path& folder)
{
    QLocalSocket socket;
    socket.connectToServer(doorOf(folder));
    return socket.waitForConnected(longestWait) && socket.waitForReadyRead(longestWait)
        && socket.readAll().startsWith("here");
}

}  // namespace app::desktop
