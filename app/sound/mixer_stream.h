#pragma once

#include "app/sound/mixer.h"

#include <QAudioFormat>
#include <QIODevice>

#include <utility>

namespace app::sound {

/// What the audio device reads: the mixer's samples as 16 bit stereo at 48 kHz.
///
/// While nothing sounds it runs dry, and `QAudioSink` then sleeps until `readyRead`: a sink that is fed
/// without a pause wakes up fifty times a second. It is never at its end, for what is at its end gets
/// drained.
class MixerStream : public QIODevice {
    Q_OBJECT
public:
    static constexpr int rate = 48000;
    static constexpr int channels = 2;
    static constexpr int frameBytes = channels * 2;

    explicit MixerStream(QObject* parent = nullptr);

    static QAudioFormat format();

    Mixer& mixer() { return m_mixer; }

    /// Starts a sound of the mixer's, and wakes the device for it.
    void play(std::uint64_t ticket, std::vector<float> samples);

    /// Lets the device have that many frames from now on, silent where nothing sounds, and wakes it for them.
    /// Instead of what was offered before.
    void offer(std::uint64_t frames);

    /// How many frames of the offer have not been taken.
    [[nodiscard]] std::uint64_t offered() const { return m_offered; }

    /// How many frames were taken since this was made: the only sign that a device still plays.
    [[nodiscard]] std::uint64_t taken() const { return m_taken; }

    /// The tickets whose last sample has been taken by that many frames, and forgets them.
    std::vector<std::uint64_t> endedBy(std::uint64_t frames);

    /// True while a sound plays, or has ended and its ticket was not fetched.
    [[nodiscard]] bool busy() const { return !m_mixer.silent() || !m_ended.empty(); }

    /// Forgets at once what plays and what was offered: for when there is nothing to play on.
    void forget();

    [[nodiscard]] bool isSequential() const override { return true; }
    [[nodiscard]] qint64 bytesAvailable() const override;

protected:
    qint64 readData(char* data, qint64 most) override;
    qint64 writeData(const char* data, qint64 size) override;

private:
    Mixer m_mixer;
    std::uint64_t m_taken = 0;
    std::uint64_t m_offered = 0;
    std::vector<std::pair<std::uint64_t, std::uint64_t>> m_ended;  ///< Ticket, and taken at its end.
    std::vector<float> m_scratch;
};

}  // namespace app::sound
