#pragma once

#include "app/sound/health.h"
#include "app/sound/message.h"
#include "core/alarm/call.h"

#include <QObject>
#include <QProcess>
#include <QString>
#include <QTimer>

#include <cstdint>
#include <map>
#include <vector>

namespace app::sound {

/// Sounds alarms, and knows whether they were heard. Never waits and never
/// fails: what is wrong is its `health`, and is mended behind its back.
///
/// The sound itself is made by a small program of its own, `basinbell-sound`.
/// When that cannot reach a device, hangs or dies, it is started afresh every
/// few seconds. A call that it did not confirm is sounded again as soon as
/// there is sound, for those of its alarms that still stand by then.
class AlarmPlayer : public QObject {
    Q_OBJECT
public:
    /// The program that lies beside the running one.
    static QString usualSoundProgram();

    explicit AlarmPlayer(QObject* parent = nullptr);
    explicit AlarmPlayer(const QString& soundProgram, QObject* parent = nullptr);
    ~AlarmPlayer() override;

    /// While a service runs: keeps the device open, so that no alarm waits for it. Otherwise it is closed
    /// when quiet.
    void keepReady(bool ready);

    /// Plays the pattern of the call once, now. Repeats are the caller's, by `core::alarm::nextChange`.
    void sound(const core::alarm::Call& call);
    void sound(const core::alarm::Alarm& alarm) { sound(core::alarm::Call{{alarm}}); }

    /// All alarms that stand now: what was missed and is not among them any more is not made up for.
    void setStanding(std::vector<core::alarm::Alarm> standing);

    /// Ends what sounds, and forgets what was missed.
    void silence();

    /// For the sound check; nothing is made up for when it can't be heard.
    void playCheck(core::alarm::Kind kind, core::alarm::Subject subject = core::alarm::Subject::Task);

    /// 0 to 1. It is below the system's own volume, which no program of ours changes.
    void setVolume(double volume);
    [[nodiscard]] double volume() const { return m_volume; }

    [[nodiscard]] Health health() const { return m_health; }

    /// What is wrong and how to mend it, in plain words; empty while the sound works.
    [[nodiscard]] QString healthText() const;

    /// The process that makes the sound; 0 while there is none. For measuring.
    [[nodiscard]] qint64 soundProcess() const { return m_process.processId(); }

Q_SIGNALS:
    void healthChanged(app::sound::Health health, const QString& words);

private:
    struct Unconfirmed {
        core::alarm::Call call;
        bool missed = false;  ///< Certainly not heard to its end.
    };

    void start();
    void startAfresh();
    void processEnded();
    void readReports();
    void tell(const Order& order);
    void setHealth(Health health, const QString& problem = {});
    void makeUpForMissed();

    QString m_soundProgram;
    QProcess m_process;
    QTimer m_retry;     ///< Runs while the sound does not work.
    QString m_problem;  ///< With the sound program itself.
    Health m_health = Health::Starting;
    bool m_ready = false;
    bool m_endedByUs = false;
    double m_volume = 1;
    std::uint64_t m_lastTicket = 0;
    std::map<std::uint64_t, Unconfirmed> m_unconfirmed;
    std::vector<core::alarm::Alarm> m_standing;
};

}  // namespace app::sound
