#include "tests/app/sound/capture/private_sound.h"

#include <QCoreApplication>
#include <QDir>
#include <QEventLoop>
#include <QStringList>
#include <QTimer>

#include <algorithm>
#include <cstdint>
#include <cstring>

namespace capture {
namespace {

using namespace std::chrono_literals;

const QString sinkName = QStringLiteral("probe");

}  // namespace

bool waitUntil(const std::function<bool()>& done, std::chrono::milliseconds most)
{
    const auto end = Clock::now() + most;
    while (!done()) {
        if (Clock::now() >= end)
            return false;
        QEventLoop loop;
        QTimer::singleShot(5ms, Qt::PreciseTimer, &loop, &QEventLoop::quit);
        loop.exec();
    }
    return true;
}

void waitFor(std::chrono::milliseconds time)
{
    QEventLoop loop;
    QTimer::singleShot(time, Qt::PreciseTimer, &loop, &QEventLoop::quit);
    loop.exec();
}

PrivateSound::PrivateSound()
{
    qputenv("XDG_RUNTIME_DIR", m_folder.path().toUtf8());
    qputenv("HOME", m_folder.path().toUtf8());
    qputenv("PULSE_SERVER", "unix:" + m_folder.path().toUtf8() + "/pulse/native");
}

PrivateSound::~PrivateSound()
{
    killServer();
}

bool PrivateSound::startServer()
{
    m_server.setStandardErrorFile(QProcess::nullDevice());
    m_server.start(QStringLiteral("pulseaudio"),
                   {QStringLiteral("-n"), QStringLiteral("--daemonize=no"),
                    QStringLiteral("--exit-idle-time=-1"), QStringLiteral("--use-pid-file=no"),
                    QStringLiteral("--log-target=stderr"),
                    QStringLiteral("--load=module-native-protocol-unix")});
    return m_server.waitForStarted() && waitUntil([this] { return control({QStringLiteral("info")}); }, 10s)
        && addDevice();
}

void PrivateSound::killServer()
{
    if (m_server.state() == QProcess::NotRunning)
        return;
    m_server.kill();
    m_server.waitForFinished();
    QDir{m_folder.path() + QStringLiteral("/pulse")}.removeRecursively();
}

bool PrivateSound::addDevice()
{
    return control({QStringLiteral("load-module"), QStringLiteral("module-null-sink"),
                    QStringLiteral("sink_name=") + sinkName, QStringLiteral("rate=48000"),
                    QStringLiteral("channels=2"), QStringLiteral("format=s16le")});
}

void PrivateSound::removeDevice()
{
    control({QStringLiteral("unload-module"), QStringLiteral("module-null-sink")});
}

bool PrivateSound::holdDevice()
{
    return control({QStringLiteral("suspend-sink"), sinkName, QStringLiteral("1")});
}

bool PrivateSound::letDeviceGoOn()
{
    return control({QStringLiteral("suspend-sink"), sinkName, QStringLiteral("0")});
}

bool PrivateSound::control(const QStringList& arguments)
{
    QProcess process;
    process.setStandardErrorFile(QProcess::nullDevice());
    process.start(QStringLiteral("pactl"), arguments);
    return process.waitForFinished(5000) && process.exitStatus() == QProcess::NormalExit
        && process.exitCode() == 0;
}

/// With parec's usual latency the device itself would play up to two seconds late.
Recording::Recording()
{
    m_process.setStandardErrorFile(QProcess::nullDevice());
    QObject::connect(&m_process, &QProcess::readyReadStandardOutput, &m_process, [this] { take(); });
    m_process.start(QStringLiteral("parec"),
                    {QStringLiteral("-d"), sinkName + QStringLiteral(".monitor"),
                     QStringLiteral("--format=s16le"), QStringLiteral("--rate=48000"),
                     QStringLiteral("--channels=1"), QStringLiteral("--raw"),
                     QStringLiteral("--latency-msec=10")});
    waitUntil([this] { return begun(); }, 10s);
}

Recording::~Recording()
{
    m_process.disconnect();
    m_process.kill();
    m_process.waitForFinished();
}

/// Samples arrive late but never early, so the earliest of all estimates of the beginning is the best.
void Recording::take()
{
    m_bytes += m_process.readAllStandardOutput();
    const std::chrono::duration<double> length{static_cast<double>(m_bytes.size()) / 2 / rate};
    m_began = std::min(m_began, Clock::now() - std::chrono::duration_cast<Clock::duration>(length));
}

std::vector<Heard> Recording::end(int voices)
{
    return alarmsIn(endAsSamples(), voices);
}

std::vector<float> Recording::endAsSamples()
{
    m_process.terminate();
    m_process.waitForFinished();
    take();
    std::vector<float> samples(static_cast<std::size_t>(m_bytes.size()) / 2);
    for (std::size_t i = 0; i < samples.size(); ++i) {
        std::int16_t sample = 0;
        std::memcpy(&sample, m_bytes.constData() + 2 * i, sizeof sample);
        samples[i] = static_cast<float>(sample) / 32768.0F;
    }
    return samples;
}

double Recording::at(Clock::time_point moment) const
{
    return std::chrono::duration<double>(moment - m_began).count();
}

}  // namespace capture
