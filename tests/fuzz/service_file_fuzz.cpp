#include "core/service/check.h"
#include "core/service/service_file.h"
#include "tests/core/measure/london.h"

#include <cstdint>
#include <cstdlib>
#include <sstream>

// Any bytes are read without a crash, a throw or undefined behaviour. What is refused
// has its reasons; what is read passes the checks and comes back equal when written.

namespace {

using namespace core::service;

void require(bool holds)
{
    if (!holds)
        std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace std::chrono;
    static const core::measure::London2026 zones;
    const ReadContext context{zones, "Europe/London", local_days{2026y / October / 25}};
    std::string text;
    for (std::size_t i = 0; i < size; ++i)
        text += static_cast<char>(data[i]);
    const auto service = readService(std::string_view{text}, context);
    if (!service) {
        require(!service.error().empty());
        return 0;
    }
    require(checkService(*service).empty());
    std::ostringstream out;
    writeService(out, *service, zones);
    const auto again = readService(out.str(), context);
    require(again && *again == *service);
    return 0;
}
