#include "tests/core/stagger/give_by_trying.h"

#include "core/temporal/controllability.h"

#include <algorithm>
#include <functional>
#include <tuple>

namespace core::stagger {
namespace {

using temporal::Lag;
using temporal::Time;

Time secondsOf(Seconds seconds)
{
    return static_cast<Time>(seconds.count());
}

/// Of one zone at given times.
struct ZoneTimes {
    Time start = 0;
    std::optional<Time> look;  ///< Where it is due.
};

struct Times {
    std::vector<ZoneTimes> zones;
    Time mix = 0;
    Time water = 0;
};

struct Job {
    Time start;
    Time end;
    temporal::Point startPoint;
    temporal::Point endPoint;  ///< With `endOffset`: where it ends.
    Time endOffset;
    std::optional<std::size_t> lookAt;   ///< A look at this zone.
    std::optional<std::size_t> applies;  ///< The application of this zone.
    bool rinses = false;
    bool mixes = false;
};

class Trial {
public:
    explicit Trial(const service::Service& service)
        : m_service{service}
        , m_coat{service.coats.front()}
        , m_mix{secondsOf(m_coat.bowls.front().mix)}
        , m_rinse{secondsOf(m_coat.groups.front().rinse)}
    {
    }

    std::optional<TriedOut> best()
    {
        tryMix();
        std::ranges::sort(m_found, {}, &Found::rank);
        for (int give = 10; give >= 0; --give) {
            for (const Found& found : m_found) {
                if (holds(found.times, give))
                    return TriedOut{10 * give, found.worth, startsOf(found.times)};
            }
        }
        return {};
    }

private:
    static constexpr Time horizon = 20;

    struct Found {
        Times times;
        Worth worth;
        std::tuple<std::int64_t, Seconds, Seconds, std::vector<int>> rank;
    };

    const service::Zone& zone(std::size_t place) const { return m_coat.zones[place]; }
    Time usual(std::size_t place) const { return secondsOf(zone(place).apply.usual); }
    Time developed(const Times& times, std::size_t place) const
    {
        return times.water - times.zones[place].start - usual(place);
    }

    void tryMix()
    {
        m_times.zones.resize(m_coat.zones.size());
        for (m_times.mix = 0; m_times.mix <= (m_mix > 0 ? horizon : 0); ++m_times.mix)
            tryZone(0);
    }

    void tryZone(std::size_t place)
    {
        if (place == m_coat.zones.size()) {
            for (m_times.water = 0; m_times.water <= horizon; ++m_times.water) {
                if (windowsHold())
                    tryLook(0);
            }
            return;
        }
        for (Time& start = m_times.zones[place].start = m_times.mix + m_mix; start <= horizon; ++start)
            tryZone(place + 1);
    }

    bool windowsHold() const
    {
        for (std::size_t place = 0; place < m_coat.zones.size(); ++place) {
            const Time time = developed(m_times, place);
            if (time < 0 || time < secondsOf(zone(place).develop.least)
                || time > secondsOf(zone(place).develop.most))
                return false;
        }
        return true;
    }

    void tryLook(std::size_t place)
    {
        if (place == m_coat.zones.size()) {
            if (!sharings(m_times).empty())
                note();
            return;
        }
        ZoneTimes& times = m_times.zones[place];
        times.look.reset();
        const auto& looks = zone(place).looks;
        if (!looks || secondsOf(looks->first + looks->length) > developed(m_times, place)) {
            tryLook(place + 1);
            return;
        }
        const Time ended = times.start + usual(place);
        const Time middle = ended + secondsOf(looks->first);
        const Time tolerance = secondsOf(looks->tolerance);
        for (Time look = std::max(ended, middle - tolerance); look <= middle + tolerance; ++look) {
            if (look + secondsOf(looks->length) > m_times.water)
                break;
            times.look = look;
            tryLook(place + 1);
        }
        times.look.reset();
    }

    void note()
    {
        Found found{m_times, {}, {}};
        for (std::size_t place = 0; place < m_coat.zones.size(); ++place) {
            const Time past = developed(m_times, place) - secondsOf(zone(place).develop.target);
            found.worth.deviation.hundredthSeconds +=
                past > 0 ? past * zone(place).over.hundredths : -past * zone(place).under.hundredths;
            if (m_mix > 0)
                found.worth.staleness += Seconds{m_times.zones[place].start - m_times.mix - m_mix};
        }
        found.worth.waste = Seconds{m_times.water + m_rinse};
        found.rank = {found.worth.deviation.hundredthSeconds, found.worth.waste, found.worth.staleness,
                      startsOf(m_times)};
        m_found.push_back(std::move(found));
    }

