#include "core/service/findings.h"

#include <algorithm>
#include <utility>

namespace core::service {
namespace {

/// Whether `outer` is `inner` or holds it: "a.b" holds "a.b.c" and "a.b[0]", not "a.bc".
bool holds(const std::string& outer, const std::string& inner)
{
    if (outer.empty())
        return true;
    if (!inner.starts_with(outer))
        return false;
    return inner.size() == outer.size() || inner[outer.size()] == '.' || inner[outer.size()] == '[';
}

}  // namespace

bool Findings::isDoubtful(const std::string& place) const
{
    const auto settled = std::vector<Problem>::difference_type(m_settled);
    return std::any_of(m_problems.begin(), m_problems.begin() + settled, [&](const Problem& earlier) {
        return holds(earlier.place, place) || holds(place, earlier.place);
    });
}

void Findings::add(const std::string& place, std::string what, std::initializer_list<std::string> restsOn)
{
    add(place, measure::Sentence{std::move(what)}, restsOn);
}

void Findings::add(const std::string& place, measure::Sentence what,
                   std::initializer_list<std::string> restsOn)
{
    if (isDoubtful(place)
        || std::ranges::any_of(restsOn, [&](const auto& other) { return isDoubtful(other); }))
        return;
    Problem problem{place, std::move(what)};
    if (m_problems.size() == most)
        ++m_left;
    else if (std::ranges::find(m_problems, problem) == m_problems.end())
        m_problems.push_back(std::move(problem));
}

std::vector<Problem> Findings::take()
{
    if (m_left > 0)
        m_problems.push_back(
            {"", measure::Sentence::worded("and %1 more problems; mend these first", m_left)});
    m_left = 0;
    m_settled = 0;
    return std::exchange(m_problems, {});
}

}  // namespace core::service
