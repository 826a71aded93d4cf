#include "app/command/quit_signals.h"

#include <array>
#include <csignal>

#include <fcntl.h>
#include <unistd.h>

namespace app::command {

namespace {

constexpr std::array caught{SIGINT, SIGTERM, SIGHUP};

/// A handler may do no more than this: write a byte.
volatile sig_atomic_t writeEnd = -1;

void note(int /*signal*/)
{
    const char byte = 0;
    [[maybe_unused]] const ssize_t written = write(writeEnd, &byte, 1);
}

int opened(int (&ends)[2])
{
    return pipe2(ends, O_CLOEXEC | O_NONBLOCK) == 0 ? ends[0] : -1;
}

}  // namespace

QuitSignals::QuitSignals(QObject* parent)
    : QObject{parent}
    , m_ends{-1, -1}
    , m_notifier{opened(m_ends), QSocketNotifier::Read}
{
    if (m_ends[1] < 0)
        return;  // No descriptors left: the signals end the program at once, and the journal has all of the
                 // run.
    writeEnd = m_ends[1];
    for (const int signal : caught)
        (void)std::signal(signal, note);
    connect(&m_notifier, &QSocketNotifier::activated, this, &QuitSignals::asked);
}

QuitSignals::~QuitSignals()
{
    for (const int signal : caught)
        (void)std::signal(signal, SIG_DFL);
    writeEnd = -1;
    m_notifier.setEnabled(false);
    for (const int end : m_ends)
        if (end >= 0)
            close(end);
}

}  // namespace app::command
