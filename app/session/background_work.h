#pragma once

#include "app/session/worker.h"

#include <QObject>

#include <atomic>
#include <functional>
#include <memory>
#include <mutex>

namespace app::session {

/// Works something out in a thread of its own, so that whoever asks never waits. Only what was begun last is
/// delivered; what was begun before it is stopped. The thread is there from the first work on.
class BackgroundWork : public QObject {
    Q_OBJECT

public:
    /// Whether the work is not wanted any more; asked often while it lasts.
    using Stop = std::function<bool()>;
    /// Hands over the outcome, in the thread of this object.
    using Deliver = std::function<void()>;
    using Work = std::function<Deliver(const Stop&)>;

    explicit BackgroundWork(QObject* parent = nullptr);
    ~BackgroundWork() override;

    void begin(Work work);

    /// Whatever is being worked out is not wanted any more.
    void forget();

    [[nodiscard]] bool isBusy() const { return m_job != nullptr; }

private:
    /// One thing that was begun.
    struct Job {
        Work work;
        /// What was handed to the work may outlive it.
        std::shared_ptr<std::atomic<bool>> stopped = std::make_shared<std::atomic<bool>>(false);
        Deliver deliver{};  ///< Once it is worked out. Guarded by `m_guard`.
    };

    void workOut(Job& job);
    Q_INVOKABLE void deliver();

    std::shared_ptr<Job> m_job;  ///< What was begun last and is not delivered.
    std::mutex m_guard;
    Worker m_worker;  ///< Last, for it uses all the others.
};

}  // namespace app::session
