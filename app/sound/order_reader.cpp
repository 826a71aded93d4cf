#include "app/sound/order_reader.h"

#include <unistd.h>

#include <array>
#include <cerrno>

namespace app::sound {
namespace {

/// No order is nearly as long; what has no end by then is not kept.
constexpr std::size_t longestLine = 4096;

}  // namespace

OrderReader::OrderReader(int descriptor, QObject* parent)
    : QObject{parent}
    , m_descriptor{descriptor}
    , m_notifier{descriptor, QSocketNotifier::Read}
{
    connect(&m_notifier, &QSocketNotifier::activated, this, &OrderReader::read);
}

void OrderReader::read()
{
    std::array<char, 4096> bytes{};
    const ssize_t count = ::read(m_descriptor, bytes.data(), bytes.size());
    if (count < 0 && (errno == EINTR || errno == EAGAIN))
        return;
    if (count <= 0) {
        m_notifier.setEnabled(false);
        Q_EMIT ended();
        return;
    }
    m_text.append(bytes.data(), static_cast<std::size_t>(count));
    takeLines();
}

void OrderReader::takeLines()
{
    std::size_t end = 0;
    while ((end = m_text.find('\n')) != std::string::npos) {
        const std::string line = m_text.substr(0, end);
        m_text.erase(0, end + 1);
        if (const auto order = orderOf(line))
            Q_EMIT ordered(*order);
        else
            Q_EMIT misunderstood(QString::fromStdString(line));
    }
    if (m_text.size() > longestLine)
        m_text.clear();
}

}  // namespace app::sound
