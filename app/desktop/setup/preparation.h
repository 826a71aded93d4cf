#pragma once

#include "core/run/prepared.h"

#include <QObject>

#include <array>
#include <vector>

namespace app::desktop {

using core::run::Prepared;
using core::run::Preparing;

/// The list before the start. It holds nobody up: what is open is said, and that is all.
class Preparation : public QObject {
    Q_OBJECT

public:
    static constexpr std::array all{Preparing::Sound, Preparing::Tests, Preparing::Protection,
                                    Preparing::Bowls};

    using QObject::QObject;

    [[nodiscard]] const Prepared& of(Preparing what) const;
    [[nodiscard]] bool isOpen(Preparing what) const { return of(what).state == Prepared::State::Open; }
    void say(Prepared answer);

    /// All of it, in the order in which it is asked, to be kept with the run.
    [[nodiscard]] std::vector<Prepared> said() const { return {m_said.begin(), m_said.end()}; }

    /// For other heads. What was heard is still heard.
    void startAfresh();
    /// For the next run, all of it: since it was heard somebody may have turned the sound down.
    void startOver();

Q_SIGNALS:
    void changed();

private:
    std::array<Prepared, all.size()> m_said{Prepared{Preparing::Sound}, Prepared{Preparing::Tests},
                                            Prepared{Preparing::Protection}, Prepared{Preparing::Bowls}};
};

}  // namespace app::desktop
