#pragma once

#include <QByteArray>
#include <QObject>
#include <QSocketNotifier>
#include <QString>

namespace app::command {

/// Lines from a descriptor, as they are typed or sent, without ever waiting.
class LineReader : public QObject {
    Q_OBJECT

public:
    explicit LineReader(int descriptor, QObject* parent = nullptr);

Q_SIGNALS:
    void lineRead(const QString& line);
    void ended();

private:
    void read();

    QSocketNotifier m_notifier;
    QByteArray m_waiting;
};

}  // namespace app::command
