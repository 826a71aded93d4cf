#include "app/sound/alarm_player.h"

#include <QCoreApplication>
#include <QDir>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <utility>

namespace app::sound {
namespace {

using core::alarm::Alarm;
using core::alarm::Call;
using namespace std::chrono_literals;

/// With the start of the program and its first half second of sound, sound is back within five seconds.
constexpr auto retryEvery = 3000ms;
/// Longer than the sound program itself waits for a device to begin to play.
constexpr auto openingPatience = 4000ms;
/// While a device takes no sound the sound program tries other ways by itself.
constexpr auto stallPatience = 10000ms;
constexpr int farewellMilliseconds = 500;

bool soundAlike(const Alarm& one, const Alarm& other)
{
    return one.kind == other.kind && one.subject == other.subject && one.task == other.task;
}

/// What of the call is among `alarms`, as it stands there.
Call amongst(const std::vector<Alarm>& alarms, const Call& call)
{
    Call left;
    for (const Alarm& alarm : call.alarms) {
        const auto same =
            std::ranges::find_if(alarms, [&](const Alarm& standing) { return soundAlike(standing, alarm); });
        if (same != alarms.end())
            left.alarms.push_back(*same);
    }
    return left;
}

}  // namespace

QString AlarmPlayer::usualSoundProgram()
{
    return QDir{QCoreApplication::applicationDirPath()}.filePath(QStringLiteral("basinbell-sound"));
}

AlarmPlayer::AlarmPlayer(QObject* parent)
    : AlarmPlayer{usualSoundProgram(), parent}
{
}

AlarmPlayer::AlarmPlayer(const QString& soundProgram, QObject* parent)
    : QObject{parent}
    , m_soundProgram{soundProgram}
{
    // What Qt and the sound server log about a missing device is told to the user in our words instead.
    m_process.setStandardErrorFile(QProcess::nullDevice());
    connect(&m_process, &QProcess::readyReadStandardOutput, this, &AlarmPlayer::readReports);
    connect(&m_process, &QProcess::finished, this, &AlarmPlayer::processEnded);
    connect(&m_process, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart)
            processEnded();
    });
    m_retry.setSingleShot(true);
    connect(&m_retry, &QTimer::timeout, this, &AlarmPlayer::startAfresh);
    m_retry.start(openingPatience);
    start();
}

AlarmPlayer::~AlarmPlayer()
{
    m_process.disconnect(this);
    m_process.closeWriteChannel();  // It ends by itself when nobody gives it orders any more.
    if (!m_process.waitForFinished(farewellMilliseconds))
        m_process.kill();
    m_process.waitForFinished(farewellMilliseconds);
}

void AlarmPlayer::keepReady(bool ready)
{
    if (std::exchange(m_ready, ready) != ready)  // A sound program that is started is told by start().
        tell(Ready{ready});
}

void AlarmPlayer::sound(const Call& call)
{
    const bool missed = m_health == Health::NoDevice || m_health == Health::Stalled;
    if (missed)  // However often it repeats, it is made up for once.
        std::erase_if(m_unconfirmed, [&](const auto& entry) {
            return amongst(call.alarms, entry.second.call).alarms.size() == entry.second.call.alarms.size();
        });
    const std::uint64_t ticket = ++m_lastTicket;
    m_unconfirmed[ticket] = {call, missed};
    const Alarm lead = call.lead();
    if (!missed)
        tell(Play{ticket, core::alarm::signalOf(lead), lead.insistence});
}

void AlarmPlayer::setStanding(std::vector<Alarm> standing)
{
    m_standing = std::move(standing);
    std::erase_if(m_unconfirmed, [this](const auto& entry) {
        return entry.second.missed && amongst(m_standing, entry.second.call).alarms.empty();
    });
}

void AlarmPlayer::silence()
{
    m_unconfirmed.clear();
    tell(Silence{});
}

void AlarmPlayer::playCheck(core::alarm::Kind kind, core::alarm::Subject subject)
{
    tell(Play{++m_lastTicket, {kind, subject}, 0});
}

