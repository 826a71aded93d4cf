#pragma once

#include <cstddef>
#include <cstdint>
#include <unordered_map>
#include <vector>

/// The general problem behind a plan, without a word of the trade: time points,
/// lags between them, clauses over lags, and a price for stretching a lag. What
/// it is and why the search is exact stands in docs/method.md.
namespace core::temporal {

/// Seconds from the origin of the problem.
using Time = std::int32_t;
/// Any time of a problem lies within +/- this; two of them can be added.
constexpr Time farTime = 1 << 28;

/// A time point. 0 is the origin, which stands still at time 0.
using Point = int;
constexpr Point origin = 0;

/// `to` comes at most `most` after `from`: t(to) - t(from) <= most. With a
/// negative `most` it is `from` that comes at least that long after `to`.
struct Lag {
    Point from = 0;
    Point to = 0;
    Time most = 0;

    friend bool operator==(const Lag&, const Lag&) = default;
};

/// Exactly what holds where `lag` does not; times are whole.
constexpr Lag negation(const Lag& lag)
{
    return {lag.to, lag.from, -lag.most - 1};
}

/// A lag that may hold or not: a variable of the search (`code / 2`) and its
/// sign (`code % 2`, 1 for the negation).
struct Literal {
    int code = -2;

    [[nodiscard]] constexpr int variable() const { return code >> 1; }
    [[nodiscard]] constexpr Literal operator~() const { return {code ^ 1}; }
    [[nodiscard]] constexpr std::size_t index() const { return static_cast<std::size_t>(code); }
    friend constexpr bool operator==(Literal, Literal) = default;
};

/// Of a lag that always holds.
constexpr Literal noLiteral{-2};

using Clause = std::vector<Lag>;

/// `times` by point.
inline bool holds(const Lag& lag, const std::vector<Time>& times)
{
    return times[static_cast<std::size_t>(lag.to)] - times[static_cast<std::size_t>(lag.from)] <= lag.most;
}

/// Gives every lag one literal, and its negation the opposite one.
class LiteralTable {
public:
    Literal of(const Lag& lag);
    [[nodiscard]] const Lag& lag(Literal literal) const { return m_lags[literal.index()]; }
    [[nodiscard]] int variables() const { return static_cast<int>(m_lags.size() / 2); }

private:
    struct Hash {
        std::size_t operator()(const Lag& lag) const
        {
            std::uint64_t mixed = static_cast<std::uint32_t>(lag.from) * 0x9E3779B97F4A7C15ULL;
            mixed = (mixed ^ static_cast<std::uint32_t>(lag.to)) * 0xC2B2AE3D27D4EB4FULL;
            mixed = (mixed ^ static_cast<std::uint32_t>(lag.most)) * 0x165667B19E3779F9ULL;
            return static_cast<std::size_t>(mixed ^ (mixed >> 32));
        }
    };
    std::unordered_map<Lag, int, Hash> m_codes;
    std::vector<Lag> m_lags;
};

}  // namespace core::temporal
