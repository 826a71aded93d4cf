#include "core/service/problem.h"

namespace core::service {

std::string problemText(const Problem& problem)
{
    return problem.place.empty() ? problem.what.text() : problem.place + ": " + problem.what.text();
}

std::string inside(const std::string& place, std::string_view key)
{
    return (place.empty() ? "" : place + ".") + std::string{key};
}

std::string nth(const std::string& place, std::size_t index)
{
    return place + "[" + std::to_string(index) + "]";
}

}  // namespace core::service
