#include "app/desktop/setup/start_text.h"

#include "app/desktop/sentences.h"
#include "app/desktop/words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace app::desktop::start_text {
namespace {

using words::named;

struct StartText {
    Q_DECLARE_TR_FUNCTIONS(StartText)
};

/// Of many zones the first few say enough.
constexpr qsizetype mostNamed = 4;

QStringList consequences(const view::StartChange& change, const WallClock& clock)
{
    QStringList said;
    for (const view::StartChange::Water& water : change.waters)
        said
            << (change.waters.size() == 1
                    ? StartText::tr("water %1 instead of %2").arg(clock.text(water.is), clock.text(water.was))
                    : StartText::tr("water of %1 %2 instead of %3")
                          .arg(named(water.group), clock.text(water.is), clock.text(water.was)));
    QStringList developed;
    for (const view::StartChange::Developed& zone : change.developed)
        developed << StartText::tr("%1 develops %2 min instead of %3 min")
                         .arg(named(zone.zone), words::minutes(zone.is), words::minutes(zone.was));
    const auto more = static_cast<int>(std::max<qsizetype>(0, developed.size() - mostNamed));
    said << developed.mid(0, mostNamed);
    if (more > 0)
        said << StartText::tr("%n zones more develop for another time", nullptr, more);
    if (change.beginIs != change.beginWas)
        said << StartText::tr("begin %1 instead of %2")
                    .arg(clock.text(change.beginIs), clock.text(change.beginWas));
    if (change.endIs != change.endWas)
        said << StartText::tr("done %1 instead of %2")
                    .arg(clock.text(change.endIs), clock.text(change.endWas));
    return said;
}

QString offTargets(const view::StartChange& change)
{
    if (change.offIs == core::measure::Harm{})
        return StartText::tr("Every zone gets its target.");
    const auto minutes = [](core::measure::Harm harm) { return QLocale{}.toString(harm.minutes(), 'g', 4); };
    if (change.offIs == change.offWas)
        return StartText::tr("Off target by %1 zone-minutes in all, as before.").arg(minutes(change.offIs));
    return StartText::tr("Off target by %1 zone-minutes in all, %2 before; every limit holds.")
        .arg(minutes(change.offIs), minutes(change.offWas));
}

QString starts(const view::StartChange& change, const WallClock& clock)
{
    return change.is == change.was
        ? StartText::tr("%1 starts %2, as planned").arg(named(change.zone), clock.text(change.is))
        : StartText::tr("%1 starts %2 instead of %3")
              .arg(named(change.zone), clock.text(change.is), clock.text(change.was));
}

/// What the plan is worth with it, after what changes.
QString worth(const view::StartChange& change)
{
    QString said = QLatin1Char{' '} + offTargets(change);
    if (change.holdsLess)
        said += QLatin1Char{' '} + StartText::tr("Applying may be less off its usual times.");
    return said;
}

QString demandsOf(const core::stagger::NoPlan& reason)
{
    QStringList demands;
    for (const core::stagger::Demand& demand : reason.demands)
        demands << inWords(demand.what);
    return demands.join(QStringLiteral("; "));
}

}  // namespace

QString change(const view::StartChange& change, const WallClock& clock)
{
    const QStringList also = consequences(change, clock);
    const QString first = starts(change, clock);
    return (also.isEmpty() ? StartText::tr("%1; nothing else changes.").arg(first)
                           : StartText::tr("%1: %2.").arg(first, also.join(QStringLiteral("; "))))
        + worth(change);
}

QString briefly(const view::StartChange& change, const WallClock& clock)
{
    return starts(change, clock) + QLatin1Char{'.'} + worth(change);
}

QString atLatest(const std::string& zone, const core::stagger::StartRange& range, const WallClock& clock)
{
    const QString at = clock.text(range.latest.value_or(range.earliest));
    const QString why = demandsOf(range.beyond);
    return why.isEmpty() ? StartText::tr("%1 cannot start later than %2.").arg(named(zone), at)
                         : StartText::tr("%1 cannot start later than %2: %3.").arg(named(zone), at, why);
}

QString atEarliest(const std::string& zone, const WallClock& clock, core::measure::Instant start)
{
    return StartText::tr("%1 starts %2 by itself; only a later start can be chosen.")
        .arg(named(zone), clock.text(start));
}

QString nothingFits(const std::string& zone, core::measure::Instant wanted,
                    const core::stagger::NoPlan& reason, const WallClock& clock)
{
    return StartText::tr("With %1 not before %2 nothing fits: %3.")
        .arg(named(zone), clock.text(wanted), demandsOf(reason));
}

QString kept(const std::string& zone, core::measure::Instant wanted, const WallClock& clock)
{
    return StartText::tr("%1 not before %2").arg(named(zone), clock.text(wanted));
}

QString letGo(const std::string& zone)
{
    return StartText::tr("%1 whenever is best").arg(named(zone));
}

}  // namespace app::desktop::start_text
