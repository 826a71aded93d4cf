#include "app/desktop/records/result_words.h"

#include "app/desktop/words.h"
#include "app/view/outcome_words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

namespace app::desktop::words {
namespace {

struct ResultsText {
    Q_DECLARE_TR_FUNCTIONS(Results)
};

}  // namespace

QString turnedOut(core::run::Outcome outcome)
{
    return QCoreApplication::translate("Outcomes", view::outcomeWord(outcome).data());
}

QString result(const view::ZoneResult& result)
{
    const QString word = result.outcome ? turnedOut(*result.outcome) : QString{};
    const QString own = QString::fromStdString(result.words);
    return word.isEmpty() || own.isEmpty() ? word + own : word + QStringLiteral(", ") + own;
}

QString offTarget(const core::service::Window& window, core::measure::Seconds developed)
{
    if (developed == window.target)
        return ResultsText::tr("on target");
    return developed < window.target ? ResultsText::tr("%1 short").arg(length(window.target - developed))
                                     : ResultsText::tr("%1 over").arg(length(developed - window.target));
}

QString day(core::measure::Instant moment, const core::measure::TimeZones& zones, const std::string& zone)
{
    const std::chrono::year_month_day date{
        std::chrono::floor<std::chrono::days>(zones.localAt(moment, zone))};
    return QLocale{}.toString(QDate{static_cast<int>(date.year()),
                                    static_cast<int>(static_cast<unsigned>(date.month())),
                                    static_cast<int>(static_cast<unsigned>(date.day()))},
                              QLocale::LongFormat);
}

}  // namespace app::desktop::words
