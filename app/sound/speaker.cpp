#include "app/sound/speaker.h"

#include "core/alarm/pattern.h"

#include <QAudioDevice>
#include <QAudioSink>
#include <QMediaDevices>

#include <algorithm>
#include <chrono>

namespace app::sound {
namespace {

using namespace std::chrono_literals;

/// A device that stops is known within two seconds: the beats of one rest, and those until it is stalled.
constexpr auto beatEvery = 450ms;
constexpr int beatsOfRest = 2;
constexpr int beatsUntilStalled = 2;
/// A sink that nothing played on may first finish a wait of two seconds that it had begun.
constexpr int beatsUntilNeverBegun = 7;
constexpr int beatsUntilUnwanted = 5;

/// Qt 6.4 hands samples to PulseAudio in whole periods of 20 ms and is silent, without an error, when it is
/// granted less room than two of them. What is asked for here was granted as about five: so much lateness
/// buys a tenth of a second in which a busy computer may let this program wait before a sound breaks.
constexpr int periodBytes = MixerStream::rate / 50 * MixerStream::frameBytes;
constexpr int leastBuffer = 3 * periodBytes;
constexpr int usualBuffer = 8 * periodBytes;
constexpr int mostBuffer = 32 * periodBytes;

/// Frames that are offered beyond what there is room for.
constexpr std::uint64_t beyondRoom = 2 * periodBytes / MixerStream::frameBytes;

}  // namespace

Speaker::Speaker(QObject* parent)
    : QObject{parent}
    , m_bufferBytes{usualBuffer}
{
    m_beat.setInterval(beatEvery);
    connect(&m_beat, &QTimer::timeout, this, &Speaker::beat);
}

Speaker::~Speaker()
{
    closeSink();
}

void Speaker::begin()
{
    m_beat.start();
    beat();
}

void Speaker::obey(const Order& order)
{
    if (const auto* wanted = std::get_if<Play>(&order))
        play(*wanted);
    else if (const auto* volume = std::get_if<Volume>(&order))
        m_stream.mixer().setVolume(volume->of);
    else if (const auto* ready = std::get_if<Ready>(&order))
        m_keptReady = ready->kept;
    else
        m_stream.mixer().clear();
    if (m_keptReady && !m_sink && m_health == Health::Working)
        openSink();
}

/// What can't be played is dropped here: whoever ordered it misses its ticket, and knows whether it still
/// matters.
void Speaker::play(const Play& play)
{
    if (m_health != Health::Working && m_health != Health::Starting)
        return;
    m_stream.play(play.ticket, core::alarm::patternSamples(play.signal, play.insistence, MixerStream::rate));
    m_idleBeats = 0;
    if (!m_sink && m_health == Health::Working)
        openSink();
}

/// Qt 6.4 never signals that devices came or went on PulseAudio, so they are asked for.
void Speaker::beat()
{
    m_idleBeats = m_stream.busy() ? 0 : m_idleBeats + 1;
    if (QMediaDevices::audioOutputs().isEmpty())
        return giveUpOn(Health::NoDevice);
    if (m_sink)
        watchSink();
    else if (isWanted())
        openSink();
    if (m_sink && !isWanted())
        closeSink();
}

/// Also while the sound is not known to work: only samples that are really taken show that it does.
bool Speaker::isWanted() const
{
    return m_keptReady || m_stream.busy() || m_idleBeats < beatsUntilUnwanted || m_health != Health::Working;
}

/// Always a new sink: a sink that is started again is granted less room each time, until it is silent.
void Speaker::openSink()
{
    for (int bytes = m_bufferBytes; bytes <= mostBuffer; bytes *= 2) {
        m_sink = std::make_unique<QAudioSink>(QMediaDevices::defaultAudioOutput(), MixerStream::format());
        m_sink->setBufferSize(bytes);
        m_sink->start(&m_stream);
        if (m_sink->error() != QAudio::NoError)
            return giveUpOn(Health::NoDevice);
        if (m_sink->bufferSize() >= leastBuffer)
            break;
    }
    m_owedBeats = m_restedBeats = 0;
    m_played = false;
    m_stream.offer(2 * bufferFrames() + beyondRoom);
    if (m_health != Health::Working && m_health != Health::Stalled)
        setHealth(Health::Starting);
}

void Speaker::closeSink()
{
    if (m_sink)
        m_sink->stop();
    m_sink.reset();
}

void Speaker::watchSink()
{
    if (m_sink->state() == QAudio::StoppedState || m_sink->error() == QAudio::FatalError)
        return giveUpOn(Health::NoDevice);

    if (m_stream.offered() > 0) {
        if (++m_owedBeats < (m_played ? beatsUntilStalled : beatsUntilNeverBegun))
            return;
        m_bufferBytes = std::min(2 * m_bufferBytes, mostBuffer);
        return giveUpOn(Health::Stalled);
    }
    m_owedBeats = 0;
    m_played = true;
    setHealth(Health::Working);
    tellWhatWasHeard();
    if (++m_restedBeats >= beatsOfRest)
        offerMoreThanFits();
}

/// What there is room for is taken by any sink; more than that only by one that plays.
void Speaker::offerMoreThanFits()
{
    const auto room = static_cast<std::uint64_t>(std::max<qsizetype>(m_sink->bytesFree(), 0));
    m_stream.offer(room / MixerStream::frameBytes + beyondRoom);
    m_restedBeats = 0;
}

/// A sound is heard once the sink has taken a whole bufferful after its last sample.
void Speaker::tellWhatWasHeard()
{
    for (const std::uint64_t ticket : m_stream.endedBy(m_stream.taken() - bufferFrames()))
        Q_EMIT reported(Heard{ticket});
}

void Speaker::giveUpOn(Health health)
{
    closeSink();
    m_stream.forget();
    setHealth(health);
}

void Speaker::setHealth(Health health)
{
    if (m_health == health)
        return;
    m_health = health;
    Q_EMIT reported(health);
}

std::uint64_t Speaker::bufferFrames() const
{
    return static_cast<std::uint64_t>(std::max<qsizetype>(m_sink->bufferSize(), 0)) / MixerStream::frameBytes;
}

}  // namespace app::sound
