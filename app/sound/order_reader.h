#pragma once

#include "app/sound/message.h"

#include <QObject>
#include <QSocketNotifier>

#include <string>

namespace app::sound {

/// Reads orders, a line each, from an open file as they arrive.
class OrderReader : public QObject {
    Q_OBJECT
public:
    explicit OrderReader(int descriptor, QObject* parent = nullptr);

Q_SIGNALS:
    void ordered(const app::sound::Order& order);
    void misunderstood(const QString& line);

    /// Whoever gave the orders is gone.
    void ended();

private:
    void read();
    void takeLines();

    int m_descriptor;
    QSocketNotifier m_notifier;
    std::string m_text;
};

}  // namespace app::sound