    std::vector<int> startsOf(const Times& times) const
    {
        std::vector<int> starts;
        for (const ZoneTimes& zone : times.zones) {
            starts.push_back(zone.start);
            if (zone.look)
                starts.push_back(*zone.look);
        }
        if (m_mix > 0)
            starts.push_back(times.mix);
        starts.push_back(times.water);
        return starts;
    }

    // Points: 0 the origin, then for each zone its start, its end and its look, then the mix and the water.
    static temporal::Point startOf(std::size_t place) { return static_cast<temporal::Point>(3 * place + 1); }
    temporal::Point mixPoint() const { return startOf(m_coat.zones.size()); }
    temporal::Point waterPoint() const { return mixPoint() + 1; }

    std::vector<Job> jobsOf(const Times& times) const
    {
        std::vector<Job> jobs;
        for (std::size_t place = 0; place < m_coat.zones.size(); ++place) {
            const ZoneTimes& at = times.zones[place];
            jobs.push_back(
                {at.start, at.start + usual(place), startOf(place), startOf(place) + 1, 0, {}, place});
            if (!at.look)
                continue;
            const Time length = secondsOf(zone(place).looks->length);
            jobs.push_back(
                {*at.look, *at.look + length, startOf(place) + 2, startOf(place) + 2, length, place, {}});
        }
        if (m_mix > 0)
            jobs.push_back(
                {times.mix, times.mix + m_mix, mixPoint(), mixPoint(), m_mix, {}, {}, false, true});
        jobs.push_back(
            {times.water, times.water + m_rinse, waterPoint(), waterPoint(), m_rinse, {}, {}, true});
        return jobs;
    }

    static bool within(const Job& look, const Job& apply)
    {
        return look.lookAt && apply.applies && apply.start <= look.start && look.start < apply.end;
    }

    /// Whether `a` and `b` must not overlap, on the same hands or not.
    static bool excluded(const Job& a, const Job& b, bool sameHands)
    {
        if ((a.rinses || b.rinses) && !a.mixes && !b.mixes)
            return true;
        if (!sameHands || (a.lookAt && b.lookAt))
            return false;
        return !within(a, b) && !within(b, a);
    }

    using Sharing = std::vector<std::size_t>;

    static bool canDo(const std::vector<Job>& jobs, const Sharing& hands)
    {
        for (std::size_t a = 0; a < jobs.size(); ++a) {
            bool glance = false;
            bool byThose = false;
            for (std::size_t b = 0; b < jobs.size(); ++b) {
                if (a == b)
                    continue;
                const bool overlap = jobs[a].start < jobs[b].end && jobs[b].start < jobs[a].end;
                if (overlap && excluded(jobs[a], jobs[b], hands[a] == hands[b]))
                    return false;
                if (within(jobs[a], jobs[b])) {
                    glance = true;
                    byThose = byThose || hands[a] == hands[b];
                }
            }
            if (glance && !byThose)
                return false;
        }
        return true;
    }

    std::vector<Sharing> sharings(const Times& times) const
    {
        const std::vector<Job> jobs = jobsOf(times);
        const std::size_t count = m_service.crew.hands.size();
        std::vector<Sharing> all;
        Sharing hands(jobs.size(), 0);
        while (true) {
            if (canDo(jobs, hands))
                all.push_back(hands);
            std::size_t place = 0;
            while (place < hands.size() && ++hands[place] == count)
                hands[place++] = 0;
            if (place == hands.size())
                return all;
        }
    }

    bool holds(const Times& times, int give) const
    {
        if (give == 0)
            return true;
        const std::vector<Sharing> all = sharings(times);
        return std::ranges::any_of(all, [&](const Sharing& hands) {
            return temporal::objectionsTo(networkOf(times, hands, give), pointsOf(times)).empty();
        });
    }

    std::vector<Time> pointsOf(const Times& times) const
    {
        std::vector<Time> points(static_cast<std::size_t>(waterPoint()) + 1, 0);
        for (std::size_t place = 0; place < m_coat.zones.size(); ++place) {
            const auto start = static_cast<std::size_t>(startOf(place));
            points[start] = times.zones[place].start;
            points[start + 1] = times.zones[place].start + usual(place);
            points[start + 2] = times.zones[place].look.value_or(0);
        }
        points[static_cast<std::size_t>(mixPoint())] = m_mix > 0 ? times.mix : 0;
        points[static_cast<std::size_t>(waterPoint())] = times.water;
        return points;
    }

