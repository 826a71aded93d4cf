#include "app/desktop/records/last_time.h"

#include "app/desktop/records/result_words.h"
#include "app/desktop/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace app::desktop {
namespace {

using words::named;

struct LastTimeText {
    Q_DECLARE_TR_FUNCTIONS(LastTime)
};

/// "Root 31 min, too warm, brassy at the nape"
QString zoneText(const view::CardZone& zone)
{
    QString text =
        LastTimeText::tr("%1 %2", "zone, length").arg(named(zone.name), words::length(*zone.developed));
    const QString said = words::result(zone.result);
    return said.isEmpty()
        ? text
        : LastTimeText::tr("%1, %2", "zone with its length, how it turned out").arg(text, said);
}

QStringList coatTexts(const view::CardCoat& coat)
{
    QStringList zones;
    for (const view::CardZone& zone : coat.zones)
        if (zone.developed)
            zones << zoneText(zone);
    QStringList texts;
    if (!zones.isEmpty())
        texts << zones.join(QStringLiteral("; ")) + QLatin1Char{'.'};
    if (!coat.note.empty())
        texts << LastTimeText::tr("For next time: %1").arg(named(coat.note));
    return texts;
}

}  // namespace

QString lastTimeText(const view::RecordCard& card, const QString& day)
{
    QStringList texts;
    for (const view::CardHead& head : card.heads)
        for (const view::CardCoat& coat : head.coats) {
            QStringList said = coatTexts(coat);
            if (said.isEmpty())
                continue;
            if (head.coats.size() > 1)
                said.prepend(named(coat.name) + QLatin1Char{':'});
            if (card.heads.size() > 1)
                said.prepend(named(head.head.empty() ? head.service : head.head) + QLatin1Char{':'});
            texts << said.join(QLatin1Char{' '});
        }
    if (texts.isEmpty())
        return {};
    return LastTimeText::tr("Last time, %1: %2", "day, what was said").arg(day, texts.join(QLatin1Char{' '}));
}

}  // namespace app::desktop
