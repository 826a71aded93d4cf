#include "app/session/worker.h"

#include <utility>

namespace app::session {

Worker::~Worker()
{
    if (!m_thread.joinable())
        return;
    {
        const std::lock_guard guard{m_guard};
        m_over = true;
    }
    m_changed.notify_all();
    m_thread.join();
}

/// A job may own much, so one that gives way is destroyed once the lock is given back.
void Worker::give(Job job)
{
    {
        const std::lock_guard guard{m_guard};
        std::swap(m_next, job);
    }
    if (m_thread.joinable())
        m_changed.notify_all();
    else
        m_thread = std::thread{[this] { work(); }};
}

void Worker::drop()
{
    Job dropped;
    const std::lock_guard guard{m_guard};
    std::swap(m_next, dropped);
}

void Worker::work()
{
    std::unique_lock guard{m_guard};
    for (;;) {
        m_changed.wait(guard, [this] { return m_over || m_next; });
        if (m_over)
            return;
        Job job;
        std::swap(m_next, job);
        guard.unlock();
        job();
        job = nullptr;
        guard.lock();
    }
}

}  // namespace app::session
