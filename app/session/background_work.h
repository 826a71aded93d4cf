#pragma once

#include <QObject>

#include <atomic>
#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <thread>

namespace app::session {

/// Works something out in a thread of its own, so that whoever asks never waits. Only what was begun last is
/// delivered; what was begun before it is stopped. The thread is there from the first work on.
///
/// What is handed over lies under a lock of the standard library and never in an event of Qt's, whose own
/// locks the thread sanitizer cannot see.
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

    [[nodiscard]] bool isBusy() const { return m_busy; }

private:
    /// One thing that was begun.
    struct Job {
        Work work;
        /// What was handed to the work may outlive it.
        std::shared_ptr<std::atomic<bool>> stopped = std::make_shared<std::atomic<bool>>(false);
        Deliver deliver{};  ///< Once it is worked out.
    };

    void run();
    Q_INVOKABLE void deliver();

    std::shared_ptr<Job>
        m_job;  ///< What was begun last and is not delivered; this object's thread alone has it.
    bool m_busy = false;

    std::mutex m_guard;
    std::condition_variable m_changed;
    std::shared_ptr<Job> m_next;  ///< Not taken up yet.
    std::shared_ptr<Job> m_done;  ///< Worked out, not delivered.
    bool m_over = false;
    std::thread m_thread;
};

}  // namespace app::session
