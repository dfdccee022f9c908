#include "app/setup/setup_shop.h"

#include "core/log/log_reader.h"
#include "core/log/shelf.h"

namespace seamclock {

Result<std::vector<ProcedureDocument>>
readProceduresInForce(const std::string& log, std::vector<ProcedureDocument> shipped) {
    auto reader = LogReader::open(log);
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    const auto shelf = readShelf(*reader);
    if (!shelf) {
        return tl::unexpected<Error>(shelf.error());
    }
    const auto roster = readRoster(*reader);
    if (!roster) {
        return tl::unexpected<Error>(roster.error());
    }
    return proceduresInForce(*shelf, *roster, *reader, std::move(shipped));
}

} // namespace seamclock
