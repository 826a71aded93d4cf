#pragma once

#include "core/alarm/call.h"

#include <QObject>
#include <QString>
#include <QTimer>

#include <vector>

namespace app::desktop {

class Voice;

/// Says what a call is about, between its sounds: a sound that begins ends what is being said, and what is to
/// be said waits until it is over. So no alarm waits for a word, or is drowned by one.
///
/// A call is announced when it begins, when another alarm joins it, when it grows louder, and then once a
/// minute.
class Announcer : public QObject {
    Q_OBJECT

public:
    explicit Announcer(Voice& voice, QObject* parent = nullptr);

    void setOn(bool on);
    [[nodiscard]] bool isOn() const { return m_on; }

    /// The call sounds at `now`, which is the run's time.
    void called(const core::alarm::Call& call, const QString& text, core::measure::Instant now);

    /// Those that stand and are not muted: what is said of any other ends.
    void setAudible(const std::vector<core::alarm::Alarm>& audible);

    /// How long the sound of the call lasts.
    static std::chrono::milliseconds lengthOf(const core::alarm::Call& call);

private:
    struct Said {
        core::alarm::Call call;
        core::measure::Instant at;
    };
    [[nodiscard]] bool isNews(const core::alarm::Call& call, core::measure::Instant now) const;
    void speak();

    Voice& m_voice;
    bool m_on = true;
    QTimer m_pause;                                                ///< Until the sounds are over.
    std::vector<std::pair<core::alarm::Call, QString>> m_waiting;  ///< What is to be said then.
    std::vector<Said> m_said;                                      ///< Of what stands.
};

}  // namespace app::desktop
