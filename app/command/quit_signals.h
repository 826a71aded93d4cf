#pragma once

#include <QObject>
#include <QSocketNotifier>

namespace app::command {

/// Turns the signals that ask a program to go away into one of Qt's, so that it can
/// put the terminal in order first. One at a time in a program.
class QuitSignals : public QObject {
    Q_OBJECT

public:
    explicit QuitSignals(QObject* parent = nullptr);
    ~QuitSignals() override;

Q_SIGNALS:
    void asked();

private:
    int m_ends[2];
    QSocketNotifier m_notifier;
};

}  // namespace app::command
