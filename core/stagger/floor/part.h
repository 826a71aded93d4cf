#pragma once

#include "core/stagger/draft.h"
#include "core/temporal/search.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace core::stagger::floor {

/// What is to be done for one head.
struct HeadPlan {
    std::vector<PlannedTask> tasks;  ///< Those that are open or run.
    std::vector<BrokenLimit> broken;
    Worth worth;
};

/// Everybody's, by service; empty where nothing is planned yet.
using Standing = std::vector<HeadPlan>;
using Heads = std::vector<std::size_t>;

Worth operator+(const Worth& a, const Worth& b);
Worth operator-(const Worth& a, const Worth& b);

/// A question about one head and nobody else; its tasks are of service 0.
Question alone(const Question& whole, std::size_t head);

struct PartAnswer {
    std::optional<Plan> plan;
    bool complete = false;
    Worth bound;            ///< Of `plan`, where there is one.
    bool isBetter = false;  ///< Than what stood before.
    std::uint64_t conflicts = 0;
};

/// Some heads of a question, to be planned while the others stand as they are.
/// Tasks keep the ids that they have in the whole.
class Part {
public:
    /// The others take the crew as `standing` says.
    Part(const Question& whole, const Heads& heads, const Standing& standing);

    /// Its question, for changes: the other services are there, without coats.
    [[nodiscard]] Question& question() { return m_question; }

    /// Settles where tasks start.
    void pin(const std::vector<PlannedTask>& tasks, std::size_t coat);
    /// Only that many coats of each head are planned.
    void planCoats(std::size_t coats) { m_pins.coats = coats; }

    /// What has to be done, written down: the others' tasks alone where it has no heads.
    /// It must not outlive the part.
    [[nodiscard]] Draft draft() const { return draftOf(m_question, Strictness::OnlyFits, {}, m_pins); }

    /// The best plan within `limits`.
    [[nodiscard]] PartAnswer plan(Strictness strictness, const temporal::Limits& limits) const;
    /// Something better than `standing` has for these heads, if there is such.
    [[nodiscard]] PartAnswer improve(Strictness strictness, const temporal::Limits& limits,
                                     const Standing& standing) const;
    /// What `standing` is worth for these heads.
    [[nodiscard]] std::optional<Worth> worthOf(Strictness strictness, const Standing& standing) const;

private:
    Question m_question;
    Pins m_pins;
};

/// The tasks of `plan` and the limits that it passes, shared out among the heads that it has.
void put(const Plan& plan, const Heads& heads, Standing& standing);

}  // namespace core::stagger::floor
