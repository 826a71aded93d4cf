#include "app/desktop/setup/entry.h"

#include <QRegularExpression>

#include <cmath>

namespace app::desktop {

std::optional<core::measure::Seconds> lengthOf(const QString& entry)
{
    static const QRegularExpression clock{QStringLiteral(R"(^\s*(\d{1,4}):([0-5]\d)\s*$)")};
    static const QRegularExpression decimal{
        QStringLiteral(R"(^\s*(\d{1,4}(?:[.,]\d{1,4})?)\s*(?:min)?\s*$)")};
    if (const auto match = clock.match(entry); match.hasMatch())
        return core::measure::Seconds{match.captured(1).toInt() * 60 + match.captured(2).toInt()};
    if (const auto match = decimal.match(entry); match.hasMatch()) {
        const double minutes = match.captured(1).replace(QLatin1Char{','}, QLatin1Char{'.'}).toDouble();
        return core::measure::Seconds{std::llround(minutes * 60)};
    }
    return std::nullopt;
}

}  // namespace app::desktop
