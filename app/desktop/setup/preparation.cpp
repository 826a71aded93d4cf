#include "app/desktop/setup/preparation.h"

namespace app::desktop {

const Prepared& Preparation::of(Preparing what) const
{
    return m_said.at(static_cast<std::size_t>(what));
}

void Preparation::say(Prepared answer)
{
    Prepared& said = m_said.at(static_cast<std::size_t>(answer.what));
    if (said == answer)
        return;
    said = std::move(answer);
    Q_EMIT changed();
}

void Preparation::startAfresh()
{
    for (const Preparing what : all)
        if (what != Preparing::Sound)
            say({.what = what});
}

void Preparation::startOver()
{
    startAfresh();
    say({.what = Preparing::Sound});
}

}  // namespace app::desktop
