#pragma once

#include <cstddef>
#include <cstdint>
#include <random>

namespace oracle {

/// The same numbers on every machine: the standard distributions differ from one library to the next.
class Dice {
public:
    explicit Dice(std::uint64_t seed)
        : m_engine{seed}
    {
    }

    /// From least to most, both included.
    std::int64_t number(std::int64_t least, std::int64_t most)
    {
        return least + static_cast<std::int64_t>(m_engine() % static_cast<std::uint64_t>(most - least + 1));
    }
    /// From 1 to most.
    std::size_t count(std::size_t most)
    {
        return static_cast<std::size_t>(number(1, static_cast<std::int64_t>(most)));
    }
    bool inHundred(int chances) { return number(1, 100) <= chances; }

private:
    std::mt19937_64 m_engine;
};

}  // namespace oracle
