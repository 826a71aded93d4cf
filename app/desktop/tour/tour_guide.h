#pragma once

#include "app/desktop/tour/tour_clock.h"
#include "app/session/session.h"

#include <QObject>
#include <QTimer>

namespace app::desktop {

/// Leads through a run of a service in a session of its own that keeps nothing: goes on at high speed,
/// answers what is asked at its time, and stands still where there is something to be told.
class TourGuide : public QObject {
    Q_OBJECT

public:
    enum class Stop { Plan, OneThing, Change, Look, Alarm, End };
    static constexpr int stops = 6;

    TourGuide(core::service::Service service, core::measure::Instant start,
              std::shared_ptr<const core::measure::TimeZones> zones, QObject* parent = nullptr);

    [[nodiscard]] session::Session& session() { return m_session; }
    /// Where it stands, or is going to.
    [[nodiscard]] Stop stop() const { return m_stop; }
    [[nodiscard]] bool isGoing() const { return m_timer.isActive(); }

    /// Answers what this stop is about, as planned, and goes to the next. On the way there: does so at once.
    void goOn();

Q_SIGNALS:
    /// It stands still at `stop()`, or has begun to go there.
    void changed();

private:
    void begin();
    void go();
    void advance();
    [[nodiscard]] bool isThere() const;
    [[nodiscard]] bool hasApplied() const;
    void answerWhatIsDue();
    [[nodiscard]] bool isHeldBack(const core::run::Prompt& prompt) const;
    [[nodiscard]] core::measure::Seconds toNext() const;

    core::service::Service m_service;
    std::shared_ptr<TourClock> m_clock;
    session::Session m_session;
    Stop m_stop = Stop::Plan;
    QTimer m_timer;
};

}  // namespace app::desktop
