#include "core/service/reading/moment.h"

#include "core/service/clock_text.h"

namespace core::service::reading {
namespace {

using measure::Instant;
using measure::LocalTime;
using measure::Seconds;
namespace calendar = std::chrono;

/// Takes pieces off the front of a text.
class Scanner {
public:
    explicit Scanner(std::string_view text)
        : m_rest{text}
    {
    }

    /// Exactly `digits` digits as a number from 0 to `most`.
    std::optional<int> number(std::size_t digits, int most)
    {
        if (m_rest.size() < digits)
            return {};
        int value = 0;
        for (const char c : m_rest.substr(0, digits)) {
            if (c < '0' || c > '9')
                return {};
            value = value * 10 + (c - '0');
        }
        m_rest.remove_prefix(digits);
        return value <= most ? std::optional{value} : std::nullopt;
    }

    bool take(char c)
    {
        if (!m_rest.starts_with(c))
            return false;
        m_rest.remove_prefix(1);
        return true;
    }

    [[nodiscard]] bool atEnd() const { return m_rest.empty(); }
    [[nodiscard]] bool startsDay() const { return m_rest.size() > 4 && m_rest[4] == '-'; }

private:
    std::string_view m_rest;
};

std::optional<calendar::local_days> scanDay(Scanner& text)
{
    const auto year = text.number(4, 9999);
    if (!year || !text.take('-'))
        return {};
    const auto month = text.number(2, 12);
    if (!month || !text.take('-'))
        return {};
    const auto day = text.number(2, 31);
    if (!day)
        return {};
    const calendar::year_month_day date{calendar::year{*year}, calendar::month{static_cast<unsigned>(*month)},
                                        calendar::day{static_cast<unsigned>(*day)}};
    return date.ok() ? std::optional{calendar::local_days{date}} : std::nullopt;
}

/// Hours and minutes, for a time of day with seconds where they follow.
std::optional<Seconds> scanHours(Scanner& text, bool secondsToo)
{
    const auto hours = text.number(2, 23);
    if (!hours || !text.take(':'))
        return {};
    const auto minutes = text.number(2, 59);
    if (!minutes)
        return {};
    Seconds time = calendar::hours{*hours} + calendar::minutes{*minutes};
    if (secondsToo && text.take(':')) {
        const auto seconds = text.number(2, 59);
        if (!seconds)
            return {};
        time += Seconds{*seconds};
    }
    return time;
}

struct Written {
    LocalTime local;
    std::optional<Seconds> offset;
};

/// What is written, whether or not such a time exists.
std::optional<Written> scanMoment(std::string_view words, calendar::local_days day)
{
    Scanner text{words};
    if (text.startsDay()) {
        const auto given = scanDay(text);
        if (!given || !text.take('T'))
            return {};
        day = *given;
    }
    const auto time = scanHours(text, true);
    if (!time)
        return {};
    Written written{day + *time, {}};
    if (text.take('Z'))
        written.offset = Seconds{0};
    else if (const bool ahead = text.take('+'); ahead || text.take('-')) {
        const auto offset = scanHours(text, false);
        if (!offset)
            return {};
        written.offset = ahead ? *offset : -*offset;
    }
    return text.atEnd() ? std::optional{written} : std::nullopt;
}

std::string repeatedText(LocalTime local, const std::vector<Instant>& instants, const Clock& clock)
{
    const auto [day, time] = dayAndTime(local);
    return time + " comes twice on " + day + " in " + clock.zone + ", because the clocks go back; write \""
        + momentText(local) + offsetText(local, instants.front()) + "\" for the first or \""
        + momentText(local) + offsetText(local, instants.back()) + "\" for the second";
}

std::string skippedText(LocalTime local, const Clock& clock)
{
    const auto [day, time] = dayAndTime(local);
    return time + " does not exist on " + day + " in " + clock.zone
        + ", because the clocks go forward over it; name a time before or after the change";
}

}  // namespace

std::optional<calendar::local_days> readDay(std::string_view text)
{
    Scanner scanner{text};
    const auto day = scanDay(scanner);
    return scanner.atEnd() ? day : std::nullopt;
}

Instant readMoment(const json::Value& value, const Clock& clock, const std::string& place, Findings& findings)
{
    const auto written =
        value.kind == json::Kind::Text ? scanMoment(value.text, clock.day) : std::optional<Written>{};
    if (!written) {
        findings.add(place,
                     json::described(value)
                         + " is not a clock time; write \"14:30\", or \"2026-10-25T14:30\" with the day");
        return {};
    }
    if (written->offset)
        return Instant{written->local.time_since_epoch() - *written->offset};
    if (clock.zone.empty())
        return {};
    const std::vector<Instant> instants = clock.zones.instantsOf(written->local, clock.zone);
    if (instants.empty())
        findings.add(place, skippedText(written->local, clock));
    else if (instants.size() > 1)
        findings.add(place, repeatedText(written->local, instants, clock));
    return instants.empty() ? Instant{} : instants.front();
}

}  // namespace core::service::reading
