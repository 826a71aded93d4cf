#include "app/speech/dispatcher.h"

#include <cstdlib>
#include <utility>

#include <unistd.h>

namespace app::speech {
namespace {

/// A service that never answers must not keep this program: the system ends it, and whoever started it starts
/// another.
constexpr unsigned longestWaitSeconds = 6;

class Watched {
public:
    Watched() { ::alarm(longestWaitSeconds); }
    ~Watched() { ::alarm(0); }
    Watched(const Watched&) = delete;
    Watched& operator=(const Watched&) = delete;
};

}  // namespace

Dispatcher::Dispatcher(std::string language)
    : m_language{std::move(language)}
{
}

Dispatcher::~Dispatcher()
{
    close();
}

bool Dispatcher::open()
{
    if (m_connection != nullptr)
        return true;
    constexpr int startsTheService = 1;
    char* problem = nullptr;
    m_connection =
        spd_open2("basinbell", "alarms", nullptr, SPD_MODE_SINGLE, nullptr, startsTheService, &problem);
    std::free(problem);
    if (m_connection == nullptr)
        return false;
    spd_set_language(m_connection, m_language.c_str());
    return true;
}

void Dispatcher::close()
{
    if (SPDConnection* const connection = std::exchange(m_connection, nullptr))
        spd_close(connection);
}

bool Dispatcher::say(const std::string& text)
{
    const Watched watched;
    // A service that was started anew knows nothing of an old connection.
    for (int attempt = 0; attempt < 2; ++attempt) {
        if (!open())
            return false;
        if (spd_say(m_connection, SPD_MESSAGE, text.c_str()) >= 0)
            return true;
        close();
    }
    return false;
}

void Dispatcher::stop()
{
    const Watched watched;
    if (m_connection != nullptr)
        spd_cancel(m_connection);
}

}  // namespace app::speech
