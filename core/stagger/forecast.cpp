#include "core/stagger/forecast.h"

#include "core/stagger/planned_network.h"
#include "core/temporal/executor.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace core::stagger {
namespace {

/// Random numbers of one run: the same on every machine, and apart from those of other
/// runs (SplitMix64: Steele, Lea, Flood 2014; from memory).
class Draws {
public:
    Draws(std::uint64_t seed, std::uint64_t run)
        : m_state{seed * 0x9E3779B97F4A7C15ULL + mixed(run + 1)}
    {
    }

    /// Evenly from [0, 1).
    double next()
    {
        m_state += 0x9E3779B97F4A7C15ULL;
        return static_cast<double>(mixed(m_state) >> 11) * 0x1.0p-53;
    }

private:
    static std::uint64_t mixed(std::uint64_t value)
    {
        value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9ULL;
        value = (value ^ (value >> 27)) * 0x94D049BB133111EBULL;
        return value ^ (value >> 31);
    }
    std::uint64_t m_state;
};

/// The inverse of the triangular distribution function.
Time triangular(const temporal::Uncertain& link, double drawn)
{
    const double least = link.least;
    const double usual = link.usual;
    const double most = link.most;
    if (link.least == link.most)
        return link.usual;
    const double peak = (usual - least) / (most - least);
    const double length = drawn < peak ? least + std::sqrt(drawn * (most - least) * (usual - least))
                                       : most - std::sqrt((1 - drawn) * (most - least) * (most - usual));
    return std::clamp(static_cast<Time>(std::lround(length)), link.least, link.most);
}

template <typename Value>
Spread<Value> spreadOf(std::vector<Value> values)
{
    auto begin = values.begin();
    const auto at = [&](std::size_t twentieths) {
        const auto place =
            values.begin() + static_cast<std::ptrdiff_t>((values.size() - 1) * twentieths / 20);
        std::nth_element(begin, place, values.end());
        begin = place;
        return *place;
    };
    const auto [least, most] = std::ranges::minmax(values);
    return {least, at(1), at(10), at(19), most};  // From the left to the right, as braces have it.
}

/// The square of Pearson's correlation; 0 where one of them does not differ.
double sharedVariance(const std::vector<double>& a, const std::vector<double>& b)
{
    const auto count = static_cast<double>(a.size());
    const double meanA = std::accumulate(a.begin(), a.end(), 0.0) / count;
    const double meanB = std::accumulate(b.begin(), b.end(), 0.0) / count;
    double both = 0;
    double onlyA = 0;
    double onlyB = 0;
    for (std::size_t place = 0; place < a.size(); ++place) {
        both += (a[place] - meanA) * (b[place] - meanB);
        onlyA += (a[place] - meanA) * (a[place] - meanA);
        onlyB += (b[place] - meanB) * (b[place] - meanB);
    }
    return onlyA > 0 && onlyB > 0 ? both * both / (onlyA * onlyB) : 0;
}

class Forecaster {
public:
    Forecaster(const Question& question, const Draft& draft, temporal::Executor executor,
               std::vector<Time> planned)
        : m_question{question}
        , m_draft{draft}
        , m_executor{std::move(executor)}
        , m_planned{std::move(planned)}
    {
    }

    Forecast make(const ForecastOptions& options)
    {
        begin();
        for (int run = 0; run < std::max(1, options.runs); ++run) {
            Draws draws{options.seed, static_cast<std::uint64_t>(run)};
            m_lengths.clear();
            for (const temporal::Uncertain& link : m_draft.links)
                m_lengths.push_back(triangular(link, draws.next()));
            m_executor.run(m_lengths, m_planned, m_times);
            note();
        }
        return said();
    }

private:
    void begin()
    {
        for (const DraftedZone& zone : m_draft.zones) {
            if (!zone.water)
                continue;
            m_zones.push_back(&zone);
            m_forecast.zones.push_back(
                {zone.apply.service, zone.apply.coat, zone.apply.item, 0, Spread<Seconds>{}});
        }
        for (const Busy& busy : m_draft.busy) {
            if (busy.state == TaskState::Open && busy.needsBasin)
                m_rinses.push_back(&busy);
        }
        m_developments.resize(m_zones.size());
        m_waters.resize(m_rinses.size());
        m_drawn.resize(m_draft.links.size());
    }

    [[nodiscard]] Time at(const Moment& moment) const
    {
        return m_times[static_cast<std::size_t>(moment.point)] + moment.offset;
    }

