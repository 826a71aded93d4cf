#pragma once

#include <QObject>
#include <QString>

namespace app::desktop {

/// What the window needs of whoever speaks. Both are taken without waiting; where nothing can speak they do
/// nothing.
class Voice : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    /// After what is being said.
    virtual void say(const QString& text) = 0;

    /// At once.
    virtual void stop() = 0;

Q_SIGNALS:
    /// As soon as it is known whether anything can be heard.
    void known(bool there);
};

}  // namespace app::desktop
