#pragma once

#include "tests/oracle/service_maker.h"

#include <vector>

/// A question laid out flat in whole units of time, as a constraint solver wants it.
namespace oracle {

/// Whole units since the origin, or whole units long.
using Units = int;

struct Row {
    core::stagger::TaskId id;
    Units length = 0;
    core::stagger::TaskState state = core::stagger::TaskState::Open;
    Units begun = 0;  ///< Where it is not open: when it was started.

    [[nodiscard]] bool isOpen() const { return state == core::stagger::TaskState::Open; }
};

class Rows {
public:
    Rows(const core::stagger::Question& question, std::optional<Seconds> grid);

    [[nodiscard]] const core::stagger::Question& question() const { return m_question; }
    [[nodiscard]] const core::service::Crew& crew() const { return m_question.services.front().crew; }
    [[nodiscard]] const std::vector<Row>& rows() const { return m_rows; }
    [[nodiscard]] const core::service::Coat& coatOf(const Row& row) const;
    [[nodiscard]] const core::service::Zone& zoneOf(const Row& row) const;

    /// The place of a task, or -1 where there is no such task, or nothing is left to be said of it.
    [[nodiscard]] int find(const core::stagger::TaskId& id) const;

    [[nodiscard]] Units units(Seconds length) const;
    [[nodiscard]] Units unitsAt(Instant moment) const { return units(moment - m_origin); }
    [[nodiscard]] Instant instantAt(Units moment) const { return m_origin + moment * m_unit; }
    [[nodiscard]] Units horizon() const { return m_horizon; }

    /// What has happened is part of the question.
    [[nodiscard]] bool hasFacts() const { return !m_question.progress.empty(); }
    /// An application of that coat has been begun.
    [[nodiscard]] bool isBegun(std::size_t head, std::size_t coat) const;
    /// Every longest gap between coats that is still to be kept, as the place of the head and of the coat
    /// before.
    [[nodiscard]] std::vector<std::pair<std::size_t, std::size_t>> gaps() const;
    /// A give is asked for, and lengths are uncertain.
    [[nodiscard]] bool seeksGive() const;
    /// By how much all lengths together may differ, if a give is asked for.
    [[nodiscard]] Seconds uncertainty() const;

    [[nodiscard]] std::optional<Instant> notBefore(std::size_t head) const;
    [[nodiscard]] std::optional<Instant> aimedEnd(std::size_t head) const;
    [[nodiscard]] bool startsLate(std::size_t head) const;
    /// Nothing but one bound ties the plan to the clock: it may be pushed against it without loss.
    [[nodiscard]] bool canBePushed() const;

private:
    [[nodiscard]] std::vector<Instant> moments() const;
    [[nodiscard]] std::vector<Seconds> lengths() const;
    [[nodiscard]] Seconds longestPlan() const;
    [[nodiscard]] bool hasLooks() const;
    void addRow(const core::stagger::TaskId& id);

    const core::stagger::Question& m_question;
    std::vector<Row> m_rows;
    Instant m_origin;
    Seconds m_unit{1};
    Units m_horizon = 0;
};

}  // namespace oracle
