#include "core/log/chain.h"

#include "core/base/uuid.h"

namespace seamclock {

std::string chainHash(std::string_view previous, std::string_view body) {
    return sha256Hex({previous, "\n", body});
}

std::string genesisHash(std::string_view logId, std::string_view world) {
    std::string bytes = "seamclock-log/1\n";
    bytes.append(logId).append("\n").append(world);
    return sha256Hex(bytes);
}

} // namespace seamclock
