#pragma once

#include "core/temporal/lag.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace core::temporal {

/// Which literals are decided, in which order and why: the trail of a
/// conflict-driven search (Marques-Silva, Sakallah 1999; Moskewicz et al. 2001).
/// Knows nothing of time: reasons that come from the network are asked for
/// through `TheoryReasons`.
class Clauses {
public:
    enum class Source { Given, Learned };

    /// Makes room for variables up to `count`.
    void growTo(int count);

    [[nodiscard]] bool isTrue(Literal literal) const { return m_values[literal.index()] > 0; }
    [[nodiscard]] bool isFalse(Literal literal) const { return m_values[literal.index()] < 0; }
    [[nodiscard]] bool isOpen(Literal literal) const { return m_values[literal.index()] == 0; }
    [[nodiscard]] int variables() const { return static_cast<int>(m_levels.size()); }
    [[nodiscard]] int level() const { return static_cast<int>(m_levelStarts.size()); }
    [[nodiscard]] int levelOf(Literal literal) const
    {
        return m_levels[static_cast<std::size_t>(literal.variable())];
    }
    [[nodiscard]] const std::vector<Literal>& trail() const { return m_trail; }
    /// How often it was in conflicts, the last ones counting most: those of the last few count about 1 each.
    [[nodiscard]] double activity(Literal literal) const
    {
        return m_activities[static_cast<std::size_t>(literal.variable())] / m_bump;
    }
    /// True if the literal was found by the network, at its moment `theoryMoment`.
    [[nodiscard]] bool isFromTheory(Literal literal) const { return reasonOf(literal).theoryMoment >= 0; }

    void decide(Literal literal);
    /// The network says so, for the reason it had when it had seen `moment` lags.
    void assignByTheory(Literal literal, int moment);

    /// Adds a clause whatever is decided already. Returns false if all its
    /// literals are false; `conflict()` is then that clause.
    bool addClause(std::vector<Literal> literals, Source source);

    /// Draws the conclusions of all clauses. False on a conflict.
    bool propagate();
    [[nodiscard]] const std::vector<Literal>& conflict() const { return m_conflict; }

    /// Takes back everything above `level`.
    void backTo(int level);

    /// Turns a set of literals that are all false into a clause that asserts one
    /// literal after going back; adds and asserts it. `explain(literal, moment,
    /// reasons)` appends the true literals from which the network drew `literal`.
    /// Returns the level gone back to, or -1 if the conflict needs no decision.
    template <class Explain>
    int learn(const std::vector<Literal>& falseLiterals, const Explain& explain);

    [[nodiscard]] int highestLevel(const std::vector<Literal>& literals) const;

private:
    struct Stored {
        std::vector<Literal> literals;
        Source source = Source::Given;
        int levels = 0;  ///< How many decision levels it spanned when learned; small is good.
    };
    struct Reason {
        int clause = -1;
        int theoryMoment = -1;
    };

    [[nodiscard]] const Reason& reasonOf(Literal literal) const
    {
        return m_reasons[static_cast<std::size_t>(literal.variable())];
    }
    void assign(Literal literal, Reason reason);
    bool propagateOne(Literal literal);
    void watch(std::size_t clause);
    void bump(Literal literal);
    int assertLearned(std::vector<Literal> clause);
    void forgetSome();
    [[nodiscard]] int spanned(const std::vector<Literal>& literals) const;
    void orderForWatching(std::vector<Literal>& literals) const;

    std::vector<std::int8_t> m_values;  ///< By literal.
    std::vector<int> m_levels;          ///< By variable.
    std::vector<Reason> m_reasons;
    std::vector<double> m_activities;
    std::vector<char> m_seen;
    double m_bump = 1.0;

    std::vector<Literal> m_trail;
    std::vector<std::size_t> m_levelStarts;
    std::size_t m_propagated = 0;

    std::vector<Stored> m_clauses;
    std::vector<std::vector<int>> m_watchers;  ///< By literal that became false.
    std::vector<Literal> m_conflict;
    std::size_t m_learned = 0;
    std::size_t m_mostLearned = 2'000;
};

template <class Explain>
int Clauses::learn(const std::vector<Literal>& falseLiterals, const Explain& explain)
{
    const int conflictLevel = highestLevel(falseLiterals);
    if (conflictLevel == 0)
        return -1;
    backTo(conflictLevel);

    // Resolve backwards along the trail until one literal of this level is left
    // (the first unique implication point).
    std::vector<Literal> learned;
    std::vector<Literal> marked;
    int open = 0;
    const auto meet = [&](Literal isFalse) {
        char& seen = m_seen[static_cast<std::size_t>(isFalse.variable())];
        if (seen != 0 || levelOf(isFalse) == 0)
            return;
        seen = 1;
        marked.push_back(isFalse);
        bump(isFalse);
        if (levelOf(isFalse) == conflictLevel)
            ++open;
        else
            learned.push_back(isFalse);
    };
    for (const Literal literal : falseLiterals)
        meet(literal);

    std::size_t place = m_trail.size();
    std::vector<Literal> reasons;
    while (true) {
        while (m_seen[static_cast<std::size_t>(m_trail[place - 1].variable())] == 0
               || levelOf(m_trail[place - 1]) != conflictLevel)
            --place;
        const Literal pivot = m_trail[--place];
        if (--open == 0) {
            learned.insert(learned.begin(), ~pivot);
            break;
        }
        const Reason& reason = reasonOf(pivot);
        if (reason.theoryMoment >= 0) {
            reasons.clear();
            explain(pivot, reason.theoryMoment, reasons);
            for (const Literal literal : reasons)
                meet(~literal);
            continue;
        }
        for (const Literal literal : m_clauses[static_cast<std::size_t>(reason.clause)].literals) {
            if (!(literal == pivot))
                meet(literal);
        }
    }
    for (const Literal literal : marked)
        m_seen[static_cast<std::size_t>(literal.variable())] = 0;
    m_bump *= 1.0 / 0.95;
    return assertLearned(std::move(learned));
}

}  // namespace core::temporal
