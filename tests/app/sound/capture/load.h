#pragma once

#include <QProcess>

#include <algorithm>
#include <memory>
#include <thread>
#include <vector>

namespace capture {

/// Keeps every processor busy for as long as it is there: as many programs that do nothing but count as there
/// are processors, each with the priority that programs usually have. They end by themselves when whoever
/// started them was killed.
class Load {
public:
    Load()
    {
        for (int each = 0; each < processes(); ++each) {
            m_busy.push_back(std::make_unique<QProcess>());
            m_busy.back()->start(
                QStringLiteral("sh"),
                {QStringLiteral("-c"), QStringLiteral("while kill -0 $PPID 2>/dev/null; do :; done")});
            m_busy.back()->waitForStarted();
        }
    }
    ~Load()
    {
        for (const auto& process : m_busy) {
            process->kill();
            process->waitForFinished();
        }
    }
    Load(const Load&) = delete;
    Load& operator=(const Load&) = delete;

    static int processes() { return static_cast<int>(std::max(1U, std::thread::hardware_concurrency())); }

private:
    std::vector<std::unique_ptr<QProcess>> m_busy;
};

}  // namespace capture
