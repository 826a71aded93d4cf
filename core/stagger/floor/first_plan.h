#pragma once

#include "core/stagger/floor/meter.h"
#include "core/stagger/floor/part.h"
#include "core/stagger/floor/pattern.h"

#include <optional>

namespace core::stagger::floor {

/// Puts one head after another where the crew still has time for it: those that
/// are promised soonest first, and again with whoever found no place put first.
class FirstPlan {
public:
    FirstPlan(const Question& question, Meter& meter);

    /// A plan for everybody, or nothing.
    std::optional<Standing> make();

    /// Takes `heads` out of `standing` and puts them in again, in that order; false, and
    /// nothing is changed, if they find no place.
    bool putAgain(const Heads& heads, Standing& standing);

    /// Afterwards, where there is nothing: the head that found no place even as the first.
    [[nodiscard]] std::optional<std::size_t> hopeless() const { return m_hopeless; }

private:
    bool placeAll(std::optional<std::size_t>& left);
    bool place(std::size_t head);
    bool placeAsWhole(std::size_t head);
    bool placeBefore(std::size_t head, Instant aim);
    bool placeFrom(std::size_t head, std::optional<Instant> from, const Standing& others);
    [[nodiscard]] std::optional<Plan> placed(const Part& part);
    bool placeExactly(std::size_t head, Strictness strictness);
    [[nodiscard]] std::optional<Instant> earliest(std::size_t head) const;
    [[nodiscard]] std::optional<Instant> aim(std::size_t head) const;
    [[nodiscard]] bool startsLate(std::size_t head) const;
    [[nodiscard]] bool keepsPromise(std::size_t head) const;
    [[nodiscard]] Instant endOf(std::size_t head) const;

    const Question& m_question;
    Meter& m_meter;
    Heads m_order;
    Standing m_nobody;  ///< What has begun and goes on.
    Standing m_standing;
    std::vector<std::optional<Seconds>> m_spans;  ///< How long a head takes if it has the crew to itself.
    std::vector<std::optional<std::vector<Pattern>>> m_patterns;
    std::optional<std::size_t> m_hopeless;
};

}  // namespace core::stagger::floor
