#include "app/desktop/setup/background_planner.h"

namespace app::desktop {

BackgroundPlanner::BackgroundPlanner(QObject* parent)
    : QObject{parent}
    , m_worker{new QObject}
    , m_latest{std::make_shared<std::atomic<std::uint64_t>>(0)}
{
    m_worker->moveToThread(&m_thread);
    connect(&m_thread, &QThread::finished, m_worker, &QObject::deleteLater);
    m_thread.start();
}

BackgroundPlanner::~BackgroundPlanner()
{
    forget();
    m_thread.quit();
    m_thread.wait();
}

void BackgroundPlanner::ask(core::stagger::Question question)
{
    const std::uint64_t number = ++*m_latest;
    m_busy = true;
    const auto search = [this, number, latest = m_latest, question = std::move(question)] {
        const auto outdated = [latest, number] { return *latest != number; };
        if (outdated())
            return;
        core::stagger::Budget budget;
        budget.stop = outdated;
        auto outcome = std::make_shared<Outcome>(core::stagger::plan(question, budget));
        // Delivered to this object's thread; dropped there if another question came up meanwhile.
        QMetaObject::invokeMethod(this, [this, outdated, outcome] {
            if (outdated())
                return;
            m_busy = false;
            Q_EMIT answered(*outcome);
        });
    };
    QMetaObject::invokeMethod(m_worker, search, Qt::QueuedConnection);
}

void BackgroundPlanner::forget()
{
    ++*m_latest;
    m_busy = false;
}

}  // namespace app::desktop
