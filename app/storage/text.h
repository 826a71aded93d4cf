#pragma once

#include <QCoreApplication>

namespace app::storage {

/// In its context translators find what the journal says.
struct Text {
    Q_DECLARE_TR_FUNCTIONS(Journal)
};

}  // namespace app::storage
