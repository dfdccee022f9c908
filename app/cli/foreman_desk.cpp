#include "app/cli/foreman_desk.h"

#include "app/cli/pin_input.h"
#include "core/log/log_reader.h"
#include "core/log/world.h"

namespace seamclock {
namespace {

std::string credentialsOf(const std::string& log) {
    return log + ".credentials";
}

Result<LogWriterBase> openWriter(const std::string& path, const Clock& clock) {
    auto reader = LogReader::open(path);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    if (reader->world() == Practice::kName) {
        auto writer = LogWriter<Practice>::open(path, clock);
        return writer ? Result<LogWriterBase>(std::move(*writer)) : tl::unexpected(writer.error());
    }
    auto writer = LogWriter<Production>::open(path, clock);
    return writer ? Result<LogWriterBase>(std::move(*writer)) : tl::unexpected(writer.error());
}

} // namespace

Result<std::unique_ptr<ForemanDesk>> openForemanDesk(const std::string& log) {
    auto clock = BootClock::make();
    if (!clock) {
        return tl::unexpected(clock.error());
    }
    auto desk = std::unique_ptr<ForemanDesk>(new ForemanDesk{std::move(*clock), {}, {}, {}});
    auto writer = openWriter(log, desk->clock);
    if (!writer) {
        return tl::unexpected(writer.error());
    }
    desk->writer = std::make_unique<LogWriterBase>(std::move(*writer));
    desk->credentials = std::make_unique<Credentials>(credentialsOf(desk->writer->path()));
    auto office = Office::open(*desk->writer, *desk->credentials, desk->clock);
    if (!office) {
        return tl::unexpected(office.error());
    }
    desk->office = std::make_unique<Office>(std::move(*office));
    return desk;
}

Result<Access> enterForeman(const std::optional<std::string>& by, ForemanDesk& desk) {
    if (!by) {
        return fail(ErrorCode::Missing, "--by is required; allowed: the person:ID of a foreman");
    }
    auto pin = readPin("PIN of " + *by);
    if (!pin) {
        return tl::unexpected(pin.error());
    }
    return desk.office->enter(*by, *pin);
}

} // namespace seamclock
