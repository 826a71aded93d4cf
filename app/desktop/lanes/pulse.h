#pragma once

#include <QObject>
#include <QTimer>

namespace app::desktop {

/// What comes and goes while something insists to be answered. Nothing flashes more than once a second by it.
class Pulse : public QObject {
    Q_OBJECT

public:
    explicit Pulse(QObject* parent = nullptr);

    /// Begins lit, so that what insists is seen at once.
    void setBeating(bool beating);
    [[nodiscard]] bool isLit() const { return m_lit; }

    /// Stands lit from now on, as in a picture.
    void hold();

Q_SIGNALS:
    void changed();

private:
    void setLit(bool lit);

    QTimer m_timer;
    bool m_beating = false;
    bool m_held = false;
    bool m_lit = false;
};

}  // namespace app::desktop
