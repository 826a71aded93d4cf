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
}

void BackgroundWork::begin(Work work)
{
    forget();
    m_job = std::make_shared<Job>();
    m_job->work = std::move(work);
    m_worker.give([this, job = m_job] { workOut(*job); });
}

void BackgroundWork::forget()
{
    if (!m_job)
        return;
    *m_job->stopped = true;
    m_worker.drop();
    m_job.reset();
}

void BackgroundWork::workOut(Job& job)
{
    Deliver deliver = job.work([stopped = job.stopped] { return stopped->load(); });
    if (*job.stopped)
        return;
    {
        const std::lock_guard guard{m_guard};
        job.deliver = std::move(deliver);
    }
    QMetaObject::invokeMethod(this, "deliver", Qt::QueuedConnection);
}

/// What was asked to be delivered may have been forgotten since, and other work be under way.
void BackgroundWork::deliver()
{
    if (!m_job)
        return;
    Deliver deliver;
    {
        const std::lock_guard guard{m_guard};
        std::swap(m_job->deliver, deliver);
    }
    if (!deliver)
        return;
    m_job.reset();
    deliver();
}

}  // namespace app::session