void AlarmPlayer::setVolume(double volume)
{
    m_volume = std::isnan(volume) ? 1 : std::clamp(volume, 0.0, 1.0);
    tell(Volume{static_cast<float>(m_volume)});
}

QString AlarmPlayer::healthText() const
{
    if (!m_problem.isEmpty())
        return m_problem;
    switch (m_health) {
    case Health::NoDevice:
        return tr("No sound can be had: no loudspeaker was found. Plug one in or switch it on, and look at "
                  "the sound "
                  "settings of this computer. Until then alarms are shown on the screen only.");
    case Health::Stalled:
        return tr(
            "The loudspeaker takes no sound. Basinbell keeps trying; unplug it and plug it in again if this "
            "lasts. Until then alarms are shown on the screen only.");
    case Health::Starting:
    case Health::Working: break;
    }
    return {};
}

void AlarmPlayer::start()
{
    m_process.start(m_soundProgram, QStringList{});
    tell(Volume{static_cast<float>(m_volume)});
    tell(Ready{m_ready});
}

void AlarmPlayer::startAfresh()
{
    setHealth(m_health == Health::Stalled ? Health::Stalled : Health::NoDevice, m_problem);
    if (m_process.state() == QProcess::NotRunning)
        return start();
    m_endedByUs = true;
    m_process.kill();  // processEnded() starts the next.
}

void AlarmPlayer::processEnded()
{
    if (std::exchange(m_endedByUs, false))
        return start();
    const bool worked = m_health == Health::Working;
    const bool missing = m_process.error() == QProcess::FailedToStart;
    setHealth(
        Health::NoDevice,
        missing
            ? tr("No sound can be had: the program %1 could not be started (%2). Install Basinbell again.")
                  .arg(QDir::toNativeSeparators(m_soundProgram), m_process.errorString())
            : tr("The sound program stopped by itself and is started again. Until then alarms are shown on "
                 "the screen only."));
    m_retry.start(worked ? 0ms : retryEvery);
}

void AlarmPlayer::readReports()
{
    while (m_process.canReadLine()) {
        const auto report = reportOf(m_process.readLine().trimmed().toStdString());
        if (!report)
            continue;
        if (const auto* heard = std::get_if<Heard>(&*report))
            m_unconfirmed.erase(heard->ticket);
        else if (const Health health = std::get<Health>(*report); health != Health::Starting)
            setHealth(health);
        else if (m_retry.isActive())  // A device was found and is tried.
            m_retry.start(openingPatience);
    }
}

void AlarmPlayer::tell(const Order& order)
{
    if (m_process.state() != QProcess::NotRunning)
        m_process.write(QByteArray::fromStdString(lineOf(order) + '\n'));
}

void AlarmPlayer::setHealth(Health health, const QString& problem)
{
    const bool news = health != m_health || problem != m_problem;
    m_health = health;
    m_problem = problem;
    if (health == Health::Working) {
        m_retry.stop();
    } else {
        for (auto& [ticket, unconfirmed] : m_unconfirmed)
            unconfirmed.missed = true;
        if (news || !m_retry.isActive())
            m_retry.start(health == Health::Stalled ? stallPatience : retryEvery);
    }
    if (news)
        Q_EMIT healthChanged(health, healthText());
    if (news && health == Health::Working)
        makeUpForMissed();
}

void AlarmPlayer::makeUpForMissed()
{
    const auto missed = std::exchange(m_unconfirmed, {});
    for (const auto& [ticket, unconfirmed] : missed)
        if (!unconfirmed.missed)
            m_unconfirmed[ticket] = unconfirmed;
    std::vector<Alarm> again;
    for (const Alarm& alarm : m_standing)
        if (std::ranges::any_of(missed, [&](const auto& entry) {
                return entry.second.missed && !amongst({alarm}, entry.second.call).alarms.empty();
            }))
            again.push_back(alarm);
    for (const Call& call : core::alarm::callsOf(again, {}))
        sound(call);
}

}  // namespace app::sound
