// Writes welds into a log as fast as it can and tells on standard output what the writer reports of
// each row: "saved NUMBER N" or "spilled NUMBER N". It is there to be killed.
#include "core/log/log_reader.h"
#include "core/log/log_writer.h"
#include "tests/support/log_samples.h"

#include <cstdio>
#include <cstdlib>

using namespace seamclock;

int main(int argc, char** argv) {
    if (argc != 3) {
        return 2;
    }
    const std::string path = argv[1];
    const std::int64_t first = std::atoll(argv[2]);
    const test::FakeClock clock;
    LogWriterOptions options = test::quick();
    options.busyTimeout = Milliseconds(2);
    auto writer = LogWriter<Production>::open(path, clock, options);
    if (!writer) {
        std::fprintf(stderr, "%s\n", writer.error().detail.c_str());
        return 1;
    }
    for (std::int64_t number = first;; ++number) {
        const auto rows = test::rowsOf(test::closedWeld(number));
        std::size_t told = 0;
        for (std::size_t i = 0; i < rows.size(); ++i) {
            writer->submit({rows[i]}, test::sampleDocuments());
            if (i % 3 == 2 || i + 1 == rows.size()) {
                static_cast<void>(writer->flush());
            }
            for (; told <= i &&
                   writer->status(rows[told].subject, rows[told].n) != RowStatus::Pending;
                 ++told) {
                const bool saved =
                    writer->status(rows[told].subject, rows[told].n) == RowStatus::Saved;
                std::printf(
                    "%s %lld %lld\n", saved ? "saved" : "spilled", static_cast<long long>(number),
                    static_cast<long long>(rows[told].n));
                std::fflush(stdout);
            }
        }
    }
}
