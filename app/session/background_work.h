#pragma once

#include <QObject>
#include <QThread>

#include <atomic>
#include <functional>
#include <memory>

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

    [[nodiscard]] bool isBusy() const { return m_busy; }

private:
    QThread m_thread;
    QObject* m_worker;
    std::shared_ptr<std::atomic<std::uint64_t>> m_latest;
    bool m_busy = false;
};

}  // namespace app::session
