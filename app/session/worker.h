#pragma once

#include <condition_variable>
#include <functional>
#include <mutex>
#include <thread>

namespace app::session {

/// A thread that does one job after another; it is there from the first on. One that was not begun gives way
/// to the next that is given, so whatever waits is the latest.
///
/// What a job and others share must lie under a lock of the standard library: those of Qt the thread
/// sanitizer cannot see.
class Worker {
public:
    using Job = std::function<void()>;

    Worker() = default;
    /// Waits for the job that is being done; one that was not begun is dropped.
    ~Worker();
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;

    void give(Job job);
    /// The job that was not begun, if there is one.
    void drop();

private:
    void work();

    std::mutex m_guard;
    std::condition_variable m_changed;
    Job m_next;           ///< Guarded.
    bool m_over = false;  ///< Guarded.
    std::thread m_thread;
};

}  // namespace app::session
