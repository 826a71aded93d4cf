#pragma once

#include "core/service/problem.h"

#include <initializer_list>
#include <string>
#include <vector>

namespace core::service {

/// Collects problems, so that all of a file come out in one go, and keeps one
/// fault from being told twice in other words.
class Findings {
public:
    /// More than this are counted, not kept.
    static constexpr std::size_t most = 200;

    /// Adds a problem, unless its place or one that it rests on was found wrong
    /// before `settle`: what could not be read has only a stand-in value.
    void add(const std::string& place, measure::Sentence what,
             std::initializer_list<std::string> restsOn = {});

    /// The same of what is said in English alone: of the file as text, which only its writers read.
    void add(const std::string& place, std::string what, std::initializer_list<std::string> restsOn = {});

    /// From here on, what was found so far casts doubt on what rests on it.
    void settle() { m_settled = m_problems.size(); }

    [[nodiscard]] bool empty() const { return m_problems.empty(); }
    [[nodiscard]] bool overflowed() const { return m_left > 0; }

    /// All of them, with a last one that counts those not kept.
    [[nodiscard]] std::vector<Problem> take();

private:
    [[nodiscard]] bool isDoubtful(const std::string& place) const;

    std::vector<Problem> m_problems;
    std::size_t m_settled = 0;
    std::size_t m_left = 0;
};

}  // namespace core::service