    [[nodiscard]] bool isInside(const DraftedZone& drafted, const service::Zone& zone) const
    {
        const Seconds developed{at(*drafted.water) - at(drafted.clockStart)};
        const Seconds first{at(*drafted.water) - at(drafted.contact)};
        const Seconds last{at(*drafted.water) - at(drafted.applicationEnd)};
        return developed >= zone.develop.least && developed <= zone.develop.most
            && first <= zone.firstStrandMost.value_or(first) && last >= zone.lastStrandLeast.value_or(last)
            && last >= Seconds{0};
    }

    /// Takes down one run.
    void note()
    {
        ++m_forecast.runs;
        bool all = true;
        double harm = 0;
        for (std::size_t place = 0; place < m_zones.size(); ++place) {
            const DraftedZone& drafted = *m_zones[place];
            const TaskId& id = drafted.apply;
            const service::Zone& zone = m_question.services[id.service].coats[id.coat].zones[id.item];
            const Seconds developed{at(*drafted.water) - at(drafted.clockStart)};
            harm += static_cast<double>(zone.harmOf(developed).hundredthSeconds);
            m_developments[place].push_back(developed);
            const bool inside = isInside(drafted, zone);
            m_forecast.zones[place].inside += inside ? 1 : 0;
            all = all && inside;
        }
        m_forecast.allInside += all ? 1 : 0;
        Time last = 0;
        for (std::size_t place = 0; place < m_rinses.size(); ++place) {
            m_waters[place].push_back(m_draft.instantOf(m_rinses[place]->start, m_times));
            last = std::max(last, at(m_rinses[place]->start));
        }
        for (std::size_t link = 0; link < m_lengths.size(); ++link)
            m_drawn[link].push_back(m_lengths[link]);
        m_harm.push_back(harm);
        m_last.push_back(last);
    }

    Forecast said()
    {
        for (std::size_t place = 0; place < m_zones.size(); ++place)
            m_forecast.zones[place].development = spreadOf(m_developments[place]);
        for (std::size_t place = 0; place < m_rinses.size(); ++place)
            m_forecast.rinses.push_back({m_rinses[place]->id, spreadOf(m_waters[place])});
        const auto [least, most] = std::ranges::minmax(m_harm);
        const std::vector<double>& worth = most > least ? m_harm : m_last;
        for (std::size_t link = 0; link < m_drawn.size(); ++link)
            m_forecast.influences.push_back({applied(link), sharedVariance(m_drawn[link], worth)});
        std::ranges::stable_sort(m_forecast.influences, std::greater{}, &Influence::share);
        return std::move(m_forecast);
    }

    [[nodiscard]] TaskId applied(std::size_t link) const
    {
        const Point end = m_draft.links[link].end;
        const auto busy =
            std::ranges::find_if(m_draft.busy, [end](const Busy& each) { return each.end.point == end; });
        return busy->id;
    }

    const Question& m_question;
    const Draft& m_draft;
    temporal::Executor m_executor;
    std::vector<Time> m_planned;
    std::vector<Time> m_lengths;
    std::vector<Time> m_times;
    std::vector<const DraftedZone*> m_zones;
    std::vector<const Busy*> m_rinses;
    std::vector<std::vector<Seconds>> m_developments;
    std::vector<std::vector<Instant>> m_waters;
    std::vector<std::vector<double>> m_drawn;
    std::vector<double> m_harm;
    std::vector<double> m_last;
    Forecast m_forecast;
};

}  // namespace

Chance chanceOf(int inside, int runs)
{
    if (inside == runs)
        return {Chance::Kind::Always, 100};
    if (inside == 0)
        return {Chance::Kind::Never, 0};
    const auto hundredths = static_cast<int>(std::lround(100.0 * inside / runs));
    if (hundredths >= 100)
        return {Chance::Kind::AlmostAlways, hundredths};
    if (hundredths <= 0)
        return {Chance::Kind::HardlyEver, hundredths};
    return {Chance::Kind::Share, hundredths};
}

std::optional<Forecast> forecast(const Question& question, const Plan& plan, const ForecastOptions& options)
{
    if (std::ranges::any_of(plan->broken, [](const BrokenLimit& limit) { return !limit.already; }))
        return std::nullopt;
    const std::optional<PlannedNetwork> planned = plannedNetwork(question, plan);
    if (!planned)
        return std::nullopt;
    auto executor = temporal::Executor::of(planned->network);
    if (!executor)
        return std::nullopt;
    return Forecaster{question, planned->draft, *std::move(executor), planned->times}.make(options);
}

}  // namespace core::stagger
