#pragma once

#include <QCoreApplication>

namespace app::desktop::print {

/// In its context translators find what is printed.
struct Text {
    Q_DECLARE_TR_FUNCTIONS(Print)
};

/// What a person called it.
inline QString named(const std::string& name)
{
    return QString::fromStdString(name);
}

}  // namespace app::desktop::print
