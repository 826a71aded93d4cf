#include "app/command/line_reader.h"

#include <cerrno>

#include <unistd.h>

namespace app::command {

LineReader::LineReader(int descriptor, QObject* parent)
    : QObject{parent}
    , m_notifier{descriptor, QSocketNotifier::Read}
{
    connect(&m_notifier, &QSocketNotifier::activated, this, &LineReader::read);
}

void LineReader::read()
{
    char bytes[4096];
    const ssize_t length = ::read(static_cast<int>(m_notifier.socket()), bytes, sizeof bytes);
    if (length < 0 && (errno == EINTR || errno == EAGAIN))
        return;
    if (length > 0)
        m_waiting.append(bytes, length);
    for (qsizetype end = 0; (end = m_waiting.indexOf('\n')) >= 0;) {
        const QByteArray line = m_waiting.left(end);
        m_waiting.remove(0, end + 1);
        Q_EMIT lineRead(QString::fromUtf8(line).trimmed());
    }
    if (length <= 0) {
        m_notifier.setEnabled(false);
        Q_EMIT ended();
    }
}

}  // namespace app::command
