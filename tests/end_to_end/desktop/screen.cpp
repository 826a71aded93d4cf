#include "tests/end_to_end/desktop/screen.h"

#include <QElapsedTimer>
#include <QThread>

#include <algorithm>

namespace desk {
namespace {

QProcessEnvironment onDisplay(const QString& display)
{
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("DISPLAY"), display);
    environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("xcb"));
    return environment;
}

}  // namespace

Screen::Screen()
{
    // The server picks a free number itself and tells it once it answers. When its last client has gone it
    // would begin anew, and refuse the program that is started again.
    m_server.setStandardErrorFile(QProcess::nullDevice());
    m_server.start(QStringLiteral("Xvfb"),
                   {QStringLiteral("-displayfd"), QStringLiteral("1"), QStringLiteral("-screen"),
                    QStringLiteral("0"), QStringLiteral("1280x800x24"), QStringLiteral("-nolisten"),
                    QStringLiteral("tcp"), QStringLiteral("-noreset")});
    if (!m_server.waitForReadyRead(20000))
        return;
    m_display = QLatin1Char{':'} + QString::fromLatin1(m_server.readAllStandardOutput().trimmed());
}

Screen::~Screen()
{
    kill();
    m_server.terminate();
    m_server.waitForFinished(5000);
}

bool Screen::start(const QStringList& arguments)
{
    m_window.clear();
    m_program.setProcessEnvironment(onDisplay(m_display));
    m_program.setProcessChannelMode(QProcess::ForwardedChannels);
    m_program.start(QStringLiteral(PROGRAM_DIR "/basinbell-desktop"), arguments);
    return m_program.waitForStarted();
}

QString Screen::ask(const QStringList& arguments)
{
    QProcess tool;
    tool.setProcessEnvironment(onDisplay(m_display));
    tool.start(QStringLiteral("xdotool"), arguments);
    tool.waitForFinished(5000);
    return QString::fromUtf8(tool.readAllStandardOutput()).trimmed();
}

QString Screen::findWindow(const QString& name)
{
    return ask({QStringLiteral("search"), QStringLiteral("--onlyvisible"), QStringLiteral("--name"), name})
        .section(QLatin1Char{'\n'}, 0, 0);
}

QString Screen::title()
{
    if (m_window.isEmpty())
        m_window = findWindow(QStringLiteral("Basinbell$"));
    return m_window.isEmpty() ? QString{} : ask({QStringLiteral("getwindowname"), m_window});
}

QString Screen::waitForTitle(const QStringList& beginnings, int milliseconds)
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < milliseconds) {
        const QString shown = title();
        if (std::ranges::any_of(beginnings, [&](const QString& begin) { return shown.startsWith(begin); }))
            return shown;
        QThread::msleep(30);
    }
    return {};
}

// There is no window manager here, so nobody else gives a window the keyboard.
void Screen::pressIn(const QString& window, const QString& keys)
{
    ask({QStringLiteral("windowfocus"), QStringLiteral("--sync"), window, QStringLiteral("key"), keys});
}

void Screen::press(const QString& keys)
{
    pressIn(m_window, keys);
}

bool Screen::pressInDialog(const QString& title, const QString& keys)
{
    const QString window = findWindow(QLatin1Char{'^'} + title);
    if (!window.isEmpty())
        pressIn(window, keys);
    return !window.isEmpty();
}

void Screen::kill()
{
    m_program.kill();
    m_program.waitForFinished(5000);
}

int Screen::waitForEnd()
{
    return m_program.waitForFinished(20000) && m_program.exitStatus() == QProcess::NormalExit
        ? m_program.exitCode()
        : -1;
}

}  // namespace desk
