#include "app/storage/seal.h"

namespace app::storage {

std::int64_t sealOf(std::int64_t before, const std::string& text)
{
    std::uint64_t sum = 0xcbf29ce484222325U ^ static_cast<std::uint64_t>(before);
    for (const char byte : text)
        sum = (sum ^ static_cast<unsigned char>(byte)) * 0x100000001b3U;
    return static_cast<std::int64_t>(sum);
}

}  // namespace app::storage
