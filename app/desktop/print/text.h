#pragma once

#include <QCoreApplication>

namespace app::desktop::print {

/// In its context translators find what is printed.
struct Text {
    Q_DECLARE_TR_FUNCTIONS(Print)
};

}  // namespace app::desktop::print
