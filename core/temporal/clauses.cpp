#include "core/temporal/clauses.h"

#include <algorithm>
#include <cassert>

namespace core::temporal {

void Clauses::growTo(int count)
{
    const auto size = static_cast<std::size_t>(count);
    m_values.resize(2 * size, 0);
    m_watchers.resize(2 * size);
    m_levels.resize(size, 0);
    m_reasons.resize(size);
    m_activities.resize(size, 0.0);
    m_seen.resize(size, 0);
}

void Clauses::assign(Literal literal, Reason reason)
{
    assert(isOpen(literal));
    m_values[literal.index()] = 1;
    m_values[(~literal).index()] = -1;
    m_levels[static_cast<std::size_t>(literal.variable())] = level();
    m_reasons[static_cast<std::size_t>(literal.variable())] = reason;
    m_trail.push_back(literal);
}

void Clauses::decide(Literal literal)
{
    m_levelStarts.push_back(m_trail.size());
    assign(literal, {});
}

void Clauses::assignByTheory(Literal literal, int moment)
{
    assign(literal, {.clause = -1, .theoryMoment = moment});
}

/// Open literals first, then the ones decided last: the two that a clause has to
/// watch so that going back never leaves it unwatched.
void Clauses::orderForWatching(std::vector<Literal>& literals) const
{
    const auto rank = [this](Literal literal) {
        if (!isFalse(literal))
            return 1 << 30;
        return levelOf(literal);
    };
    std::ranges::stable_sort(literals, [&](Literal a, Literal b) { return rank(a) > rank(b); });
}

bool Clauses::addClause(std::vector<Literal> literals, Source source)
{
    orderForWatching(literals);
    if (literals.empty() || isFalse(literals.front())) {
        m_conflict = literals;
        if (literals.size() < 2)
            return false;
    }
    const std::size_t place = m_clauses.size();
    const bool unit = literals.size() == 1 || isFalse(literals[1]);
    const Literal first = literals.front();
    const int levels = source == Source::Learned ? spanned(literals) : 0;
    m_learned += source == Source::Learned ? 1U : 0U;
    m_clauses.push_back({std::move(literals), source, levels});
    if (m_clauses[place].literals.size() > 1)
        watch(place);
    if (isFalse(first))
        return false;
    if (unit && isOpen(first))
        assign(first, {.clause = static_cast<int>(place), .theoryMoment = -1});
    return true;
}

void Clauses::watch(std::size_t clause)
{
    for (const std::size_t place : {0U, 1U})
        m_watchers[m_clauses[clause].literals[place].index()].push_back(static_cast<int>(clause));
}

bool Clauses::propagate()
{
    while (m_propagated < m_trail.size()) {
        if (!propagateOne(~m_trail[m_propagated++])) {
            m_propagated = m_trail.size();
            return false;
        }
    }
    return true;
}

bool Clauses::propagateOne(Literal becameFalse)
{
    std::vector<int>& watchers = m_watchers[becameFalse.index()];
    std::size_t kept = 0;
    for (std::size_t place = 0; place < watchers.size(); ++place) {
        const int index = watchers[place];
        std::vector<Literal>& literals = m_clauses[static_cast<std::size_t>(index)].literals;
        if (literals[0] == becameFalse)
            std::swap(literals[0], literals[1]);
        const auto other = isTrue(literals[0])
            ? literals.end()
            : std::find_if(literals.begin() + 2, literals.end(), [this](Literal l) { return !isFalse(l); });
        if (!isTrue(literals[0]) && other != literals.end()) {
            std::swap(literals[1], *other);
            m_watchers[literals[1].index()].push_back(index);
            continue;
        }
        watchers[kept++] = index;
        if (isTrue(literals[0]))
            continue;
        if (isFalse(literals[0])) {
            m_conflict = literals;
            while (++place < watchers.size())
                watchers[kept++] = watchers[place];
            watchers.resize(kept);
            return false;
        }
        assign(literals[0], {.clause = index, .theoryMoment = -1});
    }
    watchers.resize(kept);
    return true;
}

void Clauses::backTo(int target)
{
    if (level() <= target)
        return;
    const std::size_t start = m_levelStarts[static_cast<std::size_t>(target)];
    while (m_trail.size() > start) {
        m_values[m_trail.back().index()] = 0;
        m_values[(~m_trail.back()).index()] = 0;
        m_trail.pop_back();
    }
    m_levelStarts.resize(static_cast<std::size_t>(target));
    m_propagated = std::min(m_propagated, start);
}

void Clauses::bump(Literal literal)
{
    double& activity = m_activities[static_cast<std::size_t>(literal.variable())];
    activity += m_bump;
    if (activity < 1e100)
        return;
    for (double& each : m_activities)
        each *= 1e-100;
    m_bump *= 1e-100;
}

int Clauses::highestLevel(const std::vector<Literal>& literals) const
{
    int highest = 0;
    for (const Literal literal : literals)
        highest = std::max(highest, levelOf(literal));
    return highest;
}

/// At how many levels the literals were decided; of an open one, the last time it was.
int Clauses::spanned(const std::vector<Literal>& literals) const
{
    std::vector<int> levels;
    levels.reserve(literals.size());
    for (const Literal literal : literals)
        levels.push_back(levelOf(literal));
    std::ranges::sort(levels);
    return static_cast<int>(std::unique(levels.begin(), levels.end()) - levels.begin());
}

/// `clause` has its asserting literal first. Goes back to the highest level of the rest.
int Clauses::assertLearned(std::vector<Literal> clause)
{
    int target = 0;
    for (std::size_t place = 1; place < clause.size(); ++place)
        target = std::max(target, levelOf(clause[place]));
    backTo(target);
    if (m_learned >= m_mostLearned)
        forgetSome();
    [[maybe_unused]] const bool sound = addClause(std::move(clause), Source::Learned);
    assert(sound && "a learned clause asserts its first literal");
    return target;
}

/// Forgets the half of the learned clauses that spanned most levels, except those
/// that are somebody's reason. Places move, so reasons and watchers are renamed.
void Clauses::forgetSome()
{
    std::vector<char> needed(m_clauses.size(), 0);
    for (const Literal literal : m_trail) {
        if (reasonOf(literal).clause >= 0)
            needed[static_cast<std::size_t>(reasonOf(literal).clause)] = 1;
    }
    std::vector<int> spans;
    for (const Stored& stored : m_clauses) {
        if (stored.source == Source::Learned)
            spans.push_back(stored.levels);
    }
    std::ranges::nth_element(spans, spans.begin() + static_cast<std::ptrdiff_t>(spans.size() / 2));
    const int limit = std::max(spans[spans.size() / 2], 3);

    std::vector<int> renamed(m_clauses.size(), -1);
    std::vector<Stored> kept;
    m_learned = 0;
    for (std::size_t place = 0; place < m_clauses.size(); ++place) {
        Stored& stored = m_clauses[place];
        if (stored.source == Source::Learned && stored.levels >= limit && needed[place] == 0)
            continue;
        renamed[place] = static_cast<int>(kept.size());
        m_learned += stored.source == Source::Learned ? 1U : 0U;
        kept.push_back(std::move(stored));
    }
    m_clauses = std::move(kept);
    for (const Literal literal : m_trail) {
        int& clause = m_reasons[static_cast<std::size_t>(literal.variable())].clause;
        clause = clause < 0 ? -1 : renamed[static_cast<std::size_t>(clause)];
    }
    for (std::vector<int>& watchers : m_watchers) {
        std::erase_if(watchers, [&](int clause) { return renamed[static_cast<std::size_t>(clause)] < 0; });
        for (int& clause : watchers)
            clause = renamed[static_cast<std::size_t>(clause)];
    }
    m_mostLearned = std::max(m_mostLearned + 200, 2 * m_learned);
}

}  // namespace core::temporal
