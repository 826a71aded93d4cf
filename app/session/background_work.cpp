#include "app/session/background_work.h"

#include <utility>

namespace app::session {

BackgroundWork::BackgroundWork(QObject* parent)
    : QObject{parent}
{
}

BackgroundWork::~BackgroundWork()
{
    forget();
    if (!m_thread.joinable())
        return;
    {
        const std::lock_guard guard{m_guard};
        m_over = true;
    }
    m_changed.notify_all();
    m_thread.join();
}

void BackgroundWork::begin(Work work)
{
    forget();
    m_job = std::make_shared<Job>();
    m_job->work = std::move(work);
    m_busy = true;
    {
        const std::lock_guard guard{m_guard};
        m_next = m_job;
    }
    if (m_thread.joinable())
        m_changed.notify_all();
    else
        m_thread = std::thread{[this] { run(); }};
}

void BackgroundWork::forget()
{
    m_busy = false;
    if (!m_job)
        return;
    *m_job->stopped = true;
    m_job.reset();
    // They may own much, and are destroyed once the lock is given back.
    std::shared_ptr<Job> next;
    std::shared_ptr<Job> done;
    const std::lock_guard guard{m_guard};
    next = std::exchange(m_next, nullptr);
    done = std::exchange(m_done, nullptr);
}

void BackgroundWork::run()
{
    std::unique_lock guard{m_guard};
    for (;;) {
        m_changed.wait(guard, [this] { return m_over || m_next; });
        if (m_over)
            return;
        std::shared_ptr<Job> job = std::exchange(m_next, nullptr);
        guard.unlock();
        job->deliver = job->work([stopped = job->stopped] { return stopped->load(); });
        guard.lock();
        if (!*job->stopped) {
            m_done = job;
            QMetaObject::invokeMethod(this, "deliver", Qt::QueuedConnection);
        }
        guard.unlock();
        job.reset();
        guard.lock();
    }
}

void BackgroundWork::deliver()
{
    std::shared_ptr<Job> done;
    {
        const std::lock_guard guard{m_guard};
        done = std::exchange(m_done, nullptr);
    }
    // It may have been forgotten, or delivered by an earlier call, since this was asked for.
    if (!done || done != m_job)
        return;
    m_job.reset();
    m_busy = false;
    done->deliver();
}

}  // namespace app::session
