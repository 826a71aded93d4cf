#pragma once

#include "app/view/record_card.h"

#include <QString>

namespace app::desktop {

/// What is worth knowing of a run for the next coat: how long each zone developed, how it turned out, what
/// was to be thought of. `day` is when that was. Nothing where no zone was rinsed and nothing was noted.
QString lastTimeText(const view::RecordCard& card, const QString& day);

}  // namespace app::desktop
