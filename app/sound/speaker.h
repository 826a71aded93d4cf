#pragma once

#include "app/sound/message.h"
#include "app/sound/mixer_stream.h"

#include <QObject>
#include <QTimer>

#include <cstdint>
#include <memory>

class QAudioSink;

namespace app::sound {

/// The one hand on the audio device: plays what it is ordered to, through one
/// sink that is open while it is needed, and reports whether that can be heard.
///
/// The sink is watched, never believed: one whose device has gone still says
/// that it is active, so what counts is that samples are taken from the stream.
/// While nothing sounds it is offered a little silence about once a second, more
/// than it has room for, and rests in between: only a device that plays takes all.
class Speaker : public QObject {
    Q_OBJECT
public:
    explicit Speaker(QObject* parent = nullptr);
    ~Speaker() override;

    /// Looks for a device for the first time and begins to watch it.
    void begin();

    void obey(const Order& order);

Q_SIGNALS:
    void reported(const app::sound::Report& report);

private:
    void beat();
    void play(const Play& play);
    void openSink();
    void closeSink();
    void watchSink();
    void offerMoreThanFits();
    void tellWhatWasHeard();
    void giveUpOn(Health health);
    void setHealth(Health health);
    [[nodiscard]] bool isWanted() const;
    [[nodiscard]] std::uint64_t bufferFrames() const;

    QTimer m_beat;
    MixerStream m_stream;
    std::unique_ptr<QAudioSink> m_sink;
    Health m_health = Health::Starting;
    bool m_keptReady = false;
    bool m_played = false;  ///< The open sink has shown that it plays.
    int m_idleBeats = 0;    ///< Since something last played.
    int m_owedBeats = 0;    ///< Since the last offer, while it is not taken.
    int m_restedBeats = 0;  ///< Since the last offer, once it is taken.
    int m_bufferBytes;
};

}  // namespace app::sound
