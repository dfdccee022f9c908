#include "tests/support/frozen_log.h"

#include "core/log/log_reader.h"

#include <sstream>

namespace seamclock::test {

std::string contentOf(const std::string& path) {
    auto reader = LogReader::open(path);
    if (!reader) {
        return reader.error().detail;
    }
    std::ostringstream out;
    const auto head = reader->head();
    out << "log " << reader->logId() << "\nworld " << reader->world() << "\nhead "
        << (head ? std::to_string(head->seq) + " " + head->hash : head.error().detail) << "\n";
    const auto lines = reader->joints({});
    if (!lines) {
        return lines.error().detail;
    }
    for (const JointLine& line : *lines) {
        out << "joint " << line.number << " | " << line.weld << " | " << line.type << " | "
            << toIsoLocal(line.openedUtc, line.offset) << " | " << line.bench << " | " << line.by
            << " | " << line.seam << " | " << line.material << " " << line.thicknessUm << " x "
            << line.lengthUm << " um | " << line.procedure << " | " << line.phase << " | "
            << line.verdict << " | " << line.findings << " findings | " << line.events << " events"
            << (line.trouble.empty() ? "" : " | " + line.trouble) << "\n";
    }
    const auto open = reader->openWelds();
    for (const std::string& weld : open.value_or(std::vector<std::string>{"none can be told"})) {
        out << "open " << weld << "\n";
    }
    return out.str();
}

} // namespace seamclock::test
