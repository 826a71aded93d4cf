#pragma once

#include "tests/oracle/gecode_rows.h"

#include <vector>

namespace oracle {

/// Who can be at what goes on, which facts do not say: each is done by a pair of hands of its own, of
/// somebody who does such work and is there, as far as that can be (docs/method.md, "While it runs").
class AtWork {
public:
    explicit AtWork(const Rows& rows);

    /// The rows that go on and take hands.
    [[nodiscard]] const std::vector<int>& running() const { return m_running; }
    [[nodiscard]] bool may(int row, int hands) const;
    /// Two of them are done by different hands.
    [[nodiscard]] bool differ(int a, int b) const;
    /// The applications by one of whose hands a look is made, as it was begun within them and no others.
    /// None: by anybody who may.
    [[nodiscard]] std::vector<int> madeWithin(int look) const;

private:
    [[nodiscard]] const Row& row(int place) const { return m_rows.rows()[static_cast<std::size_t>(place)]; }
    [[nodiscard]] bool isWithin(int look, int apply) const;
    [[nodiscard]] bool beganWithin(int look, core::stagger::TaskState state) const;
    [[nodiscard]] bool doesSuchWork(int place, int hands) const;
    [[nodiscard]] bool isAway(int place, int hands) const;
    /// Whether hands can be found from that place in `m_running` on.
    bool suffices(std::vector<int>& hands) const;

    const Rows& m_rows;
    std::vector<int> m_running;
    bool m_apart = true;
    bool m_present = true;
};

}  // namespace oracle
