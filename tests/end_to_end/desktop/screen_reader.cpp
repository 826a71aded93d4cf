#include "tests/end_to_end/desktop/screen_reader.h"

#include <QDBusArgument>
#include <QDBusMessage>
#include <QDBusObjectPath>
#include <QDBusReply>
#include <QDBusVariant>
#include <QElapsedTimer>
#include <QThread>

namespace desk {
namespace {

const QString sessionName = QStringLiteral("screen reader session");
const QString busName = QStringLiteral("screen reader");
const QString accessible = QStringLiteral("org.a11y.atspi.Accessible");
const QString action = QStringLiteral("org.a11y.atspi.Action");
const QString plainText = QStringLiteral("org.a11y.atspi.Text");
const QString editableText = QStringLiteral("org.a11y.atspi.EditableText");
constexpr int patience = 3000;  // Milliseconds for an answer.
constexpr int deepest = 40;

/// `ATSPI_STATE_SHOWING` of atspi-constants.h: it is on the screen and not covered by its parents.
constexpr unsigned showing = 25;

/// The children that an answer of the signature a(so) names.
std::vector<Part> partsIn(const QDBusMessage& answer)
{
    std::vector<Part> parts;
    if (answer.type() != QDBusMessage::ReplyMessage || answer.arguments().isEmpty())
        return parts;
    const auto list = answer.arguments().constFirst().value<QDBusArgument>();
    list.beginArray();
    while (!list.atEnd()) {
        QString service;
        QDBusObjectPath path;
        list.beginStructure();
        list >> service >> path;
        list.endStructure();
        parts.push_back({service, path.path(), {}, {}, {}});
    }
    list.endArray();
    return parts;
}

QDBusConnection accessibleBus(const QString& session)
{
    const auto bus = QDBusConnection::connectToBus(session, sessionName);
    const QDBusReply<QString> address = bus.call(
        QDBusMessage::createMethodCall(QStringLiteral("org.a11y.Bus"), QStringLiteral("/org/a11y/bus"),
                                       QStringLiteral("org.a11y.Bus"), QStringLiteral("GetAddress")));
    return QDBusConnection::connectToBus(address.value(), busName);
}

}  // namespace

ScreenReader::ScreenReader()
    : m_bus{QString{}}
{
    m_daemon.setStandardErrorFile(QProcess::nullDevice());
    m_daemon.start(
        QStringLiteral("dbus-daemon"),
        {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
    if (!m_daemon.waitForReadyRead(10'000))
        return;
    const QByteArray address = m_daemon.readLine().trimmed();
    qputenv("DBUS_SESSION_BUS_ADDRESS", address);
    qputenv("QT_LINUX_ACCESSIBILITY_ALWAYS_ON", "1");
    m_bus = accessibleBus(QString::fromLatin1(address));
}

ScreenReader::~ScreenReader()
{
    for (const QString& name : {busName, sessionName})
        QDBusConnection::disconnectFromBus(name);
    m_daemon.terminate();
    m_daemon.waitForFinished(5000);
}

bool ScreenReader::isUp() const
{
    return m_bus.isConnected();
}

QDBusMessage ScreenReader::ask(const Part& part, const QString& interface, const QString& method,
                               const QVariantList& arguments) const
{
    QDBusMessage question = QDBusMessage::createMethodCall(part.service, part.path, interface, method);
    question.setArguments(arguments);
    return m_bus.call(question, QDBus::Block, patience);
}

QString ScreenReader::property(const Part& part, const QString& name) const
{
    const QDBusReply<QDBusVariant> answer = ask(part, QStringLiteral("org.freedesktop.DBus.Properties"),
                                                QStringLiteral("Get"), {accessible, name});
    return answer.value().variant().toString();
}

bool ScreenReader::isShowing(const Part& part) const
{
    const QDBusReply<QList<unsigned>> states = ask(part, accessible, QStringLiteral("GetState"));
    return states.isValid() && !states.value().isEmpty()
        && ((states.value().constFirst() >> showing) & 1U) != 0;
}

void ScreenReader::readInto(std::vector<Part>& parts, Part part, int depth) const
{
    // The desktop (0) and its programs (1) are nowhere on the screen themselves.
    if (depth > deepest || (depth > 1 && !isShowing(part)))
        return;
    const auto children = partsIn(ask(part, accessible, QStringLiteral("GetChildren")));
    if (depth > 1) {
        part.role = QDBusReply<QString>{ask(part, accessible, QStringLiteral("GetRoleName"))}.value();
        part.name = property(part, QStringLiteral("Name"));
        part.description = property(part, QStringLiteral("Description"));
        parts.push_back(std::move(part));
    }
    for (const Part& child : children)
        readInto(parts, child, depth + 1);
}

std::vector<Part> ScreenReader::read() const
{
    std::vector<Part> parts;
    readInto(parts,
             {QStringLiteral("org.a11y.atspi.Registry"),
              QStringLiteral("/org/a11y/atspi/accessible/root"),
              {},
              {},
              {}},
             0);
    return parts;
}

std::optional<Part> ScreenReader::find(const QString& beginning, const QString& role) const
{
    for (Part& part : read())
        if (part.name.startsWith(beginning) && (role.isEmpty() || part.role == role))
            return std::move(part);
    return std::nullopt;
}

std::optional<Part> ScreenReader::waitFor(const QString& beginning, const QString& role,
                                          int milliseconds) const
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < milliseconds) {
        if (auto part = find(beginning, role))
            return part;
        QThread::msleep(50);
    }
    return std::nullopt;
}

bool ScreenReader::write(const Part& part, const QString& text) const
{
    const QDBusReply<QStringList> can = ask(part, accessible, QStringLiteral("GetInterfaces"));
    return can.value().contains(editableText)
        && QDBusReply<bool>{ask(part, editableText, QStringLiteral("SetTextContents"), {text})}.value();
}

QString ScreenReader::textOf(const Part& part) const
{
    return QDBusReply<QString>{ask(part, plainText, QStringLiteral("GetText"), {0, -1})}.value();
}

bool ScreenReader::press(const Part& part) const
{
    return QDBusReply<bool>{ask(part, action, QStringLiteral("DoAction"), {0})}.value();
}

}  // namespace desk
