#pragma once

#include "core/stagger/draft.h"

#include <vector>

namespace core::stagger {

/// The order of a plan as a network with uncertain lengths: the rules, and what
/// `times` decide: who does what after what, which looks are due and which are
/// made while applying. Every lag that is there because something was decided so
/// knows the lags that say it: its premises, which all hold at `times`.
class OrderNetwork {
public:
    OrderNetwork(const Draft& draft, const std::vector<Time>& times);

    [[nodiscard]] const temporal::UncertainNetwork& network() const { return m_network; }

    /// Of a lag of the network, by place; none for a rule.
    [[nodiscard]] const std::vector<Lag>& premisesOf(int lag) const
    {
        return m_premises[static_cast<std::size_t>(lag)];
    }

private:
    using Premises = std::vector<Lag>;
    using Clause = temporal::Clause;

    void add(const Lag& lag, Premises premises);
    void addDecided(const Clause& clause);
    void addLooks();
    void addClear(std::size_t look);
    void addGlance(std::size_t look, std::size_t apply);
    void addAway(std::size_t place);
    void addOrders();

    [[nodiscard]] const Busy& task(std::size_t place) const { return m_draft.busy[place]; }
    [[nodiscard]] Time at(const Moment& moment) const
    {
        return m_times[static_cast<std::size_t>(moment.point)] + moment.offset;
    }
    [[nodiscard]] bool holds(const Lag& lag) const { return temporal::holds(lag, m_times); }
    /// Then nothing binds them to each other.
    [[nodiscard]] bool haveHappened(std::size_t a, std::size_t b) const
    {
        return task(a).state != TaskState::Open && task(b).state != TaskState::Open;
    }
    [[nodiscard]] std::size_t handsOf(std::size_t place) const;
    [[nodiscard]] bool isMadeWhile(std::size_t look, std::size_t apply) const;
    [[nodiscard]] bool sharesHands(std::size_t a, std::size_t b) const;
    [[nodiscard]] bool sharesHead(std::size_t a, std::size_t b) const;
    [[nodiscard]] bool sharesBasin(std::size_t a, std::size_t b) const;
    [[nodiscard]] std::optional<Premises> apart(std::size_t a, std::size_t b) const;

    const Draft& m_draft;
    const std::vector<Time>& m_times;
    std::vector<std::size_t> m_present;  ///< Tasks that are made, by start, then id.
    temporal::UncertainNetwork m_network;
    std::vector<Premises> m_premises;
};

}  // namespace core::stagger
