#pragma once

#include "core/alarm/call.h"

#include <QObject>
#include <QString>

#include <vector>

namespace app::desktop {

/// What the window needs of whoever sounds the alarms.
class Sound : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    /// While a run is under way no alarm may wait for the device.
    virtual void keepReady(bool ready) = 0;
    virtual void sound(const core::alarm::Call& call) = 0;
    virtual void setStanding(const std::vector<core::alarm::Alarm>& standing) = 0;
    virtual void silence() = 0;
    virtual void playCheck(core::alarm::Kind kind, core::alarm::Subject subject) = 0;

    [[nodiscard]] virtual bool isWorking() const = 0;

    /// What is wrong and how to mend it; empty while nothing is.
    [[nodiscard]] virtual QString problem() const = 0;

Q_SIGNALS:
    void healthChanged();
};

}  // namespace app::desktop
