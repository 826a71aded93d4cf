#pragma once

#include "core/stagger/floor/meter.h"
#include "core/stagger/floor/part.h"

#include <optional>
#include <vector>

namespace core::stagger::floor {

/// What no plan of a question can be better than. The heads are split into
/// groups, and each group is planned as if it had the whole crew to itself: what
/// a plan of everybody does for a group is a plan of that group, so it is worth
/// no less than the group's best; and as sums keep the order of worths level by
/// level, the sum of the bests bounds the whole.
class Bound {
public:
    explicit Bound(const Question& question)
        : m_question{question}
    {
    }

    /// Every head on its own.
    void begin(Meter& meter);
    [[nodiscard]] Worth total() const;
    [[nodiscard]] Worth of(std::size_t head) const { return m_alone[head]; }

    /// Takes two groups together, of those that are furthest from their bound in
    /// `standing`; false if there are none left that it would make sense to take.
    bool tighten(Meter& meter, const Standing& standing);

private:
    struct Group {
        Heads heads;
        Worth worth;
    };
    [[nodiscard]] Worth alone(std::size_t head, Meter& meter) const;
    [[nodiscard]] std::optional<Worth> together(const Heads& heads, Meter& meter) const;
    [[nodiscard]] bool mayBeTaken(const Heads& heads) const;

    const Question& m_question;
    std::vector<Worth> m_alone;
    std::vector<Group> m_groups;
    std::vector<Heads> m_tried;
};

}  // namespace core::stagger::floor
