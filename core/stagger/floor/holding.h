#pragma once

#include "core/stagger/floor/meter.h"
#include "core/stagger/floor/part.h"

#include <functional>
#include <optional>

/// Plans of several heads that hold whatever applying takes: an order is made for lengths
/// above the usual ones, and the times of that order are then found anew, the best for usual
/// lengths with which it holds.
namespace core::stagger::floor {

/// The question with every application that is still open taking so many tenths more of the room
/// between its usual and its slowest length as a rule. No limit of it is broken.
Question slowed(const Question& question, int tenths);

/// Whether a plan holds further, or as far and is worth more.
bool isBetter(const Plan& plan, const Plan& other);

/// The best plan of `question` in the order of `ordered`, with the greatest give that this order can have.
/// That no other order has a greater is known only of the whole give. `ordered` is a plan of `slow`, which
/// differs from `question` in usual lengths only. Nothing where the give would be less than `least` tenths
/// (at least 1), where limits are broken, or where other lengths change which looks there are.
std::optional<Plan> heldInOrder(const Question& question, const Question& slow, const Plan& ordered,
                                int least);

/// Seeks the plan that holds furthest and, of those, is worth the most.
class Holding {
public:
    /// `question`, `budget` and `meter` must outlive it.
    Holding(const Question& question, const Budget& budget, Meter& meter)
        : m_question{question}
        , m_budget{budget}
        , m_meter{meter}
    {
    }

    /// Looks at `usual`, a plan for usual lengths that stands so, and at first plans for lengths above
    /// those, for each of which there are so many conflicts. False if none has any give.
    bool begin(const Standing& standing, const Plan& usual, std::uint64_t conflicts);

    /// Makes the order of the best better, until the budget is over or nothing is. Nothing that holds as far
    /// is worth less than `known`.
    void improve(const Worth& known);

    /// After `begin`, if that found something.
    [[nodiscard]] const Plan& best() const { return *m_best; }

private:
    bool take(const Question& slow, const Plan& ordered);
    void lookAt(int tenths, std::uint64_t conflicts);

    const Question& m_question;
    const Budget& m_budget;
    Meter& m_meter;
    std::optional<Plan> m_best;
    Question m_slow;      ///< The one that the best has its order from.
    Standing m_standing;  ///< The plan of that.
};

}  // namespace core::stagger::floor
