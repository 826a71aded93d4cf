#include "app/desktop/lanes/last_answer.h"

#include "app/desktop/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace app::desktop {
namespace {

using core::run::Fact;
using core::run::FactKind;
using core::run::FactNumber;

struct Text {
    Q_DECLARE_TR_FUNCTIONS(LastAnswer)
};

QString verb(const Fact& fact)
{
    switch (fact.kind) {
    case FactKind::Started: return Text::tr("started");
    case FactKind::Finished: return Text::tr("done");
    case FactKind::Looked:
        return fact.verdict == core::run::Verdict::Again ? Text::tr("looked, again later")
                                                         : Text::tr("looked");
    case FactKind::Dropped: return Text::tr("left out");
    case FactKind::Undone:
    case FactKind::Moved:
    case FactKind::Amended:
    case FactKind::Ended: break;
    }
    return {};
}

}  // namespace

QString lastAnswer(const std::vector<core::service::Service>& services, const std::vector<Fact>& facts,
                   const WallClock& clock)
{
    std::set<FactNumber> undone;
    std::set<FactNumber> moved;
    core::measure::Instant movedTo;
    for (auto fact = facts.rbegin(); fact != facts.rend(); ++fact) {
        if (undone.contains(fact->number))
            continue;
        if (fact->kind == FactKind::Undone && fact->about)
            undone.insert(*fact->about);
        if (fact->kind == FactKind::Moved && fact->about && moved.insert(*fact->about).second)
            movedTo = fact->happened;
        const bool amends = fact->kind == FactKind::Amended || fact->revision != 0;
        const QString what = verb(*fact);
        if (what.isEmpty() && !amends)
            continue;
        const auto happened = moved.contains(fact->number) ? movedTo : fact->happened;
        if (amends)
            return Text::tr("what is planned was changed %1").arg(clock.text(happened));
        const QString task = words::ofHead(
            view::headOf(services, fact->task.service),
            QString::fromStdString(core::stagger::taskName(services[fact->task.service], fact->task)));
        return QStringLiteral("%1: %2 %3").arg(task, what, clock.text(happened));
    }
    return {};
}

}  // namespace app::desktop
