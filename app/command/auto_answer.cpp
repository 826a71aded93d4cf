#include "app/command/auto_answer.h"

#include <algorithm>

namespace app::command {

using core::run::Answer;
using core::run::Prompt;

namespace {

Answer asPlanned(const Prompt& prompt)
{
    Answer answer;
    answer.task = prompt.task;
    switch (prompt.asks) {
    case Prompt::Asks::Start: answer.kind = Answer::Kind::Start; break;
    case Prompt::Asks::Finish: answer.kind = Answer::Kind::Finish; break;
    case Prompt::Asks::Look: answer.kind = Answer::Kind::Leave; break;
    }
    return answer;
}

/// The first thing that can be done now. What has to wait for something that runs has its turn once that has
/// ended.
const Prompt* firstDue(const core::run::State& state)
{
    const auto due = std::find_if(state.prompts.begin(), state.prompts.end(), [&](const Prompt& prompt) {
        return prompt.due <= state.now && !prompt.waitsFor;
    });
    return due == state.prompts.end() ? nullptr : &*due;
}

}  // namespace

AutoAnswer::AutoAnswer(session::Session& session, QObject* parent)
    : QObject{parent}
    , m_session{session}
{
    // Only once everything else was told of the moment: an alarm must have sounded before its answer ends it.
    connect(&session, &session::Session::settled, this, &AutoAnswer::answerWhatIsDue);
}

void AutoAnswer::answerWhatIsDue()
{
    if (m_answering || !m_session.current())
        return;
    m_answering = true;
    while (const Prompt* const due = firstDue(m_session.state())) {
        const Answer answer = asPlanned(*due);
        if (const auto refusal = m_session.answer(answer)) {
            Q_EMIT stuck(QString::fromStdString(refusal->what));
            break;
        }
    }
    m_answering = false;
    if (!m_session.state().finished && m_session.state().prompts.empty())
        Q_EMIT stuck(tr("Nothing is asked for, though not everything is done."));
}

}  // namespace app::command
