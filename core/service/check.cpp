#include "core/service/check.h"

#include "core/service/rules/rules.h"

namespace core::service {

std::vector<Problem> checkService(const Service& service)
{
    Findings findings;
    rules::applyRules(service, findings);
    return findings.take();
}

}  // namespace core::service
