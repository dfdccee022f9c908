#include "app/setup/setup_shop.h"

#include "core/log/log_reader.h"
#include "core/log/shelf.h"

namespace seamclock {

Result<std::vector<ProcedureDocument>>
readProceduresInForce(LogWriterBase& writer, std::vector<ProcedureDocument> shipped) {
    if (const auto flushed = writer.flush(); !flushed) {
        return tl::unexpected<Error>(flushed.error());
    }
    auto reader = LogReader::open(writer.path());
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
