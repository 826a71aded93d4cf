#pragma once

#include "app/session/session.h"

#include <QObject>

namespace app::command {

/// Answers every question at its time, as planned: what is due has begun, has ended,
/// was looked at and is left. For demonstrations and tests.
class AutoAnswer : public QObject {
    Q_OBJECT

public:
    explicit AutoAnswer(session::Session& session, QObject* parent = nullptr);

Q_SIGNALS:
    /// It cannot go on: an answer was refused, or nothing is asked for any more.
    void stuck(const QString& why);

private:
    void answerWhatIsDue();

    session::Session& m_session;
    bool m_answering = false;
};

}  // namespace app::command
