#pragma once

#include <speech-dispatcher/libspeechd.h>

#include <string>

namespace app::speech {

/// The speech service of the machine, speech-dispatcher: every desktop's screen reader uses it, and where it
/// is set up the voice, its pace and its volume are the person's own. It is started where it does not run.
class Dispatcher {
public:
    /// `language` as a tag of BCP 47, such as "en-GB".
    explicit Dispatcher(std::string language);
    ~Dispatcher();
    Dispatcher(const Dispatcher&) = delete;
    Dispatcher& operator=(const Dispatcher&) = delete;

    /// Says it after what is being said. Whether the service took it.
    bool say(const std::string& text);

    /// Ends what is being said, and forgets what waits.
    void stop();

private:
    bool open();
    void close();

    std::string m_language;
    SPDConnection* m_connection = nullptr;
};

}  // namespace app::speech
