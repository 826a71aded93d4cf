#pragma once

#include "core/run/prepared.h"

#include <QtGlobal>

namespace app::view {

/// What is asked before a run begins, as the list before the start and the record card call it.
constexpr const char* preparingName(core::run::Preparing what, bool onPerson)
{
    using core::run::Preparing;
    switch (what) {
    case Preparing::Sound: return QT_TRANSLATE_NOOP("PreparationText", "Sound");
    case Preparing::Tests:
        return onPerson ? QT_TRANSLATE_NOOP("PreparationText", "Skin and strand tests")
                        : QT_TRANSLATE_NOOP("PreparationText", "Strand test");
    case Preparing::Protection: return QT_TRANSLATE_NOOP("PreparationText", "Gloves, apron, air");
    case Preparing::Bowls: return QT_TRANSLATE_NOOP("PreparationText", "Bowls in order");
    }
    return "";
}

/// What was said of it.
constexpr const char* preparedState(const core::run::Prepared& said)
{
    using State = core::run::Prepared::State;
    const bool sound = said.what == core::run::Preparing::Sound;
    switch (said.state) {
    case State::Open:
        return sound ? QT_TRANSLATE_NOOP("PreparationText", "not checked")
                     : QT_TRANSLATE_NOOP("PreparationText", "open");
    case State::Done:
        return sound ? QT_TRANSLATE_NOOP("PreparationText", "heard")
                     : QT_TRANSLATE_NOOP("PreparationText", "done");
    case State::Skipped:
        return sound ? QT_TRANSLATE_NOOP("PreparationText", "none, watch the screen")
                     : QT_TRANSLATE_NOOP("PreparationText", "skipped");
    }
    return "";
}

}  // namespace app::view
