#pragma once

#include "core/measure/time.h"

#include <QObject>
#include <QString>

#include <array>
#include <optional>

namespace app::desktop {

/// What is asked once before lanes begin.
enum class Preparing { Sound, Tests, Protection, Bowls };

/// What was said of one of them.
struct Prepared {
    enum class State { Open, Done, Skipped };
    State state = State::Open;
    QString why{};                               ///< Of what was skipped, as it was typed.
    std::optional<core::measure::Instant> at{};  ///< When it was said.

    friend bool operator==(const Prepared&, const Prepared&) = default;
};

/// The list before the start. It holds nobody up: what is open is said, and that is all.
class Preparation : public QObject {
    Q_OBJECT

public:
    static constexpr std::array all{Preparing::Sound, Preparing::Tests, Preparing::Protection,
                                    Preparing::Bowls};

    using QObject::QObject;

    [[nodiscard]] const Prepared& of(Preparing what) const;
    [[nodiscard]] bool isOpen(Preparing what) const { return of(what).state == Prepared::State::Open; }
    void say(Preparing what, Prepared answer);

    /// For other heads, or the next run. What was heard is still heard.
    void startAfresh();

Q_SIGNALS:
    void changed();

private:
    std::array<Prepared, all.size()> m_said;
};

}  // namespace app::desktop
