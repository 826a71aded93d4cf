#include "core/service/json/value.h"
#include "core/service/rules/rules.h"

#include <algorithm>
#include <optional>

namespace core::service::rules {

using measure::Sentence;

namespace {

/// The zones of a coat and what each waits for, with those that can be done taken out.
class Waiting {
public:
    explicit Waiting(const Coat& coat)
        : m_coat{coat}
        , m_open(coat.zones.size(), true)
    {
    }

    /// Takes out every zone that waits for nothing open, until none is left that does.
    void takeOutDoable();

    /// Zones that wait for one another round a loop, or nothing. They are taken out.
    std::vector<std::size_t> takeOutLoop();

private:
    /// The first open zone that `zone` waits for.
    [[nodiscard]] std::optional<std::size_t> openBefore(std::size_t zone) const;

    const Coat& m_coat;
    std::vector<bool> m_open;
};

std::optional<std::size_t> Waiting::openBefore(std::size_t zone) const
{
    for (const After& after : m_coat.zones[zone].after)
        if (after.zone != zone && after.zone < m_open.size() && m_open[after.zone])
            return after.zone;
    return {};
}

void Waiting::takeOutDoable()
{
    bool changed = true;
    while (changed) {
        changed = false;
        for (std::size_t zone = 0; zone < m_open.size(); ++zone) {
            if (m_open[zone] && !openBefore(zone)) {
                m_open[zone] = false;
                changed = true;
            }
        }
    }
}

std::vector<std::size_t> Waiting::takeOutLoop()
{
    const auto first = std::ranges::find(m_open, true);
    if (first == m_open.end())
        return {};
    std::vector<std::size_t> path{static_cast<std::size_t>(first - m_open.begin())};
    while (true) {
        const std::size_t next = *openBefore(path.back());  // every zone still open waits for another
        const auto seen = std::ranges::find(path, next);
        if (seen == path.end()) {
            path.push_back(next);
            continue;
        }
        path.erase(path.begin(), seen);
        std::rotate(path.begin(), std::ranges::min_element(path), path.end());
        for (const std::size_t zone : path)
            m_open[zone] = false;
        return path;
    }
}

Sentence loopText(const Coat& coat, const std::vector<std::size_t>& loop)
{
    std::vector<Sentence> all;
    for (std::size_t i = 0; i < loop.size(); ++i)
        all.push_back(Sentence::worded("%1 waits for %2", json::quoted(coat.zones[loop[i]].name),
                                       json::quoted(coat.zones[loop[(i + 1) % loop.size()]].name)));
    return Sentence::worded("%1; take one of these out", Sentence::joined(all, ", "));
}

void checkEntries(const Coat& coat, std::size_t zone, const std::string& place, Findings& findings)
{
    const auto& after = coat.zones[zone].after;
    for (std::size_t i = 0; i < after.size(); ++i) {
        const std::string at = nth(place, i);
        if (after[i].zone >= coat.zones.size())
            findings.add(at, Sentence::worded("there is no such zone; name one of the coat"));
        else if (after[i].zone == zone)
            findings.add(at, Sentence::worded("a zone cannot wait for itself; take it out"));
        else if (std::any_of(after.begin(), after.begin() + static_cast<std::ptrdiff_t>(i),
                             [&](const After& earlier) { return earlier.zone == after[i].zone; }))
            findings.add(at,
                         Sentence::worded("%1 is listed twice; take one out",
                                          json::quoted(coat.zones[after[i].zone].name)));
    }
}

}  // namespace

void checkOrder(const Coat& coat, const std::string& place, Findings& findings)
{
    const std::string zones = inside(place, "zones");
    for (std::size_t zone = 0; zone < coat.zones.size(); ++zone)
        checkEntries(coat, zone, inside(nth(zones, zone), "after"), findings);
    Waiting waiting{coat};
    waiting.takeOutDoable();
    for (auto loop = waiting.takeOutLoop(); !loop.empty(); loop = waiting.takeOutLoop()) {
        findings.add(inside(nth(zones, loop.front()), "after"), loopText(coat, loop));
        waiting.takeOutDoable();
    }
}

}  // namespace core::service::rules
