#include "core/service/reading/suggestion.h"

#include "core/service/json/value.h"

#include <algorithm>
#include <vector>

namespace core::service::reading {
namespace {

constexpr std::size_t longestWord = 60;
constexpr std::size_t mostListed = 20;

/// Letters alone, without case and without what joins words.
std::string plain(std::string_view word)
{
    std::string result;
    for (const char c : word) {
        if (c != '_' && c != '-' && c != ' ')
            result += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return result;
}

/// Insertions, deletions, substitutions and swaps of neighbours that lead from
/// one word to the other (optimal string alignment distance).
std::size_t distance(const std::string& a, const std::string& b)
{
    std::vector<std::vector<std::size_t>> cost(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i) {
        for (std::size_t j = 0; j <= b.size(); ++j) {
            if (i == 0 || j == 0) {
                cost[i][j] = i + j;
                continue;
            }
            const std::size_t wrong = a[i - 1] == b[j - 1] ? 0 : 1;
            cost[i][j] = std::min({cost[i - 1][j] + 1, cost[i][j - 1] + 1, cost[i - 1][j - 1] + wrong});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                cost[i][j] = std::min(cost[i][j], cost[i - 2][j - 2] + 1);
        }
    }
    return cost[a.size()][b.size()];
}

}  // namespace

std::string nearest(std::string_view word, std::span<const std::string> candidates)
{
    if (word.size() > longestWord)
        return {};
    const std::string wanted = plain(word);
    std::string best;
    std::size_t bestDistance = std::max<std::size_t>(1, wanted.size() / 3) + 1;
    for (const std::string& candidate : candidates) {
        if (candidate.size() > longestWord)
            continue;
        const std::size_t found = distance(wanted, plain(candidate));
        if (found < bestDistance && found < candidate.size()) {
            bestDistance = found;
            best = candidate;
        }
    }
    return best;
}

std::string suggestion(std::string_view word, std::span<const std::string> candidates)
{
    if (const std::string near = nearest(word, candidates); !near.empty())
        return "did you mean " + json::quoted(near) + "?";
    std::string known = "known here: ";
    for (std::size_t i = 0; i < std::min(candidates.size(), mostListed); ++i)
        known += (i == 0 ? "" : ", ") + candidates[i];
    return known + (candidates.size() > mostListed ? ", \u2026" : "");
}

}  // namespace core::service::reading
