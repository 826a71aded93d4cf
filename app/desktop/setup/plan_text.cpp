#include "app/desktop/setup/plan_text.h"

#include "app/desktop/sentences.h"
#include "app/desktop/words.h"

#include <QCoreApplication>
#include <QLocale>

namespace app::desktop::plan_text {
namespace {

struct PlanText {
    Q_DECLARE_TR_FUNCTIONS(PlanText)
};

QString heldZone(const view::HeldZone& zone)
{
    return PlanText::tr("%1 takes up to %2 min (or only %3)")
        .arg(QString::fromStdString(zone.name), words::minutes(zone.slowest), words::minutes(zone.quickest));
}

QString heldZones(const view::GiveView& give)
{
    QStringList zones;
    for (const view::HeldZone& zone : give.zones)
        zones << heldZone(zone);
    return zones.join(QStringLiteral(", "));
}

}  // namespace

QString summary(const core::stagger::PlanData& plan, std::size_t heads, const WallClock& clock)
{
    QString text = heads > 1
        ? PlanText::tr("%n heads together: begin %1, done %2.", nullptr, static_cast<int>(heads))
              .arg(clock.text(plan.start), clock.text(plan.end))
        : PlanText::tr("Begin %1, done %2.").arg(clock.text(plan.start), clock.text(plan.end));
    text += plan.worth.deviation == core::measure::Harm{}
        ? PlanText::tr(" Every zone gets its target.")
        : PlanText::tr(" Some zones miss their target, all keep their limits.");
    if (!plan.proved)
        text += PlanText::tr(" There may be a better plan: the search was stopped.");
    return text;
}

QString give(const view::GiveView& give)
{
    using Reach = view::GiveView::Reach;
    if (give.zones.empty() && give.reach != Reach::UsualOnly)
        return {};
    const QString unproved =
        give.proved ? QString{} : PlanText::tr(" Not every plan was tried: another may hold further.");
    switch (give.reach) {
    case Reach::Unknown: return {};
    case Reach::UsualOnly:
        return PlanText::tr(
                   "Holds only for the usual times of applying: where one takes longer or shorter, a "
                   "limit may be missed.")
            + unproved;
    case Reach::Part:
        return PlanText::tr("Holds even if %1; beyond that a limit may be missed.").arg(heldZones(give))
            + unproved;
    case Reach::All: return PlanText::tr("Holds even if %1.").arg(heldZones(give));
    }
    return {};
}

QString forecast(const core::stagger::Forecast& forecast)
{
    if (forecast.influences.empty())
        return {};
    return PlanText::tr(
               "Forecast, with applying anywhere from quickest to slowest: every zone stays inside its "
               "limits %1. A chance, not a promise.")
        .arg(words::chance(forecast.allInside, forecast.runs));
}

QString change(const core::stagger::Cure& cure, const WallClock& clock)
{
    QStringList steps;
    for (const core::stagger::CureStep& step : cure.steps) {
        QString text = inWords(step.what);
        if (step.when && step.kind == core::stagger::CureKind::AnotherHands)
            text += PlanText::tr(", from %1 to %2")
                        .arg(clock.text(step.when->from), clock.text(step.when->until));
        steps << text;
    }
    return steps.join(PlanText::tr("; and: "));
}

QString outcome(const core::stagger::Cure& cure, const WallClock& clock)
{
    QStringList parts;
    for (const core::stagger::CureStep& step : cure.steps)
        if (!step.note.empty())
            parts << inWords(step.note);
    const core::measure::Harm off = cure.plan->worth.deviation;
    const QString from = clock.text(cure.plan->start);
    const QString until = clock.text(cure.plan->end);
    parts << (off == core::measure::Harm{}
                  ? PlanText::tr("Then every zone gets its target, from %1 to %2.").arg(from, until)
                  : PlanText::tr("Then it fits from %1 to %2, off target by %3 zone-minutes in all.")
                        .arg(from, until, QLocale{}.toString(off.minutes(), 'g', 4)));
    return parts.join(QLatin1Char{' '});
}

}  // namespace app::desktop::plan_text
