#pragma once

#include "app/desktop/voice.h"

#include <vector>

namespace app::desktop {

/// Remembers what it was told.
class FakeVoice final : public Voice {
public:
    void say(const QString& text) override { said.push_back(text); }
    void stop() override { ++stops; }

    std::vector<QString> said;
    int stops = 0;
};

}  // namespace app::desktop
