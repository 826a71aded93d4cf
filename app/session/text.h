#pragma once

#include <QCoreApplication>

namespace app::session {

/// In its context translators find what a session says.
struct Text {
    Q_DECLARE_TR_FUNCTIONS(Session)
};

}  // namespace app::session
