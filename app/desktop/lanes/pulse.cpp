#include "app/desktop/lanes/pulse.h"

namespace app::desktop {
namespace {

/// Half a flash: a whole one takes twice as long.
constexpr int halfMilliseconds = 1000;

}  // namespace

Pulse::Pulse(QObject* parent)
    : QObject{parent}
{
    m_timer.setInterval(halfMilliseconds);
    connect(&m_timer, &QTimer::timeout, this, [this] { setLit(!m_lit); });
}

void Pulse::setBeating(bool beating)
{
    if (beating == m_beating)
        return;
    m_beating = beating;
    if (m_held)
        return;
    if (!beating)
        return m_timer.stop();
    m_timer.start();
    setLit(true);
}

void Pulse::hold()
{
    m_held = true;
    m_timer.stop();
    setLit(true);
}

void Pulse::setLit(bool lit)
{
    if (lit == m_lit)
        return;
    m_lit = lit;
    Q_EMIT changed();
}

}  // namespace app::desktop
