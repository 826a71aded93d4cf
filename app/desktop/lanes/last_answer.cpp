#include "app/desktop/lanes/last_answer.h"

#include "app/desktop/records/result_words.h"
#include "app/desktop/sentences.h"
#include "app/desktop/words.h"
#include "core/run/amend/amendment_text.h"
#include "core/run/amend/revisions.h"
#include "core/run/answers.h"

#include <QCoreApplication>

namespace app::desktop {
namespace {

using core::run::Fact;
using core::run::FactKind;
using core::run::Setup;

struct LastAnswerText {
    Q_DECLARE_TR_FUNCTIONS(LastAnswer)
};

QString verb(const Fact& fact)
{
    switch (fact.kind) {
    case FactKind::Started: return LastAnswerText::tr("started");
    case FactKind::Finished: return LastAnswerText::tr("done");
    case FactKind::Looked:
        return fact.verdict == core::run::Verdict::Again ? LastAnswerText::tr("looked, again later")
                                                         : LastAnswerText::tr("looked");
    case FactKind::Dropped: return LastAnswerText::tr("left out");
    case FactKind::Ended: return LastAnswerText::tr("the run was ended");
    case FactKind::TurnedOut:
    case FactKind::Noted:
    case FactKind::Undone:
    case FactKind::Moved:
    case FactKind::Amended: break;
    }
    return {};
}

QString amended(const Setup& setup, std::span<const Fact> facts, const Fact& fact,
                const core::measure::TimeZones& zones)
{
    const auto place = core::run::placeOf(facts, fact.number);
    const core::measure::Sentence what =
        place ? core::run::amendmentText(setup, facts, *place, zones) : core::measure::Sentence{};
    return what.empty() ? LastAnswerText::tr("what is planned was changed") : inWords(what);
}

/// "Root turned out too warm, brassy 15:10", "For next time 15:11: two minutes less"
QString lookedBack(const core::service::Coat& coat, const Fact& fact, const QString& when)
{
    const QString said = QString::fromStdString(fact.tone);
    if (fact.kind == FactKind::Noted)
        return LastAnswerText::tr("For next time %1: %2").arg(when, said);
    const QString word = fact.outcome ? words::turnedOut(*fact.outcome) : QString{};
    QStringList how{word, said};
    how.removeAll(QString{});
    return LastAnswerText::tr("%1 turned out %2 %3")
        .arg(QString::fromStdString(coat.zones.at(fact.task.item).name), how.join(QStringLiteral(", ")),
             when);
}

}  // namespace

QString answerText(const Setup& setup, std::span<const Fact> facts, const std::vector<Fact>& answer,
                   const WallClock& clock, const core::measure::TimeZones& zones)
{
    const Fact& first = answer.front();
    const Fact& last = answer.back();
    const QString when = clock.text(last.happened);
    if (first.kind == FactKind::Amended)
        return QStringLiteral("%1 %2").arg(amended(setup, facts, first, zones), when);
    if (last.kind == FactKind::Ended)
        return QStringLiteral("%1 %2").arg(verb(last), when);
    const auto& services = core::run::servicesAt(setup, facts);
    const std::string head = view::headOf(services, last.task.service);
    if (last.task.kind == core::stagger::TaskKind::Heat)
        return words::ofHead(head,
                             last.kind == FactKind::Started ? LastAnswerText::tr("Heat on %1").arg(when)
                                                            : LastAnswerText::tr("Heat off %1").arg(when));
    if (last.kind == FactKind::TurnedOut || last.kind == FactKind::Noted)
        return words::ofHead(head,
                             lookedBack(services.at(last.task.service).coats.at(last.task.coat), last, when));
    const QString task = inWords(core::stagger::taskName(services.at(last.task.service), last.task));
    QString text = QStringLiteral("%1: %2 %3").arg(words::ofHead(head, task), verb(last), when);
    if (!first.tone.empty())
        text += QStringLiteral(", ") + QString::fromStdString(first.tone);
    return text;
}

QString lastAnswer(const Setup& setup, std::span<const Fact> facts, const WallClock& clock,
                   const core::measure::TimeZones& zones)
{
    const auto answers = core::run::standingAnswers(facts);
    return answers.empty() ? QString{} : answerText(setup, facts, answers.front(), clock, zones);
}

}  // namespace app::desktop
