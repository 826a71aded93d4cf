#include "app/session/background_work.h"

namespace app::session {

BackgroundWork::BackgroundWork(QObject* parent)
    : QObject{parent}
    , m_worker{new QObject}
    , m_latest{std::make_shared<std::atomic<std::uint64_t>>(0)}
{
    m_worker->moveToThread(&m_thread);
}

BackgroundWork::~BackgroundWork()
{
    forget();
    m_thread.quit();
    m_thread.wait();
    delete m_worker;  // Its thread has ended, so nothing can reach it any more.
}

void BackgroundWork::begin(Work work)
{
    if (!m_thread.isRunning())
        m_thread.start();
    const std::uint64_t number = ++*m_latest;
    m_busy = true;
    const auto whole = [this, number, latest = m_latest, work = std::move(work)] {
        const auto outdated = [latest, number] { return *latest != number; };
        if (outdated())
            return;
        // Delivered to this object's thread; dropped there if other work came up meanwhile.
        QMetaObject::invokeMethod(this, [this, outdated, deliver = work(outdated)] {
            if (outdated())
                return;
            m_busy = false;
            deliver();
        });
    };
    QMetaObject::invokeMethod(m_worker, whole, Qt::QueuedConnection);
}

void BackgroundWork::forget()
{
    ++*m_latest;
    m_busy = false;
}

}  // namespace app::session
