#include "core/temporal/lag.h"

namespace core::temporal {

Literal LiteralTable::of(const Lag& lag)
{
    // A lag and its negation share a variable: the one that leaves the lower point is the positive.
    const bool positive = lag.from < lag.to;
    const Lag key = positive ? lag : negation(lag);
    const auto [entry, fresh] = m_codes.try_emplace(key, static_cast<int>(m_lags.size()));
    if (fresh) {
        m_lags.push_back(key);
        m_lags.push_back(negation(key));
    }
    return Literal{entry->second ^ (positive ? 0 : 1)};
}

}  // namespace core::temporal