    temporal::UncertainNetwork networkOf(const Times& times, const Sharing& hands, int give) const
    {
        temporal::UncertainNetwork network;
        network.points = waterPoint() + 1;
        std::vector<Lag>& lags = network.lags;
        const auto notBefore = [&lags](temporal::Point later, temporal::Point earlier, Time by) {
            lags.push_back({later, earlier, -by});
        };
        for (temporal::Point point = 1; point < network.points; ++point)
            notBefore(point, 0, 0);
        for (std::size_t place = 0; place < m_coat.zones.size(); ++place) {
            const service::Zone& given = zone(place);
            const temporal::Point start = startOf(place);
            const temporal::Point end = start + 1;
            const auto share = [give](Seconds room) {
                return static_cast<Time>((room.count() * give + 9) / 10);  // Rounded outwards.
            };
            const Time least = usual(place) - share(given.apply.usual - given.apply.quickest);
            const Time most = usual(place) + share(given.apply.slowest - given.apply.usual);
            if (least < most) {
                network.links.push_back({start, end, least, usual(place), most});
            } else {
                lags.push_back({start, end, most});
                notBefore(end, start, least);
            }
            notBefore(start, mixPoint(), m_mix);
            notBefore(waterPoint(), end, std::max(Time{0}, secondsOf(given.develop.least)));
            lags.push_back({end, waterPoint(), secondsOf(given.develop.most)});
            if (given.looks)
                writeLook(times, place, network);
        }
        writeOrders(jobsOf(times), hands, network);
        return network;
    }

    void writeLook(const Times& times, std::size_t place, temporal::UncertainNetwork& network) const
    {
        const service::Looks& looks = *zone(place).looks;
        const temporal::Point end = startOf(place) + 1;
        const temporal::Point look = end + 1;
        const Time due = secondsOf(looks.first + looks.length);
        if (!times.zones[place].look) {
            network.lags.push_back({end, waterPoint(), due - 1});
            return;
        }
        const Time first = secondsOf(looks.first);
        const Time tolerance = secondsOf(looks.tolerance);
        network.lags.push_back({waterPoint(), end, -due});
        network.lags.push_back({end, look, first + tolerance});
        network.lags.push_back({look, end, -std::max(Time{0}, first - tolerance)});
        network.lags.push_back({waterPoint(), look, -secondsOf(looks.length)});
    }

    static bool byThoseWhoApply(const std::vector<Job>& jobs, const Sharing& hands, std::size_t look)
    {
        for (std::size_t apply = 0; apply < jobs.size(); ++apply) {
            if (within(jobs[look], jobs[apply]) && hands[look] == hands[apply])
                return true;
        }
        return false;
    }

    static void writeOrders(const std::vector<Job>& jobs, const Sharing& hands,
                            temporal::UncertainNetwork& network)
    {
        for (std::size_t a = 0; a < jobs.size(); ++a) {
            for (std::size_t b = 0; b < jobs.size(); ++b) {
                if (a == b)
                    continue;
                if (within(jobs[a], jobs[b]) && hands[a] == hands[b]) {
                    network.lags.push_back({jobs[a].startPoint, jobs[b].startPoint, 0});
                    network.lags.push_back({jobs[b].endPoint, jobs[a].startPoint, jobs[b].endOffset - 1});
                } else if (byThoseWhoApply(jobs, hands, a)) {
                    // It may run into another application, or out of it.
                } else if (jobs[a].lookAt && jobs[b].applies && jobs[a].start < jobs[b].start) {
                    network.lags.push_back({jobs[b].startPoint, jobs[a].startPoint, -1});
                } else if (jobs[a].lookAt && jobs[b].applies && jobs[a].start >= jobs[b].end) {
                    network.lags.push_back({jobs[a].startPoint, jobs[b].endPoint, -jobs[b].endOffset});
                }
                if (jobs[a].end <= jobs[b].start && excluded(jobs[a], jobs[b], hands[a] == hands[b]))
                    network.lags.push_back({jobs[b].startPoint, jobs[a].endPoint, -jobs[a].endOffset});
            }
        }
    }

    const service::Service& m_service;
    const service::Coat& m_coat;
    Time m_mix;
    Time m_rinse;
    Times m_times;
    std::vector<Found> m_found;
};

}  // namespace

std::optional<TriedOut> giveByTrying(const service::Service& service)
{
    return Trial{service}.best();
}

}  // namespace core::stagger
